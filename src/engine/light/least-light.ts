import { gatherNodes, type NodeGather } from './nodes';
import { samplesOf } from './surface-light';
import type { LightRoom, SurfaceLight } from './types';

/** Illuminance by indirect light at every display node, lx. `patchLux`: the luminous exitance of each patch, lm/m2. */
export const nodeLux = (nodes: Pick<NodeGather, 'rows'>, patchLux: ArrayLike<number>): Float32Array =>
  gatherNodes(nodes, Float32Array.from(patchLux), 1);

/**
 * Least illuminance over the sample points of a surface, lx: direct light there and what bounces there, as the nodes around
 * have it. `levels` dim the groups; `indirect` is what `nodeLux` gives for the same levels.
 */
export function leastLux(
  room: Pick<LightRoom, 'fine'>,
  { atlas, first }: Pick<NodeGather, 'atlas' | 'first'>,
  { rects, directAt }: SurfaceLight,
  levels: readonly number[],
  indirect: ArrayLike<number>,
): number {
  const burning = [...levels.keys()].filter((group) => levels[group]! > 0);
  let least = Infinity;
  let at = 0;
  for (const r of rects) {
    const { nu, nv } = samplesOf(room.fine[r]!);
    const alongU = atlas.blocks[4 * r + 2]!;
    const across = Array.from({ length: nu }, (_, i) => between((i + 0.5) / nu, alongU));
    for (let j = 0; j < nv; j++) {
      const [below, above, up] = between((j + 0.5) / nv, atlas.blocks[4 * r + 3]!);
      const low = first[r]! + below * alongU;
      const high = first[r]! + above * alongU;
      for (const [left, right, over] of across) {
        const under = indirect[low + left]! + (indirect[low + right]! - indirect[low + left]!) * over;
        const upper = indirect[high + left]! + (indirect[high + right]! - indirect[high + left]!) * over;
        let lux = under + (upper - under) * up;
        for (const group of burning) lux += levels[group]! * directAt[at + group]!;
        at += levels.length;
        if (lux < least) least = lux;
      }
    }
  }
  return least;
}

/** The samples on both sides of a fraction of an edge, and the way from one to the other. */
function between(fraction: number, count: number): readonly [number, number, number] {
  const x = fraction * (count - 1);
  const from = Math.min(Math.floor(x), Math.max(0, count - 2));
  return [from, Math.min(from + 1, count - 1), x - from];
}
