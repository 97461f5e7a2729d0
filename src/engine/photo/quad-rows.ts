import type { PicturePoint, PictureQuad } from './types';

/** Where the sides cross a row, from the left: the area lies between the first and the second, the third and the fourth. */
export function crossingsAt(corners: readonly PicturePoint[], y: number): readonly number[] {
  const found: number[] = [];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    if (a.y <= y === b.y <= y) return;
    found.push(a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x));
  });
  return found.sort((a, b) => a - b);
}

/** Rows an overlap is measured in: it is off by about a half percent of the smaller area. */
const ROWS = 200;

/** Area that two quads share, as a part (0-1) of the smaller one; 0 where one of them has no area. */
export function overlapOf(a: PictureQuad, b: PictureQuad): number {
  const ys = [...a, ...b].map(({ y }) => y);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  let [ofA, ofB, shared] = [0, 0, 0];
  for (let row = 0; row < ROWS; row++) {
    const y = top + ((row + 0.5) / ROWS) * (bottom - top);
    const [inA, inB] = [spansAt(a, y), spansAt(b, y)];
    ofA += lengthOf(inA);
    ofB += lengthOf(inB);
    for (const [from, to] of inA)
      shared += lengthOf(inB.map(([start, end]) => [Math.max(from, start), Math.min(to, end)]));
  }
  const smaller = Math.min(ofA, ofB);
  return smaller > 0 ? shared / smaller : 0;
}

type Span = readonly [from: number, to: number];

function spansAt(quad: PictureQuad, y: number): readonly Span[] {
  const crossings = crossingsAt(quad, y);
  return crossings.flatMap((from, i) =>
    i % 2 === 0 && i + 1 < crossings.length ? [[from, crossings[i + 1]!] as const] : [],
  );
}

const lengthOf = (spans: readonly Span[]) => spans.reduce((sum, [from, to]) => sum + Math.max(0, to - from), 0);
