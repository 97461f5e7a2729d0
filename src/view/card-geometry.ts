import { BufferAttribute, BufferGeometry } from 'three';
import type { Rect } from '../engine/light/types';
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
  // Whole on its face: the card slides inward where the place is near an edge.
  const inside = (f: number, edge: number) => {
    const margin = Math.min(0.5, card / 2 / edge);
    return Math.min(1 - margin, Math.max(margin, f));
  };
  const center = [inside(u, along), inside(v, across)] as const;
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
