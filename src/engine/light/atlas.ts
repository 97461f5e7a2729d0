import type { AtlasLayout, Rect } from './types';

const MAX_WIDTH = 2048;
/** A shorter edge gets one sample: light hardly changes across it. */
const ONE_SAMPLE_M = 0.02;

/**
 * Packs a block of samples per rectangle on shelves. Samples include both ends of an edge and stand at most `spacing` m
 * apart (one number, or one for each edge); an edge under 2 cm has one sample. Readers interpolate between sample centres, so blocks need no margin.
 */
export function layoutAtlas<T extends Rect>(
  rects: readonly T[],
  spacing: (rect: T, index: number) => number | readonly [alongU: number, alongV: number],
): AtlasLayout {
  const blocks = new Int32Array(4 * rects.length);
  let samples = 0;
  let widest = 1;
  rects.forEach((rect, i) => {
    const step = spacing(rect, i);
    const [stepU, stepV] = typeof step === 'number' ? [step, step] : step;
    const nu = Math.min(MAX_WIDTH, samplesAlong(Math.hypot(...rect.u), stepU));
    const nv = samplesAlong(Math.hypot(...rect.v), stepV);
    blocks[4 * i + 2] = nu;
    blocks[4 * i + 3] = nv;
    samples += nu * nv;
    widest = Math.max(widest, nu);
  });
  const width = Math.min(MAX_WIDTH, Math.max(widest, Math.ceil(Math.sqrt(samples * 1.05))));
  const tallFirst = [...rects.keys()].sort((a, b) => blocks[4 * b + 3]! - blocks[4 * a + 3]! || a - b);
  let x = 0;
  let y = 0;
  let shelf = 0;
  for (const i of tallFirst) {
    const nu = blocks[4 * i + 2]!;
    if (x + nu > width) {
      y += shelf;
      x = 0;
      shelf = 0;
    }
    blocks[4 * i] = x;
    blocks[4 * i + 1] = y;
    x += nu;
    shelf = Math.max(shelf, blocks[4 * i + 3]!);
  }
  return { width, height: Math.max(1, y + shelf), blocks };
}

/** Fraction 0-1 along an edge of sample i of n; a single sample stands in the middle. */
export const sampleFraction = (i: number, n: number): number => (n === 1 ? 0.5 : i / (n - 1));

function samplesAlong(edge: number, step: number): number {
  return edge < ONE_SAMPLE_M ? 1 : Math.max(2, Math.ceil(edge / step - 1e-6) + 1);
}
