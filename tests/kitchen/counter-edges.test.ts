import { describe, expect, it } from 'vitest';
import type { FineRect, PropMesh, Vec3 } from '../../src/engine/light/types';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { edgeProfile, profileDepth } from '../../src/kitchen/parts/counter-edge';
import { freeEdges } from '../../src/kitchen/parts/slabs';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { CounterEdge, Kitchen } from '../../src/model/kitchen';
import { demo } from './detail-kitchens';
import { facing } from './geometry';
import { meshArea, vertex } from './meshes';

const T = 0.03;
const SHAPED: readonly CounterEdge[] = ['pencil', 'bevel', 'half-bullnose', 'full-bullnose'];
const withEdge = (edge: CounterEdge): Kitchen => ({ ...demo, counter: { ...demo.counter, edge } });
const edgesOf = (edge: CounterEdge): PropMesh[] =>
  buildRoom(withEdge(edge)).light.props.filter(({ name }) => name.endsWith(' edge'));

it('rounds and cuts as the trade draws it: closed forms of the profiles', () => {
  const length = (edge: CounterEdge): number => edgeProfile(edge, T).flat().at(-1)!.length;
  // Quarter circle of 3 mm, the rest of the front, and back to where the slab begins.
  expect(length('pencil')).toBeCloseTo((Math.PI / 2) * 0.003 + (T - 0.003) + 0.003, 12);
  expect(length('bevel')).toBeCloseTo(Math.SQRT2 * 0.004 + (T - 0.004) + 0.004, 12);
  expect(length('half-bullnose')).toBeCloseTo((Math.PI / 2) * (T / 2) + T / 2 + T / 2, 12);
  // Half the girth of a circle as thick as the slab.
  expect(length('full-bullnose')).toBeCloseTo((Math.PI * T) / 2, 12);
  expect(edgeProfile('eased', T)).toEqual([]);
  expect(edgeProfile('mitred', T)).toEqual([]);
});

it('puts the points of a bullnose on its circle, with normals from its middle', () => {
  for (const edge of ['half-bullnose', 'full-bullnose'] as const) {
    const r = T / 2;
    const arc = edgeProfile(edge, T)[0]!.filter(({ down }) => edge === 'full-bullnose' || down <= r + 1e-12);
    for (const { inward, down, normal } of arc) {
      expect(Math.hypot(r - inward, r - down)).toBeCloseTo(r, 12);
      expect(normal[0]).toBeCloseTo((r - inward) / r, 12);
      expect(normal[1]).toBeCloseTo((r - down) / r, 12);
    }
  }
});

it('finds the free edges of the demo: fronts, the end of the short leg, all round the island', () => {
  const edges = freeEdges(planKitchen(demo));
  const total = (surface: string): number =>
    edges.filter(({ slab }) => slab.surface === surface).reduce((sum, { from, to }) => sum + to - from, 0);
  // Closed forms from the record: back run from the inner corner to the tall units, short leg and its end, island.
  expect(total('counter')).toBeCloseTo(3.36 - 0.62 + (4 - 0.62 - 0.91) + 0.62, 9);
  expect(total('island-counter')).toBeCloseTo(2 * (1.8 + 0.9), 9);
  const ends = edges.flatMap(({ ends: { from, to } }) => [from, to]);
  expect(ends.filter((end) => end === 'outer')).toHaveLength(8 + 2);
  expect(ends.filter((end) => end === 'inner')).toHaveLength(2);
});

describe.each(SHAPED)('%s', (edge) => {
  const { fine } = buildRoom(withEdge(edge)).light;
  const meshes = edgesOf(edge);
  const depth = profileDepth(edge, T);

  it('has one mesh for each counter finish, within the slab it replaces', () => {
    expect(meshes.map(({ surface }) => SURFACES[surface])).toEqual(['counter', 'island-counter']);
    for (const { positions } of meshes) {
      for (let i = 2; i < positions.length; i += 3) {
        expect(positions[i]!).toBeGreaterThan(0.87 - 1e-6);
        expect(positions[i]!).toBeLessThan(0.9 + 1e-6);
      }
    }
  });

  it('lets the pattern run on from the slab at the seam', () => {
    const top = (fine as FineRect[]).filter((rect) => facing(rect).axis === 2 && facing(rect).sign === 1);
    for (const { positions, pattern, surface } of meshes) {
      let seams = 0;
      for (let i = 0; i < positions.length / 3; i++) {
        const p = vertex(positions, i);
        // In the inner corner the mitre of one slab ends in the other, cut from another place.
        const isInnerCorner = Math.hypot(p[0] - 0.62, p[1] - 3.38) < 2 * depth;
        if (Math.abs(p[2] - 0.9) > 1e-6 || isInnerCorner) continue;
        const beside = top
          .filter((rect) => rect.surface === surface && Math.abs(rect.origin[2] - 0.9) < 1e-9)
          .map((rect) => patternAt(rect, p))
          .filter((at) => at !== null);
        if (beside.length === 0) continue;
        seams++;
        const off = beside.map(([s, t]) => Math.hypot(s - pattern![2 * i]!, t - pattern![2 * i + 1]!));
        expect(Math.min(...off)).toBeLessThan(1e-5);
      }
      expect(seams).toBeGreaterThan(20);
    }
  });

  it('is laid at real size: along the profile, pattern and length agree', () => {
    const facets = edgeProfile(edge, T);
    for (const points of facets) {
      for (let i = 1; i < points.length; i++) {
        const [a, b] = [points[i - 1]!, points[i]!];
        const chord = Math.hypot(a.inward - b.inward, a.down - b.down);
        expect(b.length - a.length).toBeGreaterThanOrEqual(chord - 1e-12);
        // An arc of 22.5 degrees is 0.6 % longer than its chord.
        expect(b.length - a.length).toBeLessThan(1.01 * chord + 1e-12);
      }
    }
  });

  it('closes at its corners: every point where an edge turns is shared by both edges', () => {
    const island = meshes[1]!;
    // An edge all round has no open border but its seam and its end under the slab: each mitre line is there twice.
    const keys = new Map<string, number>();
    for (let i = 0; i < island.positions.length / 3; i++) {
      const [x, y, z] = vertex(island.positions, i);
      const inX = Math.min(x - 1.75, 3.55 - x);
      const inY = Math.min(y - 1.35, 2.25 - y);
      if (Math.abs(inX - inY) > 1e-6) continue;
      const key = [x, y, z].map((c) => Math.round(c * 1e5)).join();
      keys.set(key, (keys.get(key) ?? 0) + 1);
    }
    const rings = edgeProfile(edge, T).flat();
    const distinct = new Set(rings.map(({ inward, down }) => `${inward.toFixed(9)} ${down.toFixed(9)}`)).size;
    // One more for the tongue under the slab.
    expect(keys.size).toBe(4 * (distinct + 1));
    for (const times of keys.values()) expect(times % 2).toBe(0);
  });

  it('covers the area of its profile along the middle of its strip (Pappus and Guldin, mitred corners)', () => {
    let expected = 0;
    for (const points of edgeProfile(edge, T)) {
      for (let i = 1; i < points.length; i++) {
        const [a, b] = [points[i - 1]!, points[i]!];
        const inward = (a.inward + b.inward) / 2;
        expected += Math.hypot(a.inward - b.inward, a.down - b.down) * (2 * (1.8 + 0.9) - 8 * inward);
      }
    }
    // The tongue under the slab, 3 mm deep, falls by 0.3 mm.
    expected += Math.hypot(0.003, 0.0003) * (2 * (1.8 + 0.9) - 8 * (depth + 0.0015));
    expect(meshArea(meshes[1]!)).toBeCloseTo(expected, 5);
  });

  it('takes light every 10 cm or nearer', () => {
    for (const { from, to } of freeEdges(planKitchen(withEdge(edge)))) expect(to - from).toBeGreaterThan(2 * depth);
    const { positions, indices } = meshes[1]!;
    for (let i = 0; i < indices.length; i += 3) {
      const [a, b] = [vertex(positions, indices[i]!), vertex(positions, indices[i + 1]!)];
      expect(Math.max(Math.abs(a[0] - b[0]), Math.abs(a[1] - b[1]))).toBeLessThan(0.1);
    }
  });
});

it('builds a mitred edge up to 60 mm by a strip below the slab, its pattern running on', () => {
  const { fine } = buildRoom({ ...demo, counter: { ...demo.counter, thickness: 20, edge: 'mitred' } }).light;
  const front = (fine as FineRect[]).filter(
    (rect) =>
      rect.surface === SURFACES.indexOf('island-counter') &&
      facing(rect).axis === 1 &&
      facing(rect).sign === 1 &&
      Math.abs(rect.origin[1] - 2.25) < 1e-9,
  );
  const heights = front.map(({ origin, u, v }) => [origin[2], origin[2] + u[2] + v[2]].sort((a, b) => a - b));
  expect(Math.min(...heights.map(([low]) => low!))).toBeCloseTo(0.89 - 0.06, 9);
  expect(Math.max(...heights.map(([, high]) => high!))).toBeCloseTo(0.89, 9);
  for (const rect of front) {
    const p: Vec3 = rect.origin;
    // Down the front, t goes on past the edge at y = 2.25.
    expect(rect.pattern.t0).toBeCloseTo(2.25 + (0.89 - p[2]), 9);
    expect(rect.pattern.s0).toBeCloseTo(p[0], 9);
  }
});

it('turns the pattern of a waterfall end down from the counter', () => {
  const { fine } = buildRoom({ ...demo, island: { ...demo.island!, waterfall: 'left' } }).light;
  const outer = (fine as FineRect[]).filter(
    (rect) =>
      rect.surface === SURFACES.indexOf('island-counter') &&
      facing(rect).axis === 0 &&
      facing(rect).sign === -1 &&
      Math.abs(rect.origin[0] - 1.75) < 1e-9,
  );
  const area = outer.reduce((sum, { u, v }) => sum + Math.hypot(...u) * Math.hypot(...v), 0);
  expect(area).toBeCloseTo(0.9 * 0.9, 9);
  for (const { origin, pattern } of outer) {
    expect(pattern.s0).toBeCloseTo(1.75 - (0.9 - origin[2]), 9);
    expect(pattern.t0).toBeCloseTo(origin[1], 9);
  }
});

/** Where a point lies on a level rectangle's pattern; null beside it. */
function patternAt({ origin, u, v, pattern }: FineRect, p: Vec3): [number, number] | null {
  const along = (edge: Vec3): number => {
    const axis = edge[0] !== 0 ? 0 : 1;
    return (p[axis] - origin[axis]) / edge[axis];
  };
  const [a, b] = [along(u), along(v)];
  if (Math.min(a, b) < -1e-6 || Math.max(a, b) > 1 + 1e-6) return null;
  return [pattern.s0 + a * pattern.su + b * pattern.sv, pattern.t0 + a * pattern.tu + b * pattern.tv];
}
