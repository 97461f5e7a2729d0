import type { AtlasLayout } from '../../engine/light/types';

/**
 * Bilinear reading of an atlas block at (u, v) in 0-1: the processor's twin of what the picture does. `read(texel)` gives
 * one channel of a texel; a block with one sample along an edge is constant along it.
 */
export function sampleAtlas(
  { blocks, width }: AtlasLayout,
  rect: number,
  u: number,
  v: number,
  read: (texel: number) => number,
): number {
  const x0 = blocks[4 * rect]!;
  const y0 = blocks[4 * rect + 1]!;
  const nu = blocks[4 * rect + 2]!;
  const nv = blocks[4 * rect + 3]!;
  const x = Math.min(1, Math.max(0, u)) * (nu - 1);
  const y = Math.min(1, Math.max(0, v)) * (nv - 1);
  const i = Math.min(Math.floor(x), Math.max(0, nu - 2));
  const j = Math.min(Math.floor(y), Math.max(0, nv - 2));
  const right = Math.min(i + 1, nu - 1);
  const above = Math.min(j + 1, nv - 1);
  const at = (column: number, row: number) => read((y0 + row) * width + x0 + column);
  const low = at(i, j) + (at(right, j) - at(i, j)) * (x - i);
  const high = at(i, above) + (at(right, above) - at(i, above)) * (x - i);
  return low + (high - low) * (y - j);
}
