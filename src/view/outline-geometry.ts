import { BufferAttribute, BufferGeometry } from 'three';
import type { Segment } from './contour';

/** Ribbons for the outline shader: four corners per segment, each knowing both ends; normals of 0 mark a border. */
export function outlineGeometry(segments: readonly Segment[]): BufferGeometry {
  const starts = new Float32Array(12 * segments.length);
  const ends = new Float32Array(12 * segments.length);
  const firstNormals = new Float32Array(12 * segments.length);
  const secondNormals = new Float32Array(12 * segments.length);
  const corners = new Float32Array(8 * segments.length);
  const indices = new Uint32Array(6 * segments.length);
  segments.forEach((segment, i) => {
    for (let k = 0; k < 4; k++) {
      starts.set(segment.start, 12 * i + 3 * k);
      ends.set(segment.end, 12 * i + 3 * k);
      if (segment.between) {
        firstNormals.set(segment.between[0], 12 * i + 3 * k);
        secondNormals.set(segment.between[1], 12 * i + 3 * k);
      }
    }
    corners.set([0, -1, 1, -1, 1, 1, 0, 1], 8 * i);
    indices.set(
      [0, 1, 2, 0, 2, 3].map((k) => 4 * i + k),
      6 * i,
    );
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('start', new BufferAttribute(starts, 3));
  geometry.setAttribute('end', new BufferAttribute(ends, 3));
  geometry.setAttribute('firstNormal', new BufferAttribute(firstNormals, 3));
  geometry.setAttribute('secondNormal', new BufferAttribute(secondNormals, 3));
  geometry.setAttribute('corner', new BufferAttribute(corners, 2));
  geometry.setIndex(new BufferAttribute(indices, 1));
  return geometry;
}
