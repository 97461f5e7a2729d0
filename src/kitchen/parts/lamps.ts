import type { LampFace, Solid } from '../../engine/light/types';
import { cosineExponent } from '../../engine/photometry/cosine-exponent';
import { shadeFalloff } from '../../engine/photometry/shade-falloff';
import type { Beam } from '../../engine/photometry/types';
import { webFromRecord } from '../../engine/photometry/web-from-record';
import type { Fixture } from '../../model/fixture';
import { SHADE_HEIGHT, SHADE_RIM } from '../../model/layout/measures';
import { type BeamRecord, GROUPS } from '../../model/project';
import type { Plan, PlannedLamp } from '../plan/types';
import { type Assembly, faceRect } from './assembly';
import { plainRect } from './cut-holes';
import { blank } from './pattern-coordinates';

const BLACK = { surface: 'black', coordinates: blank } as const;
/** Height of the body that stands in a pendant's shade for what it hides, over the shade's diameter. */
const BODY_HEIGHT = 0.2;

/** The openings of all lamp faces: boxes that straddle the planes the faces lie in. */
export const lampHoles = ({ lamps }: Plan): Solid[] =>
  lamps.map(({ face: { x0, x1, y0, y1 }, z }) => ({ min: [x0, y0, z - 0.01], max: [x1, y1, z + 0.01] }));

/** Every lamp face of the room; lumens are per face. Throws when a beam is not among those given. */
export const lampFaces = ({ lamps }: Plan, beams: readonly BeamRecord[]): LampFace[] =>
  lamps.map((lamp) => {
    const { fixture } = lamp;
    const rect = faceOf(lamp);
    const isAlongU = Math.hypot(...rect.u) >= Math.hypot(...rect.v);
    const beam = beamOf(fixture, isAlongU, beams);
    return {
      group: GROUPS.indexOf(fixture.group),
      rect,
      lumens: lumensOf(lamp),
      ...(beam && { beam }),
      ...openingOf(fixture),
    };
  });

/** The lamp faces as black rectangles: they give light but send none back. Pendants hang in the room as small black bodies. */
export function addLampFaces(parts: Assembly, { lamps }: Plan): void {
  for (const lamp of lamps) {
    const { fixture, face, z } = lamp;
    parts.rects.push({ ...faceOf(lamp), pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 });
    if (fixture.kind !== 'pendant') continue;
    const top = z + (BODY_HEIGHT * fixture.diameter) / 1000;
    parts.box(BLACK, [face.x0, face.y0, z], [face.x1, face.y1, top], ['z-']);
  }
}

const faceOf = ({ face: { x0, x1, y0, y1 }, z, looks }: PlannedLamp) =>
  plainRect(faceRect(BLACK, [x0, y0, z], [x1, y1, z], looks === 'up' ? 'z+' : 'z-'));

/** A pendant shines from its shade. */
function openingOf(fixture: Fixture): Pick<LampFace, 'opening'> {
  if (fixture.kind !== 'pendant') return {};
  return {
    opening: {
      radius_m: (SHADE_RIM * fixture.diameter) / 2000,
      falloff: shadeFalloff((2 * SHADE_HEIGHT) / SHADE_RIM),
    },
  };
}

function lumensOf({ fixture, face: { x0, x1, y0, y1 } }: PlannedLamp): number {
  return 'lumens_each' in fixture ? fixture.lumens_each : fixture.lumens_per_m * Math.max(x1 - x0, y1 - y0);
}

/** The beam of a face. Angle 0 of a file lies along the lamp's length, or from the front to the back wall where it is square. */
function beamOf({ id, beam }: Fixture, isAlongU: boolean, beams: readonly BeamRecord[]): Beam | undefined {
  if (beam.kind === 'wide') return undefined;
  if (beam.kind === 'spread') return { kind: 'cosine-power', exponent: cosineExponent(beam.angle_deg) };
  const record = beams.find((known) => known.id === beam.beam);
  if (!record) throw new Error(`lamp ${id}: no beam "${beam.beam}"`);
  return { kind: 'web', web: webFromRecord(record), turn_deg: beam.turn_deg + (isAlongU ? 0 : 90) };
}
