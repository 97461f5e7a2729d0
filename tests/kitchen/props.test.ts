import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { box } from '../../src/kitchen/props/box';
import { lathe } from '../../src/kitchen/props/lathe';
import { tube } from '../../src/kitchen/props/tube';
import type { Kitchen } from '../../src/model/kitchen';
import { turnedTriangles, vertex, volume } from './meshes';

const room = buildRoom(scene as Kitchen);
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

it('turns a rectangle about an axis into a cylinder (the same prism), its facets shaded apart', () => {
  const facets = [
    [
      [0, 0],
      [0.1, 0],
    ],
    [
      [0.1, 0],
      [0.1, 0.5],
    ],
    [
      [0.1, 0.5],
      [0, 0.5],
    ],
  ] as const;
  const mesh = lathe([1, 2, 3], facets, 24);
  expect(volume(mesh.positions, mesh.indices)).toBeCloseTo(12 * 0.01 * Math.sin((2 * Math.PI) / 24) * 0.5, 9);
  const levels = new Set(mesh.normals.filter((_, i) => i % 3 === 2));
  expect([...levels].map((z) => z + 0).sort()).toEqual([-1, 0, 1]);
});

it('makes boxes of their volume', () => {
  const mesh = box([1, 2, 3], [1.2, 1.7, 3.4]);
  expect(volume(mesh.positions, mesh.indices)).toBeCloseTo(0.2 * 0.3 * 0.4, 9);
});

it('encloses volume outward, with unit normals on the side of the triangles, inside the room', () => {
  for (const prop of room.light.props) {
    // Marks lie on glass, edges and bevels on what they finish: they enclose nothing.
    const isOpen = prop.name === 'cooking zones' || prop.pattern;
    if (!isOpen) expect(volume(prop.positions, prop.indices)).toBeGreaterThan(0);
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
