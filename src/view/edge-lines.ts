import type { Rect, Vec3 } from '../engine/light/types';

/** Coordinates are compared in steps of 10 micrometres, so that rectangles built in different ways still share corners. */
export const STEPS_PER_M = 1e5;

/** An edge of an axis-aligned rectangle: it runs along `axis` (0-2) from `from` to `to` (steps, from < to). */
export interface EdgeLine {
  /** Same for all edges on one infinite line. */
  readonly line: string;
  readonly axis: number;
  readonly from: number;
  readonly to: number;
}

export const stepsOf = (metres: number): number => Math.round(metres * STEPS_PER_M);

/** The corners in order: origin, +u, +u+v, +v. */
export function cornersOf(rect: Rect): readonly [Vec3, Vec3, Vec3, Vec3] {
  const [x, y, z] = rect.origin;
  const { u, v } = rect;
  return [
    rect.origin,
    [x + u[0], y + u[1], z + u[2]],
    [x + u[0] + v[0], y + u[1] + v[1], z + u[2] + v[2]],
    [x + v[0], y + v[1], z + v[2]],
  ];
}

/** The line two points of an axis-aligned edge lie on, and the stretch between them. */
export function edgeLine(a: Vec3, b: Vec3): EdgeLine {
  const p = a.map(stepsOf);
  const q = b.map(stepsOf);
  let axis = 0;
  for (let k = 1; k < 3; k++) if (Math.abs(q[k]! - p[k]!) > Math.abs(q[axis]! - p[axis]!)) axis = k;
  const rest = p.filter((_, k) => k !== axis);
  return {
    line: `${axis}:${rest[0]}:${rest[1]}`,
    axis,
    from: Math.min(p[axis]!, q[axis]!),
    to: Math.max(p[axis]!, q[axis]!),
  };
}

/**
 * Corners of all rectangles, by the axis-parallel lines they lie on: line -> sorted steps along it. A rectangle whose edge
 * passes a neighbour's corner must bend there too, or rounding leaves pinholes between the two.
 */
export function cornersByLine(rects: readonly Rect[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, Set<number>>();
  for (const rect of rects) {
    for (const corner of cornersOf(rect)) {
      const [x, y, z] = corner.map(stepsOf) as [number, number, number];
      add(found, `0:${y}:${z}`, x);
      add(found, `1:${x}:${z}`, y);
      add(found, `2:${x}:${y}`, z);
    }
  }
  return new Map([...found].map(([line, steps]) => [line, [...steps].sort((a, b) => a - b)]));
}

function add(map: Map<string, Set<number>>, key: string, value: number): void {
  const set = map.get(key);
  if (set) set.add(value);
  else map.set(key, new Set([value]));
}
