import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { PropMesh, Vec3 } from '../../src/engine/light/types';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { tube } from '../../src/kitchen/props/tube';
import type { Kitchen } from '../../src/model/kitchen';

const room = buildRoom(scene as Kitchen);
const vertex = (values: ArrayLike<number>, i: number): Vec3 => [values[3 * i]!, values[3 * i + 1]!, values[3 * i + 2]!];

/** Signed volume by the divergence theorem: positive when triangles run counter-clockwise from outside. */
function volume(positions: ArrayLike<number>, indices: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertex(positions, indices[i + k]!)) as [Vec3, Vec3, Vec3];
    total +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return total / 6;
}

it('turns a straight path into a cylinder (volume of the inscribed prism: n/2 r^2 sin(2 pi/n) h)', () => {
  const mesh = tube(
    [
      [1, 2, 3],
      [1, 2, 3.5],
    ],
    [0.1, 0.1],
    24,
  );
  expect(volume(mesh.positions, mesh.indices)).toBeCloseTo(12 * 0.01 * Math.sin((2 * Math.PI) / 24) * 0.5, 9);
});

it('encloses volume outward, with unit normals on the side of the triangles, inside the room', () => {
  for (const prop of room.light.props) {
    if (prop.name !== 'cooking zones') expect(volume(prop.positions, prop.indices)).toBeGreaterThan(0);
    for (let i = 0; i < prop.positions.length / 3; i++) {
      expect(Math.hypot(...vertex(prop.normals, i))).toBeCloseTo(1, 5);
      vertex(prop.positions, i).forEach((c, k) => {
        expect(c).toBeGreaterThan(0);
        expect(c).toBeLessThan(room.size[k]!);
      });
    }
    expect(turnedTriangles(prop)).toBe(0);
  }
});

function turnedTriangles({ positions, normals, indices }: PropMesh): number {
  let turned = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [p, q, r] = [0, 1, 2].map((k) => vertex(positions, indices[i + k]!)) as [Vec3, Vec3, Vec3];
    const e = [0, 1, 2].map((k) => q[k]! - p[k]!);
    const f = [0, 1, 2].map((k) => r[k]! - p[k]!);
    const face = [e[1]! * f[2]! - e[2]! * f[1]!, e[2]! * f[0]! - e[0]! * f[2]!, e[0]! * f[1]! - e[1]! * f[0]!];
    const n = vertex(normals, indices[i]!);
    if (n[0] * face[0]! + n[1] * face[1]! + n[2] * face[2]! <= 0) turned++;
  }
  return turned;
}

it('bends the tap over the bowl of the sink', () => {
  const tap = room.light.props.find((prop) => prop.surface === SURFACES.indexOf('tap'))!;
  const bottom = room.light.fine.find(
    (rect) => rect.surface === SURFACES.indexOf('sink') && Math.abs(rect.origin[2] - 0.71) < 1e-6,
  )!;
  // The lowest point of the spout's outer half hangs above the bowl's bottom, clear of the rim.
  const over = [...Array(tap.positions.length / 3).keys()]
    .map((i) => vertex(tap.positions, i))
    .filter((p) => p[0] > bottom.origin[0] + 0.1 && p[2] > 0.9);
  expect(over.length).toBeGreaterThan(0);
  for (const p of over) expect(p[2]).toBeGreaterThan(1);
});
