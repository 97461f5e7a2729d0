import { BufferAttribute, BufferGeometry } from 'three';
import type { Rect, Vec3 } from '../engine/light/types';
import { rectNormal } from './rect-normal';
import type { Mark } from './types';

/** A card as one holds it in the hand, m; smaller where the face is. */
const CARD_M = 0.09;
const LEAST_M = 0.012;

/** A square that lies `gap` m before a face, round the marked place, as wide as `share` of a card. */
export function cardGeometry(rect: Rect, { u, v }: Pick<Mark, 'u' | 'v'>, share: number, gap: number): BufferGeometry {
  const normal = rectNormal(rect);
  const [along, across] = [Math.hypot(...rect.u), Math.hypot(...rect.v)];
  const card = Math.max(LEAST_M, Math.min(CARD_M, 0.8 * along, 0.8 * across));
  const center = [inside(u, along, card), inside(v, across, card)] as const;
  const half = (share * card) / 2;
  const positions: number[] = [];
  for (const [su, sv] of [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const) {
    const fu = center[0] + (su * half) / along;
    const fv = center[1] + (sv * half) / across;
    for (let k = 0; k < 3; k++) {
      positions.push(rect.origin[k]! + fu * rect.u[k]! + fv * rect.v[k]! + gap * normal[k]!);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  return geometry;
}

/**
 * A card of real size, m, `gap` m before a face and as upright as that lets it: its height up, or away along y where the face lies.
 * It slides inward where the place is near an edge, and stands over the edges of a face that is smaller. With texture coordinates.
 */
export function heldGeometry(
  rect: Rect,
  { u, v }: Pick<Mark, 'u' | 'v'>,
  [width, height]: readonly [number, number],
  gap: number,
): BufferGeometry {
  const normal = rectNormal(rect);
  const isUpAlongU = Math.abs(normal[2]) > 0.5 ? rect.u[1] !== 0 : rect.u[2] !== 0;
  const upEdge = isUpAlongU ? rect.u : rect.v;
  // Right of up as seen from the front.
  const sign = upEdge[0] + upEdge[1] + upEdge[2] > 0 ? 1 : -1;
  const length = Math.hypot(...upEdge);
  const up = upEdge.map((x) => (sign * x) / length) as unknown as Vec3;
  const right: Vec3 = [
    up[1] * normal[2] - up[2] * normal[1],
    up[2] * normal[0] - up[0] * normal[2],
    up[0] * normal[1] - up[1] * normal[0],
  ];
  const middle = [
    inside(u, Math.hypot(...rect.u), isUpAlongU ? height : width),
    inside(v, Math.hypot(...rect.v), isUpAlongU ? width : height),
  ] as const;
  const positions: number[] = [];
  const uv: number[] = [];
  for (const [x, y] of [
    [0, 0],
    [1, 0],
    [1, 1],
    [0, 1],
  ] as const) {
    uv.push(x, y);
    for (let k = 0; k < 3; k++) {
      const center = rect.origin[k]! + middle[0] * rect.u[k]! + middle[1] * rect.v[k]!;
      positions.push(center + (x - 0.5) * width * right[k]! + (y - 0.5) * height * up[k]! + gap * normal[k]!);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setAttribute('uv', new BufferAttribute(new Float32Array(uv), 2));
  geometry.setIndex([0, 1, 2, 0, 2, 3]);
  return geometry;
}

/** The middle of what is `size` m long, along an edge of `edge` m, so that it stays on it; in the middle where it is too long. */
function inside(fraction: number, edge: number, size: number): number {
  const margin = Math.min(0.5, size / 2 / edge);
  return Math.min(1 - margin, Math.max(margin, fraction));
}
