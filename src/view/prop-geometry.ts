import { BufferAttribute, BufferGeometry } from 'three';
import type { PropMesh } from '../engine/light/types';

/** A prop with its light per vertex: direct lx per group, and the indirect colour of one look. */
export function propGeometry(prop: PropMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  const vertices = prop.positions.length / 3;
  geometry.setAttribute('position', new BufferAttribute(prop.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(withOnes(prop.normals), 4));
  geometry.setAttribute('daylight', new BufferAttribute(new Float32Array(4 * vertices), 4));
  geometry.setAttribute('lamps', new BufferAttribute(new Float32Array(4 * vertices), 4));
  geometry.setAttribute('indirect', new BufferAttribute(new Float32Array(3 * vertices), 3));
  geometry.setIndex(new BufferAttribute(prop.indices, 1));
  return geometry;
}

/** Overwrites one attribute of a prop; values of another length (a stale room) are left out. */
export function updatePropLight(
  geometry: BufferGeometry,
  name: 'daylight' | 'lamps' | 'indirect',
  values?: Float32Array,
): void {
  const attribute = geometry.getAttribute(name) as BufferAttribute;
  if (!values || values.length !== attribute.array.length) return;
  attribute.array.set(values);
  attribute.needsUpdate = true;
}

/** Three components per vertex with a fourth of 1: curved faces mirror the room however narrow they are. */
function withOnes(triples: Float32Array): Float32Array {
  const out = new Float32Array((triples.length / 3) * 4).fill(1);
  for (let i = 0; i < triples.length; i++) out[4 * Math.floor(i / 3) + (i % 3)] = triples[i]!;
  return out;
}
