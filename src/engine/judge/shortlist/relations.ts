import { hueApartDeg } from '../../color/hue-apart';
import type { SurfaceId } from '../../surface';
import { isLoose, isWithheld } from '../cannot-tell';
import { faultCode, isAlike, isAssurance } from '../claims';
import { MINOR_SHARE } from '../component-record';
import { type Firmness, firmnessOf, isOpenQuestion } from '../firmness';
import { isLean, judgePair, PAIR, type PairJudgment, type PairSide } from '../pair';
import { isFitting, isNearWhite, type SampleColor } from '../sample-color';
import { inDomainOfWhites, WHITES } from '../whites';
import { faultHoldsAtLeast, huesOppose, whitesPart } from './firmly';
import type { HeldSurface } from './types';

/** A settled finish with the surfaces it lies on; fittings and ceilings apart, for they reject nothing. */
export interface HeldFinish {
  readonly finish: string;
  readonly surfaces: readonly SurfaceId[];
  /** The same as one speaks of them. */
  readonly spoken: readonly SurfaceId[];
  readonly colors: readonly SampleColor[];
  /** Index of its main color. */
  readonly main: number;
  readonly rejects: boolean;
}

/** How a component of a candidate stands to one of a settled finish. */
export interface Relation {
  readonly own: SampleColor;
  readonly other: SampleColor;
  readonly held: HeldFinish;
  /** Side `a` is the candidate's. */
  readonly judgment: PairJudgment;
  readonly bearing: Bearing;
}

/**
 * What follows from it. `rejects`: a fault between main colors, beyond doubt. `part`: one of a vein, a fleck or a fitting. `may`: a fault
 * that errors may undo, or whites that they may part. `agrees`: whites that go together. `echoes`: related hues. `matches`: alike.
 */
export type Bearing = 'rejects' | 'part' | 'may' | 'agrees' | 'echoes' | 'matches' | 'none';

/** The component with the largest share, grout left out; the first of equals. */
export function mainOf(colors: readonly SampleColor[]): number {
  let main = 0;
  colors.forEach((color, i) => {
    const best = colors[main]!;
    if (color.role !== 'grout' && (best.role === 'grout' || color.share > best.share)) main = i;
  });
  return main;
}

/**
 * A ceiling hangs in other light, a handle is small, and what is never seen beside it is far: none of them decides what lies elsewhere. Our
 * judgment.
 */
const decides = ({ surface, isApart }: HeldSurface): boolean =>
  !isFitting(surface) && surface !== 'ceiling' && !isApart;

/** Settled surfaces by what lies on them. */
export function heldFinishes(held: readonly HeldSurface[]): HeldFinish[] {
  const groups = new Map<string, { surfaces: SurfaceId[]; first: HeldSurface; rejects: boolean }>();
  for (const one of held) {
    const rejects = decides(one);
    const key = `${rejects}|${one.finish.id}|${one.colors.map((c) => `${c.key}@${c.share}`).join('|')}`;
    const group = groups.get(key);
    if (group) group.surfaces.push(one.surface);
    else groups.set(key, { surfaces: [one.surface], first: one, rejects });
  }
  return [...groups.values()].map(({ surfaces, first, rejects }) => ({
    finish: first.finish.id,
    surfaces,
    spoken: spokenOf(surfaces),
    colors: first.colors,
    main: mainOf(first.colors),
    rejects,
  }));
}

/** An upstand in the counter's own finish goes without saying. */
export const spokenOf = (surfaces: readonly SurfaceId[]): readonly SurfaceId[] =>
  surfaces.includes('counter') ? surfaces.filter((one) => one !== 'upstand') : surfaces;

/**
 * How every component of a candidate, but for hair veins and joints, stands to those of what is settled, as samples. Pairs that say
 * nothing are left out.
 */
export function relationsOf(finish: string, colors: readonly SampleColor[], held: readonly HeldFinish[]): Relation[] {
  const main = mainOf(colors);
  const found: Relation[] = [];
  for (const one of held) {
    if (one.finish === finish) continue;
    for (let i = 0; i < colors.length; i++) {
      const own = colors[i]!;
      if (own.share < MINOR_SHARE) continue;
      for (let j = 0; j < one.colors.length; j++) {
        const other = one.colors[j]!;
        if (other.share < MINOR_SHARE || own.key === other.key || isPlainlyNone(own, other)) continue;
        const relation = relationOf(sampleSide(own), sampleSide(other), i === main && j === one.main, one);
        if (relation.judgment.verdict !== 'none' || relation.bearing !== 'none') found.push(relation);
      }
    }
  }
  return found;
}

export const sampleSide = (color: SampleColor): PairSide => ({ color, lab: color.lab });

/** One pair judged, and what follows from it. `areMain`: both are the main colors of their finishes. */
export function relationOf(own: PairSide, other: PairSide, areMain: boolean, held: HeldFinish): Relation {
  const judgment = judgePair(own, other, { anchorY: null });
  return {
    own: own.color,
    other: other.color,
    held,
    judgment,
    bearing: bearingOf(judgment, own, other, areMain, held),
  };
}

function bearingOf(
  judgment: PairJudgment,
  own: PairSide,
  other: PairSide,
  areMain: boolean,
  held: HeldFinish,
): Bearing {
  const { verdict } = judgment;
  const isDeciding = areMain && held.rejects;
  if (faultCode(verdict)) {
    // What hardly shows, as the hues of two near-blacks, is nothing to choose by.
    if (judgment.severity === 'note') return 'none';
    const firmness = faultFirmness(judgment, own, other);
    if (firmness === 'firm') return isDeciding ? 'rejects' : 'part';
    return isDeciding ? 'may' : 'none';
  }
  if (areWhitesAtHand(own.color, other.color) && isAssurance(verdict)) {
    const isUnsure = isLoose(own.color) || isLoose(other.color) || isOpenQuestion(whitesPart(own, other));
    if (isUnsure) return isDeciding ? 'may' : 'none';
    return areMain ? 'agrees' : 'none';
  }
  if (isDeciding && canOppose(own, other) && isOpenQuestion(huesOppose(hueApartDeg(own.lab, other.lab), own, other)))
    return 'may';
  if (verdict === 'none' || isWithheld(judgment, own, other)) return 'none';
  return verdict === 'relates' ? 'echoes' : isAlike(verdict) ? 'matches' : 'none';
}

const canOppose = (a: PairSide, b: PairSide): boolean =>
  a.color.mayLean && b.color.mayLean && Math.max(a.lab.l, b.lab.l) >= PAIR.hueSeenFrom;

const areWhitesAtHand = (a: SampleColor, b: SampleColor): boolean =>
  isNearWhite(a) && isNearWhite(b) && inDomainOfWhites(a, b);

/** How firmly a fault stands. A color from a photo, a screen or the eye decides nothing: its sample does. */
export function faultFirmness(judgment: PairJudgment, a: PairSide, b: PairSide): Firmness {
  if (isLoose(a.color) || isLoose(b.color)) return 'may';
  return firmnessOf(faultHoldsAtLeast(judgment, a, b));
}

/** Any match is within this L*: the weight of lightness in CIEDE2000 is at most 1.75. */
const FARTHEST_MATCH_L = 3.2;

/** Errors of colors that were measured or declared hardly ever turn a hue further, degrees: a lean that has a name has chroma. */
const NEAR_OPPOSED = 30;
const COS_ECHO = Math.cos((PAIR.echoHueMax * Math.PI) / 180);
const COS_NEAR_OPPOSED = Math.cos(((PAIR.opposedHueMin - NEAR_OPPOSED) * Math.PI) / 180);

/** True where no rule can say anything: spares most of a large library the full comparison. */
function isPlainlyNone(a: SampleColor, b: SampleColor): boolean {
  if (Math.abs(a.lab.l - b.lab.l) <= FARTHEST_MATCH_L) return false;
  const mayBeWhites = a.mayBeWhite && b.mayBeWhite && a.lab.l >= WHITES.lightnessMin && b.lab.l >= WHITES.lightnessMin;
  if (mayBeWhites && Math.abs(a.lab.a - b.lab.a) <= WHITES.redGreenMax) return false;
  // The cosine of the angle between the hues, by the product of the chromas.
  const along = a.lab.a * b.lab.a + a.lab.b * b.lab.b;
  const product = Math.sqrt((a.lab.a ** 2 + a.lab.b ** 2) * (b.lab.a ** 2 + b.lab.b ** 2));
  const isBetween = along < COS_ECHO * product && along > COS_NEAR_OPPOSED * product;
  if (isBetween && !isLoose(a) && !isLoose(b)) return true;
  const [s, t] = [a.strength(), b.strength()];
  if (Math.min(s, t) < PAIR.namedStrength) return true;
  return along < COS_NEAR_OPPOSED * product && [a, b].some((color) => !isLean(color));
}
