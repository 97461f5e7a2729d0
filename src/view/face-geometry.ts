import { BufferAttribute, BufferGeometry } from 'three';
import type { Rect, Vec3 } from '../engine/light/types';
import { cornersOf } from './edge-lines';
import { rectNormal } from './rect-normal';

/** Lamp faces and panes stand this far before the black rectangle they cover, m. */
const IN_FRONT_M = 0.0005;

/** A flat convex face: corners counter-clockwise as one looks at it, m, and its unit normal. */
export interface Face {
  readonly corners: readonly Vec3[];
  readonly normal: Vec3;
}

export const faceOfRect = (rect: Rect): Face => ({ corners: cornersOf(rect), normal: rectNormal(rect) });

/** Lamp faces or window panes, each with values of its own as attributes. Null when there are none. */
export function faceGeometry(
  faces: readonly Face[],
  attributes: Readonly<Record<string, (face: number) => number>>,
): BufferGeometry | null {
  if (faces.length === 0) return null;
  const positions: number[] = [];
  const normals: number[] = [];
  const indices: number[] = [];
  for (const { corners, normal } of faces) {
    const first = positions.length / 3;
    for (const corner of corners) {
      for (let k = 0; k < 3; k++) positions.push(corner[k]! + IN_FRONT_M * normal[k]!);
      normals.push(...normal);
    }
    for (let i = 2; i < corners.length; i++) indices.push(first, first + i - 1, first + i);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  geometry.setAttribute('normal', new BufferAttribute(new Float32Array(normals), 3));
  for (const [name, of] of Object.entries(attributes)) {
    const values = faces.flatMap(({ corners }, face) => new Array<number>(corners.length).fill(of(face)));
    geometry.setAttribute(name, new BufferAttribute(new Float32Array(values), 1));
  }
  geometry.setIndex(new BufferAttribute(new Uint32Array(indices), 1));
  return geometry;
}
