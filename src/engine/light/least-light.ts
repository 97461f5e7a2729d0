import type { NodeGather } from './nodes';
import { samplesOf } from './surface-light';
import type { LightRoom, SparseRows, SurfaceLight } from './types';

/** Illuminance by indirect light at every display node, lx. `patchLux`: the luminous exitance of each patch, lm/m2. */
export function nodeLux({ count, start, column, value }: SparseRows, patchLux: ArrayLike<number>): Float64Array {
  const lux = new Float64Array(count);
  for (let row = 0; row < count; row++) {
    let sum = 0;
    for (let e = start[row]!; e < start[row + 1]!; e++) sum += value[e]! * patchLux[column[e]!]!;
    lux[row] = sum;
  }
  return lux;
}

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
  let least = Infinity;
  let at = 0;
  for (const r of rects) {
    const { nu, nv } = samplesOf(room.fine[r]!);
    const alongU = atlas.blocks[4 * r + 2]!;
    const alongV = atlas.blocks[4 * r + 3]!;
    for (let j = 0; j < nv; j++) {
      const [below, above, up] = between((j + 0.5) / nv, alongV);
      for (let i = 0; i < nu; i++) {
        const [left, right, over] = between((i + 0.5) / nu, alongU);
        const read = (column: number, row: number) => indirect[first[r]! + row * alongU + column]!;
        const low = read(left, below) * (1 - over) + read(right, below) * over;
        const high = read(left, above) * (1 - over) + read(right, above) * over;
        let lux = low * (1 - up) + high * up;
        for (const level of levels) lux += level * directAt[at++]!;
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
