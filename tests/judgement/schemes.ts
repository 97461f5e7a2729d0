import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import type { Lab } from '../../src/engine/color/types';
import { averageComponent } from '../../src/engine/finish/average';
import type { LaidFinish } from '../../src/engine/finish/types';
import type { InstalledReading, JudgedSurface, JudgeInput } from '../../src/engine/judge/input';
import type { Facing, SurfaceId } from '../../src/engine/surface';
import { finish } from './finishes';

const FACING: Partial<Record<SurfaceId, Facing>> = {
  counter: 'up',
  'island-counter': 'up',
  floor: 'up',
  ceiling: 'down',
};

/** A reading in which the room changes nothing: neutral light, no tint. */
function plainReading(
  surface: SurfaceId,
  of: LaidFinish,
  viewShares: readonly number[],
  change: Partial<InstalledReading> = {},
): InstalledReading {
  return {
    facing: FACING[surface] ?? 'upright',
    illuminanceLx: 500,
    luxMin: 500,
    lightFrom: [],
    lightnessInRoom: of.components[0]!.labD65.l,
    placeWhite: { l: 100, a: 0, b: 0 },
    lightWhite: { l: 100, a: 0, b: 0 },
    components: of.components.map((c) => c.labD65),
    average: of.components[0]!.labD65,
    tintFrom: null,
    viewShares,
    ...change,
  };
}

/** Surface, finish, and percent of each overview. */
export type Row = readonly [surface: SurfaceId, finish: string | LaidFinish, ...percent: number[]];

/** A judgment input whose room changes nothing; view shares as given, in percent. */
export function scheme(rows: readonly Row[], option = 'test'): JudgeInput {
  const views = Math.max(...rows.map((r) => r.length - 2));
  return {
    project: 'test',
    option,
    setting: { id: 'neutral', cct_k: null, duv: null },
    lights: 'one',
    burning: { daylight: true, lamps: false },
    overviews: Array.from({ length: views }, (_, i) => `view ${i + 1}`),
    surfaces: rows.map(([surface, given, ...percent]): JudgedSurface => {
      const of = typeof given === 'string' ? finish(given) : given;
      const shares = percent.map((p) => p / 100);
      const reading = plainReading(surface, of, shares);
      return { surface, finish: of, state: 'open', installed: [withAverage(reading, of)] };
    }),
  };
}

/** The average of a plain reading is the sample's own, so that nothing seems shifted. */
function withAverage(reading: InstalledReading, of: LaidFinish): InstalledReading {
  return { ...reading, average: averageComponent(of.components).labD65 };
}

/** Changes the main reading of one surface. */
export const inPlace = (input: JudgeInput, surface: SurfaceId, change: Partial<InstalledReading>): JudgeInput => ({
  ...input,
  surfaces: input.surfaces.map((s) =>
    s.surface === surface ? { ...s, installed: s.installed.map((r) => ({ ...r, ...change })) } : s,
  ),
});

/** Lays another finish on some surfaces of a scheme's rows. */
export const relaid = (rows: readonly Row[], changes: Partial<Record<SurfaceId, string | LaidFinish>>): Row[] =>
  rows.map(([surface, of, ...percent]) => [surface, changes[surface] ?? of, ...percent]);

/** A color in a place whose light is tinted: every tristimulus value scaled as that of the perfect white there. */
export function tinted(lab: Lab<'D65-2'>, placeWhite: Lab<'D65-2'>): Lab<'D65-2'> {
  const own = xyzD65FromLabD65(lab);
  const place = xyzD65FromLabD65(placeWhite);
  const white = xyzD65FromLabD65({ l: 100, a: 0, b: 0 });
  return labD65FromXyzD65({
    x: (own.x * place.x) / white.x,
    y: (own.y * place.y) / white.y,
    z: (own.z * place.z) / white.z,
  });
}
