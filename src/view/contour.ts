import type { Rect, Vec3 } from '../engine/light/types';
import { cornersOf, edgeLine, STEPS_PER_M } from './edge-lines';

/** A straight piece of a contour, m. */
export interface Segment {
  readonly start: Vec3;
  readonly end: Vec3;
}

/** The outer contour of some rectangles: the parts of their edges that no other of these rectangles shares. */
export function contourOf(rects: readonly Rect[]): readonly Segment[] {
  const lines = new Map<string, { axis: number; from: number; to: number }[]>();
  for (const rect of rects) {
    const corners = cornersOf(rect);
    for (let i = 0; i < 4; i++) {
      const edge = edgeLine(corners[i]!, corners[(i + 1) % 4]!);
      const edges = lines.get(edge.line);
      if (edges) edges.push(edge);
      else lines.set(edge.line, [edge]);
    }
  }
  const segments: Segment[] = [];
  for (const [line, edges] of lines) {
    const axis = edges[0]!.axis;
    const [, first, second] = line.split(':').map(Number) as [number, number, number];
    const placeAt = (step: number): Vec3 => {
      const place = [first, second];
      place.splice(axis, 0, step);
      return place.map((c) => c / STEPS_PER_M) as unknown as Vec3;
    };
    for (const [from, to] of coveredOnce(edges)) segments.push({ start: placeAt(from), end: placeAt(to) });
  }
  return segments;
}

/** The stretches of a line that exactly one of the intervals covers, touching stretches joined. */
function coveredOnce(edges: readonly { from: number; to: number }[]): readonly (readonly [number, number])[] {
  const change = new Map<number, number>();
  for (const { from, to } of edges) {
    change.set(from, (change.get(from) ?? 0) + 1);
    change.set(to, (change.get(to) ?? 0) - 1);
  }
  const stretches: [number, number][] = [];
  let depth = 0;
  let since = 0;
  for (const [step, by] of [...change].sort((a, b) => a[0] - b[0])) {
    if (depth === 1 && by !== 0) stretches.push([since, step]);
    if (by !== 0) since = step;
    depth += by;
  }
  return stretches;
}
