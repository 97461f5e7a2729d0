import type { Rect, Vec3 } from '../engine/light/types';
import { SURFACES, type SurfaceId } from '../engine/surface';

/** Edges nearer than this are read as one line where two finishes meet, m. */
const TOUCH_M = 0.01;
/** Shorter contact than this is a corner, not an edge, m. */
const LEAST_CONTACT_M = 0.02;

interface Edge {
  readonly surface: number;
  readonly axis: 0 | 1 | 2;
  /** Place across the axis. */
  readonly p: number;
  readonly q: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The pairs of surfaces that meet: some edges of their rectangles run side by side within 1 cm for 2 cm or more.
 * Each pair once, in the order of SURFACES.
 */
export function meetingSurfaces(rects: readonly Rect[]): (readonly [SurfaceId, SurfaceId])[] {
  const buckets = new Map<string, Edge[]>();
  const met = new Set<number>();
  const cell = (value: number): number => Math.floor(value / TOUCH_M);
  for (const edge of rects.flatMap(edgesOf)) {
    const [i, j] = [cell(edge.p), cell(edge.q)];
    for (let di = -1; di <= 1; di++) {
      for (let dj = -1; dj <= 1; dj++) {
        for (const other of buckets.get(`${edge.axis} ${i + di} ${j + dj}`) ?? []) {
          if (other.surface !== edge.surface && meet(edge, other)) met.add(pairKey(edge.surface, other.surface));
        }
      }
    }
    const key = `${edge.axis} ${i} ${j}`;
    const bucket = buckets.get(key);
    if (bucket) bucket.push(edge);
    else buckets.set(key, [edge]);
  }
  return [...met]
    .sort((a, b) => a - b)
    .map((key) => [SURFACES[Math.floor(key / SURFACES.length)]!, SURFACES[key % SURFACES.length]!]);
}

function meet(a: Edge, b: Edge): boolean {
  return (
    Math.hypot(a.p - b.p, a.q - b.q) <= TOUCH_M && Math.min(a.to, b.to) - Math.max(a.from, b.from) >= LEAST_CONTACT_M
  );
}

const pairKey = (a: number, b: number): number => Math.min(a, b) * SURFACES.length + Math.max(a, b);

function edgesOf({ origin, u, v, surface }: Rect): Edge[] {
  if (surface < 0) return [];
  const far = (edge: Vec3): Vec3 => [origin[0] + edge[0], origin[1] + edge[1], origin[2] + edge[2]];
  return [
    edgeAt(origin, u, surface),
    edgeAt(far(v), u, surface),
    edgeAt(origin, v, surface),
    edgeAt(far(u), v, surface),
  ];
}

function edgeAt(start: Vec3, along: Vec3, surface: number): Edge {
  const axis = along[0] !== 0 ? 0 : along[1] !== 0 ? 1 : 2;
  const [p, q] = ([0, 1, 2] as const).filter((k) => k !== axis).map((k) => start[k]);
  const end = start[axis] + along[axis];
  return { surface, axis, p: p!, q: q!, from: Math.min(start[axis], end), to: Math.max(start[axis], end) };
}
