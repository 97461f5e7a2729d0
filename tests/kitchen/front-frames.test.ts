import { expect, it } from 'vitest';
import type { FineRect, Vec3 } from '../../src/engine/light/types';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { buildFine } from '../../src/kitchen/fine';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import { bevelProps } from '../../src/kitchen/props/bevels';
import type { Kitchen } from '../../src/model/kitchen';
import { demo } from './detail-kitchens';
import { bounds, facing } from './geometry';
import { meshArea, vertex } from './meshes';

const surface = SURFACES.indexOf('base-fronts');
const mm = (metres: number): number => Math.round(metres * 1e4) / 10;
const flat = (fronts: Partial<Kitchen['fronts']>): Kitchen => ({
  ...demo,
  fronts: { ...demo.fronts, style: 'flat', ...fronts },
});
const backRun = (kitchen: Kitchen): FineRect[] =>
  buildRoom(kitchen).light.fine.filter((rect) => {
    const { axis, sign } = facing(rect);
    return rect.surface === surface && axis === 1 && sign === -1 && mm(rect.origin[1]) === 3400;
  });

it('sets doors and drawers into a face frame, flush: 38 mm faces, 2 mm reveals (common practice, no source)', () => {
  const faces = backRun(flat({ mounting: 'inset' }));
  const sizes = faces.map((rect) => {
    const { min, max } = bounds(rect);
    return [mm(max[0] - min[0]), mm(max[2] - min[2])] as const;
  });
  // Two pairs of 900: between half stiles, less the reveals at both sides and in the middle; rails above and below.
  const door = [(900 - 38 - 3 * 2) / 2, 720 - 2 * 38 - 2 * 2];
  expect(sizes.filter(([w, h]) => w === door[0] && h === door[1])).toHaveLength(4);
  // The drawers of the cooktop: 140 high on top, two equal ones below, rails of 38 and reveals of 2 between.
  const deep = (720 - 4 * 38 - 3 * 4 - 140) / 2;
  expect(sizes.filter(([w, h]) => w === 900 - 38 - 4 && h === 140)).toHaveLength(1);
  expect(sizes.filter(([w, h]) => w === 900 - 38 - 4 && h === deep)).toHaveLength(2);
});

it('fills a module between its edges with half stiles, reveals and fronts', () => {
  const faces = backRun(flat({ mounting: 'inset' })).map(bounds);
  const plan = planKitchen(flat({ mounting: 'inset' }));
  const unit = plan.runs.find(({ wall }) => wall === 'back')!.base.units.find(({ kind }) => kind === 'pair')!;
  const level = plan.plinth.top + 0.3;
  const across = faces
    .filter(({ min, max }) => min[2] < level && max[2] > level && min[0] > unit.from - 1e-6 && max[0] < unit.to + 1e-6)
    .sort((p, q) => p.min[0] - q.min[0]);
  expect(across.map(({ min, max }) => mm(max[0] - min[0]))).toEqual([19, 428, 428, 19]);
  const gaps = across.slice(1).map(({ min }, i) => mm(min[0] - across[i]!.max[0]));
  expect(gaps).toEqual([2, 2, 2]);
});

it('ends fronts without handles 20 mm below the counter and below each other, over a rail', () => {
  const { fine } = buildRoom(flat({ handle: 'none' })).light;
  const faces = backRun(flat({ handle: 'none' })).map(bounds);
  const tops = [...new Set(faces.map(({ max }) => mm(max[2])))].sort((a, b) => a - b);
  const low = 150 + 2;
  const top = 870 - 20;
  const deep = (top - low - 140 - 2 * 20) / 2;
  const expected = [low + deep, low + 2 * deep + 20, top];
  for (const height of expected) expect(tops.some((z) => Math.abs(z - height) < 0.06)).toBe(true);
  const rails = fine.filter((rect) => rect.surface === SURFACES.indexOf('hardware') && facing(rect).axis === 1);
  expect(rails.length).toBeGreaterThan(0);
  for (const rect of rails) expect(mm(bounds(rect).max[2] - bounds(rect).min[2])).toBe(20);
});

it('leads frames down to their panels by bevels at 45 degrees, mitred, the grain running on', () => {
  const { recesses } = buildFine(planKitchen(demo));
  const { fine } = buildRoom(demo).light;
  const b = 0.005;
  for (const mesh of bevelProps(recesses)) {
    const own = recesses.filter((recess) => recess.surface === SURFACES[mesh.surface]);
    // Closed form: four trapezoids, each as long in the middle as its side less the bevel.
    const area = own.reduce((sum, { extent: { a, z } }) => {
      return sum + 2 * (a[1] - a[0] - b + z[1] - z[0] - b) * Math.SQRT2 * b;
    }, 0);
    expect(meshArea(mesh)).toBeCloseTo(area, 5);
    for (let i = 0; i < mesh.normals.length / 3; i++) {
      const parts = vertex(mesh.normals, i)
        .map(Math.abs)
        .sort((p, q) => p - q);
      expect(parts[0]).toBeCloseTo(0, 6);
      expect(parts[1]).toBeCloseTo(Math.SQRT1_2, 6);
    }
  }
  const [mesh] = bevelProps(recesses).filter((one) => one.surface === surface) as [
    ReturnType<typeof bevelProps>[number],
  ];
  const panels = fine.filter(
    (rect) => rect.surface === surface && facing(rect).axis === 1 && mm(rect.origin[1]) === 3408,
  );
  let feet = 0;
  for (let i = 0; i < mesh.positions.length / 3; i++) {
    const p = vertex(mesh.positions, i);
    const panel = panels.find((rect) => mm(p[1]) === 3408 && holds(rect, p));
    if (!panel) continue;
    feet++;
    const { origin, pattern } = panel;
    // s follows z and t follows x, at one to one.
    expect(mesh.pattern![2 * i]!).toBeCloseTo(pattern.s0 + p[2] - origin[2], 4);
    expect(mesh.pattern![2 * i + 1]!).toBeCloseTo(pattern.t0 + p[0] - origin[0], 4);
  }
  expect(feet).toBeGreaterThan(4 * panels.length);
});

function holds(rect: FineRect, p: Vec3): boolean {
  const { min, max } = bounds(rect);
  return p[0] > min[0] && p[0] < max[0] && p[2] > min[2] && p[2] < max[2];
}
