import { BufferAttribute, BufferGeometry } from 'three';
import type { Rect } from '../engine/light/types';
import { cornersOf } from './edge-lines';
import { rectNormal } from './rect-normal';

/** Lamp faces and panes stand this far before the black rectangle they cover, m. */
const IN_FRONT_M = 0.0005;

/** Quads for lamp faces or window panes, each with values of its own as attributes. Null when there are none. */
export function faceGeometry(
  rects: readonly Rect[],
  attributes: Readonly<Record<string, (face: number) => number>>,
): BufferGeometry | null {
  if (rects.length === 0) return null;
  const positions: number[] = [];
  const normals: number[] = [];
  const indices: number[] = [];
  rects.forEach((rect, face) => {
    const normal = rectNormal(rect);
    for (const corner of cornersOf(rect)) {
      for (let k = 0; k < 3; k++) positions.push(corner[k]! + IN_FRONT_M * normal[k]!);
      normals.push(...normal);
    }
    const first = 4 * face;
    indices.push(first, first + 1, first + 2, first, first + 2, first + 3);
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setAttribute('normal', new BufferAttribute(new Float32Array(normals), 3));
  for (const [name, of] of Object.entries(attributes)) {
    const values = rects.flatMap((_, face) => new Array<number>(4).fill(of(face)));
    geometry.setAttribute(name, new BufferAttribute(new Float32Array(values), 1));
  }
  geometry.setIndex(new BufferAttribute(new Uint32Array(indices), 1));
  return geometry;
}
