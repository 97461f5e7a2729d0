import { medianOf } from './robust';
import type { Patch } from './types';

/** No matte surface is lighter than the perfect diffuser; a little more is noise. Y of the perfect diffuser is 100. */
const LIGHTER_THAN_WHITE = 104;
/** A spot is this much lighter than most of the sample, L*, and has lost this part of its chroma to the lamp's. Our judgement. */
const SPOT_LIGHTER = 10;
const SPOT_CHROMA = 0.75;
/** Its edge is soft: neighboring blocks there differ by less than this, L*. A vein or a fleck has a sharp one. Our judgement. */
const SOFT_STEP = 3;

export interface Glare {
  /** 1 where a block is no color of the sample. */
  readonly mask: Uint8Array;
  /** Share of the sample, 0-1, that lies in spots of either kind. */
  readonly share: number;
  /** Share that is lighter than any matte surface beside the card can be; 0 without a card. */
  readonly lighterThanWhite: number;
}

/** Mirrored light on a sample: what is lighter than white beside the card, and soft bright spots without the sample's color. */
export function findGlare({ width, inside }: Patch, xyz: Float64Array, lab: Float64Array, hasCard: boolean): Glare {
  const mask = new Uint8Array(inside.length);
  const places: number[] = [];
  inside.forEach((is, at) => {
    if (is) places.push(at);
  });
  const isTooLight = (at: number) => hasCard && xyz[3 * at + 1]! > LIGHTER_THAN_WHITE;
  const chroma = (at: number) => Math.hypot(lab[3 * at + 1]!, lab[3 * at + 2]!);
  const usualL = medianOf(places.map((at) => lab[3 * at]!));
  const usualChroma = medianOf(places.map(chroma));
  const spots = new Uint8Array(inside.length);
  for (const at of places) {
    const isLighter = lab[3 * at]! > usualL + SPOT_LIGHTER;
    if (isLighter && chroma(at) <= SPOT_CHROMA * usualChroma + 1) spots[at] = 1;
  }
  const isSoft = edgeStep(width, inside, spots, lab) < SOFT_STEP;
  let [share, lighterThanWhite] = [0, 0];
  for (const at of places) {
    const isLight = isTooLight(at);
    if (isLight) lighterThanWhite++;
    if (!isLight && !(isSoft && spots[at])) continue;
    mask[at] = 1;
    share++;
  }
  return {
    mask,
    share: share / Math.max(1, places.length),
    lighterThanWhite: lighterThanWhite / Math.max(1, places.length),
  };
}

/** Mean lightness difference of neighbors of which one lies in a spot and one does not; infinite where there are none. */
function edgeStep(width: number, inside: Uint8Array, spots: Uint8Array, lab: Float64Array): number {
  let [sum, count] = [0, 0];
  for (let at = 0; at < inside.length; at++) {
    for (const step of [1, width]) {
      const other = at + step;
      if (other >= inside.length || (step === 1 && other % width === 0)) continue;
      if (!inside[at] || !inside[other] || spots[at] === spots[other]) continue;
      sum += Math.abs(lab[3 * at]! - lab[3 * other]!);
      count++;
    }
  }
  return count ? sum / count : Number.POSITIVE_INFINITY;
}
