import type { FineRect, Rect, Solid, Vec3, Viewpoint } from '../../src/engine/light/types';

export type Axis = 0 | 1 | 2;

/** Axis and sign of the side that u x v points to. */
export function facing({ u, v }: Rect): { readonly axis: Axis; readonly sign: 1 | -1 } {
  const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
  const axis = n.findIndex((c) => c !== 0) as Axis;
  return { axis, sign: n[axis]! > 0 ? 1 : -1 };
}

export function bounds({ origin, u, v }: Rect): { readonly min: Vec3; readonly max: Vec3 } {
  const far = origin.map((c, k) => c + u[k]! + v[k]!) as unknown as Vec3;
  return {
    min: origin.map((c, k) => Math.min(c, far[k]!)) as unknown as Vec3,
    max: origin.map((c, k) => Math.max(c, far[k]!)) as unknown as Vec3,
  };
}

export const area = ({ u, v }: Rect): number => Math.hypot(...u) * Math.hypot(...v);

/** The middle of a rectangle, moved `out` metres to its front. */
export function frontPoint(rect: Rect, out: number): Vec3 {
  const { axis, sign } = facing(rect);
  return rect.origin.map(
    (c, k) => c + rect.u[k]! / 2 + rect.v[k]! / 2 + (k === axis ? sign * out : 0),
  ) as unknown as Vec3;
}

export const inside = (p: Vec3, solids: readonly Solid[], margin = 0): boolean =>
  solids.some(({ min, max }) => p.every((c, k) => c > min[k]! + margin && c < max[k]! - margin));

export interface Hit {
  readonly index: number;
  readonly distance: number;
  readonly front: boolean;
}

/** First rectangle a ray meets, seen or from behind; tries them all. */
export function castRay(rects: readonly Rect[], from: Vec3, direction: Vec3): Hit | null {
  let best: Hit | null = null;
  rects.forEach((rect, index) => {
    const { axis, sign } = facing(rect);
    const distance = (rect.origin[axis] - from[axis]) / direction[axis];
    if (!(distance > 1e-9) || (best && distance >= best.distance)) return;
    const { min, max } = bounds(rect);
    for (let k = 0; k < 3; k++) {
      if (k === axis) continue;
      const at = from[k]! + distance * direction[k]!;
      if (at < min[k]! || at > max[k]!) return;
    }
    best = { index, distance, front: direction[axis] * sign < 0 };
  });
  return best;
}

/** Pairs of rectangles in one plane, looking the same way, that share some area: they would flicker. */
export function coplanarOverlaps(rects: readonly Rect[]): [number, number][] {
  const planes = new Map<string, number[]>();
  const pairs: [number, number][] = [];
  rects.forEach((rect, i) => {
    const { axis, sign } = facing(rect);
    const cell = Math.round(rect.origin[axis] / 1e-4);
    const a = bounds(rect);
    for (const near of [cell - 1, cell, cell + 1]) {
      for (const j of planes.get(`${axis} ${sign} ${near}`) ?? []) {
        const b = bounds(rects[j]!);
        const shared = ([0, 1, 2] as const).filter(
          (k) => k !== axis && Math.min(a.max[k], b.max[k]) - Math.max(a.min[k], b.min[k]) > 1e-6,
        );
        if (shared.length === 2) pairs.push([j, i]);
      }
    }
    const key = `${axis} ${sign} ${cell}`;
    planes.set(key, [...(planes.get(key) ?? []), i]);
  });
  return pairs;
}

/** Share of a picture (width : height = aspect) taken by each surface index; handles and tap are not counted. */
export function pictureShares(
  fine: readonly FineRect[],
  viewpoint: Viewpoint,
  aspect: number,
  columns: number,
): Map<number, number> {
  const rows = Math.round(columns / aspect);
  const forward = unit(viewpoint.target.map((c, k) => c - viewpoint.eye[k]!) as unknown as Vec3);
  const right = unit([forward[1], -forward[0], 0]);
  const up: Vec3 = [
    right[1] * forward[2] - right[2] * forward[1],
    right[2] * forward[0] - right[0] * forward[2],
    right[0] * forward[1] - right[1] * forward[0],
  ];
  const half = Math.tan((viewpoint.fov_deg * Math.PI) / 360);
  const shares = new Map<number, number>();
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const a = ((2 * column + 1) / columns - 1) * half * aspect;
      const b = (1 - (2 * row + 1) / rows) * half;
      const direction = forward.map((c, k) => c + a * right[k]! + b * up[k]!) as unknown as Vec3;
      const hit = castRay(fine, viewpoint.eye, direction);
      const surface = hit ? fine[hit.index]!.surface : -2;
      shares.set(surface, (shares.get(surface) ?? 0) + 1 / (rows * columns));
    }
  }
  return shares;
}

function unit(a: Vec3): Vec3 {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
}
