import { blockX, blockY } from './patch';
import { fitPlane } from './robust';
import type { Patch, SampleColor } from './types';

/** Blocks of the largest color are those within this CIELAB distance of it, or this many times its spread. Our judgment. */
const NEAR = 10;
const NEAR_SPREADS = 2.5;
/** As many blocks tell a plane well enough. */
const ENOUGH = 20_000;

/**
 * How much lighter one end of a sample's largest color is than the other, as a share of its luminance: uneven light, or a
 * material that changes; a picture cannot tell which.
 */
export function sampleSlope(patch: Patch, use: Uint8Array, lab: Float64Array, color: SampleColor): number {
  const { l, a, b } = color.lab;
  const limit = Math.max(NEAR, NEAR_SPREADS * color.spreadDe00);
  const every = Math.ceil(use.length / ENOUGH);
  const found: number[] = [];
  for (let at = 0; at < use.length; at += every) {
    if (!use[at]) continue;
    if (Math.hypot(lab[3 * at]! - l, lab[3 * at + 1]! - a, lab[3 * at + 2]! - b) <= limit) found.push(at);
  }
  if (found.length < 9) return 0;
  const dx = Float64Array.from(found, (at) => blockX(patch, at));
  const dy = Float64Array.from(found, (at) => blockY(patch, at));
  for (const places of [dx, dy]) {
    const middle = places.reduce((sum, place) => sum + place, 0) / places.length;
    for (let i = 0; i < places.length; i++) places[i]! -= middle;
  }
  // Y goes with the cube of L* + 16.
  const logs = Float64Array.from(found, (at) => 3 * Math.log(Math.max(1, lab[3 * at]! + 16)));
  const { alongX, alongY } = fitPlane(dx, dy, logs);
  return Math.abs(alongX) * patch.width * patch.step + Math.abs(alongY) * patch.height * patch.step;
}
