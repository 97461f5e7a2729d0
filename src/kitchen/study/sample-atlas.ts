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
  let sum = 0;
  for (const [texel, weight] of texelsAround(nu, nv, u, v)) {
    sum += weight * read((y0 + Math.floor(texel / nu)) * width + x0 + (texel % nu));
  }
  return sum;
}

/** The texels around (u, v) of a block of nu x nv, u fastest, and their weights, which sum to 1; those of no weight left out. */
export function texelsAround(nu: number, nv: number, u: number, v: number): [texel: number, weight: number][] {
  const [i, x] = cellOf(nu, u);
  const [j, y] = cellOf(nv, v);
  const corners: [texel: number, weight: number][] = [
    [j * nu + i, (1 - x) * (1 - y)],
    [j * nu + i + 1, x * (1 - y)],
    [(j + 1) * nu + i, (1 - x) * y],
    [(j + 1) * nu + i + 1, x * y],
  ];
  return corners.filter(([, weight]) => weight > 0);
}

/** The sample below a fraction of an edge and the way from it to the next. */
function cellOf(count: number, fraction: number): readonly [sample: number, way: number] {
  const at = Math.min(1, Math.max(0, fraction)) * (count - 1);
  const sample = Math.min(Math.floor(at), Math.max(0, count - 2));
  return [sample, at - sample];
}
