import { differenceCiede2000 } from '../color/difference';
import { meanLab, type WeighedLab } from '../color/mixed-lab';
import type { Lab } from '../color/types';
import type { LaidFinish } from '../finish/types';
import type { SurfaceId } from '../surface';
import type { JudgedSurface } from './input';
import { leanWord } from './lean-word';
import { areApart } from './meets';
import { PAIR } from './pair';
import type { PlacedColor } from './pairs';
import { isFitting, isWoodOrPrint } from './sample-color';
import { inDecisionOrder } from './surface-words';

/**
 * Two woods that are neither one wood nor clearly two look like a match that failed (common practice, no source). Area means,
 * CIEDE2000: alike up to the published acceptable limit; from `different` on a step that one means, our judgment.
 */
export const WOODS = {
  alike: PAIR.acceptable,
  different: 5,
  /** A step in L* that one sees as such: the foot of a published harmony term (Ou and Luo 2006); that it reads as meant, our judgment. */
  step: PAIR.noStep,
  /** Where nobody said how far its boards differ, as much as slight variation has, one standard deviation. Our judgment. */
  usualSigma: 1,
} as const;

/** Two woods that are seen together and close but unlike. */
export interface NearWoods {
  /** Same two finishes, same key. */
  readonly key: string;
  readonly first: JudgedSurface;
  readonly second: JudgedSurface;
  readonly firstSurfaces: readonly SurfaceId[];
  readonly secondSurfaces: readonly SurfaceId[];
  readonly de00: number;
  /** How the second looks against the first. */
  readonly lean: string;
  /** How far single boards of both may differ from their means, one standard deviation, CIEDE2000. */
  readonly boards: number;
  /** The boards of each differ so much that the difference of the means may drown in them. */
  readonly isMasked: boolean;
}

/** How two means differ. */
interface MeanDifference {
  readonly de00: number;
  readonly dL: number;
}

const differenceOf = (one: Lab<'D65-2'>, other: Lab<'D65-2'>): MeanDifference => ({
  de00: differenceCiede2000(one, other),
  dL: Math.abs(one.l - other.l),
});

/** Close, but neither alike nor a step apart. */
const isNear = ({ de00, dL }: MeanDifference): boolean =>
  de00 > WOODS.alike && de00 < WOODS.different && dL < WOODS.step;

/** How far single boards of two woods may differ from the means of theirs, one standard deviation. */
const boardSigma = (a: LaidFinish, b: LaidFinish): number =>
  Math.hypot(a.pieceSigmaDe00 ?? WOODS.usualSigma, b.pieceSigmaDe00 ?? WOODS.usualSigma);

/** A difference of means that single boards may make up for. */
const isMasked = (de00: number, boards: number): boolean => de00 - WOODS.alike < boards;

/** Whether two woods of these colors are close but unlike. */
export const isNearMiss = (one: readonly WeighedLab[], other: readonly WeighedLab[]): boolean =>
  isNear(differenceOf(meanLab(one), meanLab(other)));

/** Whether a finish is wood, or a print of it, that the rule is for. */
export const isWood = (finish: LaidFinish): boolean => finish.class !== 'metal' && isWoodOrPrint(finish);

/** Every two woods of different finishes that are seen together, close but unlike. */
export function nearWoods(placed: readonly PlacedColor[]): NearWoods[] {
  const woods = new Map<string, { surfaces: JudgedSurface[]; mean: Lab<'D65-2'> }>();
  for (const { surface } of placed) {
    if (isFitting(surface.surface) || !isWood(surface.finish)) continue;
    const known = woods.get(surface.finish.id);
    if (!known) woods.set(surface.finish.id, { surfaces: [surface], mean: meanOn(surface, placed) });
    else if (!known.surfaces.includes(surface)) known.surfaces.push(surface);
  }
  const all = [...woods.values()];
  return all.flatMap((one, i) =>
    all.slice(i + 1).flatMap((other) => {
      const difference = differenceOf(one.mean, other.mean);
      const { de00 } = difference;
      const met = one.surfaces.flatMap((a) =>
        other.surfaces.filter((b) => !areApart({ a: { surface: a }, b: { surface: b } })).map((b) => [a, b] as const),
      );
      if (met.length === 0 || !isNear(difference)) return [];
      const [first, second] = met[0]!;
      const boards = boardSigma(first.finish, second.finish);
      return [
        {
          key: woodsKey(first, second),
          first,
          second,
          firstSurfaces: inDecisionOrder(met.map(([a]) => a.surface)),
          secondSurfaces: inDecisionOrder(met.map(([, b]) => b.surface)),
          de00,
          lean: leanWord(one.mean, other.mean),
          boards,
          isMasked: isMasked(de00, boards),
        },
      ];
    }),
  );
}

const woodsKey = (a: JudgedSurface, b: JudgedSurface): string => `${a.finish.id}|${b.finish.id}`;

const meanOn = (surface: JudgedSurface, placed: readonly PlacedColor[]): Lab<'D65-2'> =>
  meanLab(placed.flatMap((one) => (one.surface === surface ? [one.color] : [])));
