import { quantileOf } from './robust';
import type { Patch } from './types';

/** Where a sample is one color, and how restless it is all over. */
export interface Calm {
  /** 1 where a block looks like all its neighbors: no border of two colors runs through it. */
  readonly calm: Uint8Array;
  /** Share of the blocks inside that are calm, 0-1. */
  readonly share: number;
  /** Usual CIELAB difference of neighbors within one color: noise. Told by the calmest fifth, which a fine pattern leaves alone. */
  readonly restless: number;
}

/** Neighbors differ by less than this, or by less than `FACTOR` times what the calmest fifth does: no border. Our judgment. */
const LEAST = 3;
const FACTOR = 4;
const CALMEST = 0.2;
/** The median of a normal spread in three directions is this many times its fifth: 1.538 to 1.003 (chi, 3 degrees of freedom). */
const MEDIAN_TO_FIFTH = 1.534;

/** As many differences tell a fifth well enough. */
const ENOUGH = 30_000;

/** Blocks without a border, told by the four neighbors that lie inside. */
export function calmBlocks({ width, inside }: Pick<Patch, 'width' | 'inside'>, lab: Float64Array): Calm {
  const right = differences(inside, lab, 1, width);
  const down = differences(inside, lab, width, width);
  const every = Math.ceil((2 * inside.length) / ENOUGH);
  const all = new Float64Array(2 * Math.ceil(inside.length / every));
  let [pairs, blocks, found] = [0, 0, 0];
  for (let at = 0; at < inside.length; at += every) {
    if (right[at]! >= 0) all[pairs++] = right[at]!;
    if (down[at]! >= 0) all[pairs++] = down[at]!;
  }
  const fifth = quantileOf(all.subarray(0, pairs).sort(), CALMEST);
  const limit = Math.max(LEAST, FACTOR * fifth);
  const calm = new Uint8Array(inside.length);
  for (let at = 0; at < inside.length; at++) {
    if (!inside[at]) continue;
    blocks++;
    const leftOf = at % width ? right[at - 1]! : -1;
    const above = at >= width ? down[at - width]! : -1;
    if (right[at]! > limit || down[at]! > limit || leftOf > limit || above > limit) continue;
    calm[at] = 1;
    found++;
  }
  return { calm, share: blocks ? found / blocks : 0, restless: MEDIAN_TO_FIFTH * fifth };
}

/** CIELAB difference of each block from the one `step` after it; -1 where one of them is not inside. */
function differences(inside: Uint8Array, lab: Float64Array, step: number, width: number): Float64Array {
  const out = new Float64Array(inside.length).fill(-1);
  for (let at = 0; at + step < inside.length; at++) {
    if (!inside[at] || !inside[at + step] || (step === 1 && (at + 1) % width === 0)) continue;
    const [i, k] = [3 * at, 3 * (at + step)];
    out[at] = Math.hypot(lab[i]! - lab[k]!, lab[i + 1]! - lab[k + 1]!, lab[i + 2]! - lab[k + 2]!);
  }
  return out;
}
