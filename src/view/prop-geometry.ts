import { BufferAttribute, BufferGeometry } from 'three';
import type { PropMesh } from '../engine/light/types';

/** Components of a finish that a prop may show. */
const COMPONENTS = 4;

/** Attribute of a component's indirect colour. */
const indirectOf = (component: number): string => `indirect${component}`;

/** A prop with its light per vertex: direct lx per group, and the indirect colours of one look; and its place on the pattern. */
export function propGeometry(prop: PropMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  const vertices = prop.positions.length / 3;
  geometry.setAttribute('position', new BufferAttribute(prop.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(withFourth(prop.normals, prop.isNarrow ? 0 : 1), 4));
  geometry.setAttribute('daylight', new BufferAttribute(new Float32Array(4 * vertices), 4));
  geometry.setAttribute('lamps', new BufferAttribute(new Float32Array(4 * vertices), 4));
  for (let component = 0; component < (prop.pattern ? COMPONENTS : 1); component++) {
    geometry.setAttribute(indirectOf(component), new BufferAttribute(new Float32Array(3 * vertices), 3));
  }
  if (prop.pattern) geometry.setAttribute('patternMetres', new BufferAttribute(prop.pattern, 2));
  geometry.setIndex(new BufferAttribute(prop.indices, 1));
  return geometry;
}

/** A prop's form alone. */
export function propShape({ positions, indices }: PropMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
}

/** Overwrites the direct light of a prop; values of another length (a stale room) are left out. */
export function updatePropLight(geometry: BufferGeometry, name: 'daylight' | 'lamps', values?: Float32Array): void {
  if (values) overwrite(geometry, name, values);
}

/** Overwrites the indirect colours of a prop, given component after component; those of another room are left out. */
export function updatePropColors(geometry: BufferGeometry, colors?: Float32Array): void {
  const length = geometry.getAttribute('position').count * 3;
  if (!colors || colors.length % length !== 0) return;
  for (let component = 0; component < Math.min(COMPONENTS, colors.length / length); component++) {
    overwrite(geometry, indirectOf(component), colors.subarray(component * length, (component + 1) * length));
  }
}

function overwrite(geometry: BufferGeometry, name: string, values: Float32Array): void {
  const attribute = geometry.getAttribute(name) as BufferAttribute | undefined;
  if (values.length !== attribute?.array.length) return;
  attribute.array.set(values);
  attribute.needsUpdate = true;
}

/** Three components per vertex with a fourth: 1, curved faces mirror the room however narrow they are; 0, flat narrow ones do not. */
function withFourth(triples: Float32Array, fourth: 0 | 1): Float32Array {
  const out = new Float32Array((triples.length / 3) * 4).fill(fourth);
  for (let i = 0; i < triples.length; i++) out[4 * Math.floor(i / 3) + (i % 3)] = triples[i]!;
  return out;
}
