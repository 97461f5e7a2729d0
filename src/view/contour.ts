import type { Rect, Vec3 } from '../engine/light/types';
import { cornersOf, edgeLine, STEPS_PER_M } from './edge-lines';
import { rectNormal } from './rect-normal';

/** A straight piece of a contour, m. */
export interface Segment {
  readonly start: Vec3;
  readonly end: Vec3;
  /**
   * Normals of the two faces that meet here: contour only where one is seen and the other is not. Null on a border, which is
   * always contour.
   */
  readonly between: readonly [Vec3, Vec3] | null;
}

interface Edge {
  readonly axis: number;
  readonly from: number;
  readonly to: number;
  readonly normal: Vec3;
}

/** What may be the outer contour of some rectangles: borders that no other of them shares, and folds between two of them. */
export function contourOf(rects: readonly Rect[]): readonly Segment[] {
  const lines = new Map<string, Edge[]>();
  for (const rect of rects) {
    const corners = cornersOf(rect);
    const normal = rectNormal(rect);
    for (let i = 0; i < 4; i++) {
      const { line, ...stretch } = edgeLine(corners[i]!, corners[(i + 1) % 4]!);
      const edges = lines.get(line);
      if (edges) edges.push({ ...stretch, normal });
      else lines.set(line, [{ ...stretch, normal }]);
    }
  }
  return [...lines].flatMap(([line, edges]) => segmentsOn(line, edges));
}

function segmentsOn(line: string, edges: readonly Edge[]): Segment[] {
  const axis = edges[0]!.axis;
  const [, first, second] = line.split(':').map(Number) as [number, number, number];
  const placeAt = (step: number): Vec3 => {
    const place = [first, second];
    place.splice(axis, 0, step);
    return place.map((c) => c / STEPS_PER_M) as unknown as Vec3;
  };
  const stops = [...new Set(edges.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  const segments: Segment[] = [];
  for (let i = 0; i + 1 < stops.length; i++) {
    const [from, to] = [stops[i]!, stops[i + 1]!];
    const over = edges.filter((edge) => edge.from <= from && edge.to >= to);
    const fold = over.find(({ normal }) => !same(normal, over[0]!.normal));
    if (over.length !== 1 && !fold) continue;
    const between = fold ? ([over[0]!.normal, fold.normal] as const) : null;
    const before = segments[segments.length - 1];
    const start = placeAt(from);
    // One long piece rather than many: dashes run on.
    if (before && same(before.end, start) && sameFold(before.between, between)) {
      segments[segments.length - 1] = { ...before, end: placeAt(to) };
    } else {
      segments.push({ start, end: placeAt(to), between });
    }
  }
  return segments;
}

const same = (a: Vec3, b: Vec3): boolean => a.every((c, k) => Math.abs(c - b[k]!) < 1e-9);

const sameFold = (a: Segment['between'], b: Segment['between']): boolean =>
  a === b || (a !== null && b !== null && same(a[0], b[0]) && same(a[1], b[1]));
