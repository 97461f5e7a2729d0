import type { PropMesh, Rect } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';
import type { Room } from './types';

/** A prop nearer than this to a face is fixed to it or stands on it, m. */
const FIXED_M = 0.003;

type Pair = readonly [SurfaceId, SurfaceId];

/**
 * The pairs of surfaces that touch: along an edge, as a thing fixed to a face, or parted by nothing but a strip of trim
 * along the floor (our judgment: people see wall and floor meet there). Each pair once.
 */
export function touchingSurfaces({ edges, light, surfaces }: Pick<Room, 'edges' | 'light' | 'surfaces'>): Pair[] {
  const pairs = new Map<string, Pair>();
  const add = (a: SurfaceId, b: SurfaceId) => {
    const inOrder = surfaces.indexOf(a) <= surfaces.indexOf(b) ? ([a, b] as const) : ([b, a] as const);
    if (a !== b) pairs.set(inOrder.join('|'), inOrder);
  };
  for (const [a, b] of edges) add(a, b);
  for (const prop of light.props) {
    // Things for scale stand about; nobody chooses their finish.
    if (prop.name.startsWith('things of')) continue;
    for (const surface of facesUnder(prop, light.fine)) add(surfaces[prop.surface]!, surfaces[surface]!);
  }
  if (pairs.has('floor|frame') && pairs.has('wall|frame')) add('floor', 'wall');
  return [...pairs.values()];
}

/** The surfaces on whose faces some vertex of a prop lies. */
function facesUnder({ positions, surface }: PropMesh, rects: readonly Rect[]): Set<number> {
  const found = new Set<number>();
  const mesh = boundsOf(positions);
  for (const rect of rects) {
    if (rect.surface < 0 || rect.surface === surface || found.has(rect.surface)) continue;
    const { min, max } = boxAround(rect);
    if ([0, 1, 2].some((k) => mesh.min[k]! > max[k]! || mesh.max[k]! < min[k]!)) continue;
    for (let i = 0; i < positions.length; i += 3) {
      const [x, y, z] = [positions[i]!, positions[i + 1]!, positions[i + 2]!];
      const isInside = x >= min[0]! && x <= max[0]! && y >= min[1]! && y <= max[1]! && z >= min[2]! && z <= max[2]!;
      if (isInside) {
        found.add(rect.surface);
        break;
      }
    }
  }
  return found;
}

function boxAround({ origin, u, v }: Rect): { readonly min: number[]; readonly max: number[] } {
  const low = (k: number) => origin[k]! + Math.min(0, u[k]!) + Math.min(0, v[k]!);
  const high = (k: number) => origin[k]! + Math.max(0, u[k]!) + Math.max(0, v[k]!);
  return { min: [0, 1, 2].map((k) => low(k) - FIXED_M), max: [0, 1, 2].map((k) => high(k) + FIXED_M) };
}

function boundsOf(positions: Float32Array): { readonly min: number[]; readonly max: number[] } {
  const min = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const max = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  positions.forEach((value, i) => {
    min[i % 3] = Math.min(min[i % 3]!, value);
    max[i % 3] = Math.max(max[i % 3]!, value);
  });
  return { min, max };
}
