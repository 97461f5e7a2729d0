import { medianOf } from './robust';
import type { Patch } from './types';

/** No matte surface is lighter than the perfect diffuser; a little more is noise. Y of the perfect diffuser is 100. */
const LIGHTER_THAN_WHITE = 104;
/** A spot is this much lighter than most of the sample, L*, and has lost this part of its chroma to the lamp's. Our judgment. */
const SPOT_LIGHTER = 10;
const SPOT_CHROMA = 0.75;
/** It reaches as far as it is this much lighter, L*. Our judgment. */
const FRINGE_LIGHTER = 3;
/** Its edge is soft: neighboring blocks there differ by less than this, L*. A fleck has a sharp one. Our judgment. */
const SOFT_STEP = 3;
/** And it fills this part of its frame, which is no longer than so many times its width. A vein does not. Our judgment. */
const LEAST_FILL = 0.4;
const MOST_LONG = 4;

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
  const chroma = (at: number) => Math.hypot(lab[3 * at + 1]!, lab[3 * at + 2]!);
  const lightness = Float64Array.from(inside, (is, at) => (is ? lab[3 * at]! : Number.NEGATIVE_INFINITY));
  const count = inside.reduce((sum, is) => sum + is, 0);
  const some = everyFew(inside);
  const usualL = medianOf(Float64Array.from(some, (at) => lightness[at]!));
  const usualChroma = medianOf(Float64Array.from(some, chroma));
  const mask = new Uint8Array(inside.length);
  const seen = new Uint8Array(inside.length);
  let lighterThanWhite = 0;
  for (let at = 0; at < inside.length; at++) {
    if (!inside[at]) continue;
    if (hasCard && xyz[3 * at + 1]! > LIGHTER_THAN_WHITE) {
      mask[at] = 1;
      lighterThanWhite++;
    }
    const isSpot = lightness[at]! > usualL + SPOT_LIGHTER && chroma(at) <= SPOT_CHROMA * usualChroma + 1;
    if (!isSpot || seen[at]) continue;
    const spot = spotFrom(at, width, lightness, usualL + FRINGE_LIGHTER, seen);
    if (isBlob(spot.blocks, width) && spot.edgeStep < SOFT_STEP) for (const block of spot.blocks) mask[block] = 1;
  }
  const share = mask.reduce((sum, is) => sum + is, 0) / Math.max(1, count);
  return { mask, share, lighterThanWhite: lighterThanWhite / Math.max(1, count) };
}

/** As many blocks tell a median well enough. */
const ENOUGH = 20_000;

function everyFew(inside: Uint8Array): readonly number[] {
  const places: number[] = [];
  const every = Math.ceil(inside.length / ENOUGH);
  for (let at = 0; at < inside.length; at += every) if (inside[at]) places.push(at);
  return places;
}

/** All blocks over a lightness that hang together with one, and the mean step of lightness at their edge within the sample. */
function spotFrom(start: number, width: number, lightness: Float64Array, least: number, seen: Uint8Array) {
  const blocks = [start];
  seen[start] = 1;
  let [steps, count] = [0, 0];
  for (let i = 0; i < blocks.length; i++) {
    const at = blocks[i]!;
    for (const next of neighborsOf(at, width, lightness.length)) {
      const is = lightness[next]!;
      if (is > least) {
        if (!seen[next]) blocks.push(next);
        seen[next] = 1;
      } else if (is > Number.NEGATIVE_INFINITY) {
        steps += lightness[at]! - is;
        count++;
      }
    }
  }
  return { blocks, edgeStep: count ? steps / count : Number.POSITIVE_INFINITY };
}

function neighborsOf(at: number, width: number, length: number): readonly number[] {
  const next: number[] = [];
  if (at % width > 0) next.push(at - 1);
  if ((at + 1) % width > 0) next.push(at + 1);
  if (at >= width) next.push(at - width);
  if (at + width < length) next.push(at + width);
  return next;
}

function isBlob(blocks: readonly number[], width: number): boolean {
  let [left, right, top, bottom] = [width, 0, Number.POSITIVE_INFINITY, 0];
  for (const at of blocks) {
    const [x, y] = [at % width, Math.floor(at / width)];
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  const [w, h] = [right - left + 1, bottom - top + 1];
  return blocks.length >= LEAST_FILL * w * h && Math.max(w, h) <= MOST_LONG * Math.min(w, h);
}
