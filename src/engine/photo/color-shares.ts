import type { FoundColor, SampleBlocks } from './found-color';

/** A block this near to a color is all of it: CIELAB units, or times the restlessness of the sample. Our judgment. */
const NEAR = 2;
const NEAR_RESTLESS = 1.5;

/**
 * Area shares of the colors of a sample. Light adds up, so a block at a border or in a haze holds two colors in the parts that mix to
 * it in linear light. With two colors parts below 0 and above 1 count as they are: noise then cancels out.
 */
export function colorShares(
  found: readonly FoundColor[],
  { use, xyz, lab, restless }: SampleBlocks,
): readonly number[] {
  if (found.length === 1) return [1];
  const weights = found.map(() => 0);
  const near = Math.max(NEAR, NEAR_RESTLESS * restless);
  let all = 0;
  for (let at = 0; at < use.length; at++) {
    if (!use[at]) continue;
    all++;
    const close = found.length > 2 ? closeColor(found, lab, at, near) : -1;
    if (close >= 0) {
      weights[close]!++;
      continue;
    }
    const { one, other, part } = nearestMix(found, xyz, at, found.length === 2);
    weights[one]! += 1 - part;
    weights[other]! += part;
  }
  const kept = weights.map((weight) => Math.max(0, weight / all));
  const sum = kept.reduce((total, share) => total + share, 0);
  return kept.map((share) => share / sum);
}

function closeColor(found: readonly FoundColor[], lab: Float64Array, at: number, near: number): number {
  let [close, least] = [-1, near];
  found.forEach(({ lab: { l, a, b } }, k) => {
    const away = Math.hypot(lab[3 * at]! - l, lab[3 * at + 1]! - a, lab[3 * at + 2]! - b);
    if (away <= least) [close, least] = [k, away];
  });
  return close;
}

export interface ColorMix {
  readonly one: number;
  readonly other: number;
  /** Part of `other`, 0-1. */
  readonly part: number;
}

/** The two colors, and the part of the second, whose mixture in linear light comes nearest to a block; two colors at least. */
export function nearestMix(found: readonly FoundColor[], xyz: Float64Array, at: number, isFree = false): ColorMix {
  let best: ColorMix = { one: 0, other: 1, part: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let one = 0; one < found.length; one++) {
    for (let other = one + 1; other < found.length; other++) {
      const [from, to] = [found[one]!.xyz, found[other]!.xyz];
      let [along, length] = [0, 0];
      for (let c = 0; c < 3; c++) {
        along += (xyz[3 * at + c]! - from[c]!) * (to[c]! - from[c]!);
        length += (to[c]! - from[c]!) ** 2;
      }
      const free = length > 0 ? along / length : 0;
      const part = isFree ? free : Math.min(1, Math.max(0, free));
      let miss = 0;
      for (let c = 0; c < 3; c++) miss += (xyz[3 * at + c]! - from[c]! - part * (to[c]! - from[c]!)) ** 2;
      if (miss < least) [best, least] = [{ one, other, part }, miss];
    }
  }
  return best;
}
