import { labD65FromXyzD65 } from '../color/lab';
import { nearestMix } from './color-shares';
import { type FoundColor, meanOf, type SampleBlocks } from './found-color';

/** The pattern's weights have four channels. */
const MOST_COLORS = 4;
/** Lightness alone may differ by this much, L*, within one color: grain of the surface, light. Our judgment. */
const SAME_LIGHTNESS = 3;
/** From here on a block is no mixture of the colors found so far, CIELAB units or times the restlessness. Our judgment. */
const MISSED = 4;
const MISSED_RESTLESS = 3;
/** A color of its own leaves this much of the sample unexplained, or it is dust. Our judgment. */
const LEAST_TAIL = 0.012;
/** And this much of it is that color by more than half. Our judgment. */
const LEAST_SUPPORT = 0.008;
/** Its end is taken from this much of the sample, the furthest, all within `ONE_COLOR` of each other. Our judgment. */
const END = 0.004;
const ONE_COLOR = 10;

/**
 * Adds the ends of soft passages. A vein with a haze has no heap of its own: its blocks trail off from the base. As long as enough of
 * the sample is neither a color nor a mixture of two colors found, the furthest of that becomes the next color.
 */
export function addSoftColors(hard: readonly FoundColor[], blocks: SampleBlocks): readonly FoundColor[] {
  const { use, lab, xyz, restless } = blocks;
  let found = hard;
  const looked = use.slice();
  const total = use.reduce((sum, is) => sum + is, 0);
  const limit = Math.max(MISSED, MISSED_RESTLESS * restless);
  while (found.length < MOST_COLORS) {
    const misses: { at: number; miss: number }[] = [];
    for (let at = 0; at < use.length; at++) {
      if (!looked[at]) continue;
      const miss = missOf(found, blocks, at);
      if (miss > limit) misses.push({ at, miss });
    }
    if (misses.length < LEAST_TAIL * total) return found;
    misses.sort((a, b) => b.miss - a.miss || a.at - b.at);
    const ends = misses.slice(0, Math.max(1, Math.ceil(END * total)));
    const end = densest(
      ends.map(({ at }) => at),
      lab,
    );
    const marks = new Uint8Array(use.length);
    for (const at of end) marks[at] = 1;
    const next = [...found, meanOf(marks, xyz)];
    if (supportOf(next, blocks, looked) >= LEAST_SUPPORT * total) found = next;
    else for (const at of end) looked[at] = 0;
  }
  return found;
}

/** Number of blocks that are the last color by more than half. */
function supportOf(found: readonly FoundColor[], { xyz }: SampleBlocks, looked: Uint8Array): number {
  const last = found.length - 1;
  let count = 0;
  for (let at = 0; at < looked.length; at++) {
    if (!looked[at]) continue;
    const { one, other, part } = nearestMix(found, xyz, at);
    if ((other === last && part > 0.5) || (one === last && part < 0.5)) count++;
  }
  return count;
}

/** How far a block is from the nearest color or mixture of two, in CIELAB units, lightness counting from `SAME_LIGHTNESS` on. */
function missOf(found: readonly FoundColor[], { xyz, lab }: SampleBlocks, at: number): number {
  const away = (l: number, a: number, b: number) =>
    Math.hypot(Math.max(0, Math.abs(lab[3 * at]! - l) - SAME_LIGHTNESS), lab[3 * at + 1]! - a, lab[3 * at + 2]! - b);
  const alone = Math.min(...found.map(({ lab: { l, a, b } }) => away(l, a, b)));
  if (found.length === 1) return alone;
  const { one, other, part } = nearestMix(found, xyz, at);
  const [from, to] = [found[one]!.xyz, found[other]!.xyz];
  const mixed = labD65FromXyzD65({
    x: from[0] + part * (to[0] - from[0]),
    y: from[1] + part * (to[1] - from[1]),
    z: from[2] + part * (to[2] - from[2]),
  });
  return Math.min(alone, away(mixed.l, mixed.a, mixed.b));
}

/** Those of some blocks, the furthest first, that lie within `ONE_COLOR` of that of the first with the most neighbors. */
function densest(places: readonly number[], lab: Float64Array): readonly number[] {
  const isNear = (one: number, other: number) =>
    Math.hypot(
      lab[3 * one]! - lab[3 * other]!,
      lab[3 * one + 1]! - lab[3 * other + 1]!,
      lab[3 * one + 2]! - lab[3 * other + 2]!,
    ) <= ONE_COLOR;
  // Only the furthest of the furthest begin: a long tail is densest at its inner side.
  const seeds = Math.max(1, Math.ceil(places.length / 5));
  const step = Math.max(1, Math.floor(seeds / 50));
  let best: readonly number[] = places;
  let most = -1;
  for (let i = 0; i < seeds; i += step) {
    const near = places.filter((other) => isNear(places[i]!, other));
    if (near.length > most) [best, most] = [near, near.length];
  }
  return best;
}
