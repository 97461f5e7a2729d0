import { blockX, blockY } from './patch';
import { fitPlane } from './robust';
import type { Patch, SampleColor } from './types';

/** Blocks of the largest color are those within this CIELAB distance of it, or this many times its spread. Our judgement. */
const NEAR = 10;
const NEAR_SPREADS = 2.5;

/**
 * How much lighter one end of a sample's largest color is than the other, as a share of its luminance: uneven light, or a
 * material that changes; a picture cannot tell which.
 */
export function sampleSlope(patch: Patch, use: Uint8Array, lab: Float64Array, color: SampleColor): number {
  const { l, a, b } = color.lab;
  const limit = Math.max(NEAR, NEAR_SPREADS * color.spreadDe00);
  const found: { x: number; y: number; log: number }[] = [];
  for (let at = 0; at < use.length; at++) {
    if (!use[at]) continue;
    const is = Math.hypot(lab[3 * at]! - l, lab[3 * at + 1]! - a, lab[3 * at + 2]! - b);
    if (is > limit) continue;
    found.push({ x: blockX(patch, at), y: blockY(patch, at), log: 3 * Math.log(Math.max(1, lab[3 * at]! + 16)) });
  }
  if (found.length < 9) return 0;
  const middle = { x: 0, y: 0 };
  for (const { x, y } of found) {
    middle.x += x / found.length;
    middle.y += y / found.length;
  }
  const { alongX, alongY } = fitPlane(
    Float64Array.from(found, ({ x }) => x - middle.x),
    Float64Array.from(found, ({ y }) => y - middle.y),
    Float64Array.from(found, ({ log }) => log),
  );
  return Math.abs(alongX) * patch.width * patch.step + Math.abs(alongY) * patch.height * patch.step;
}
