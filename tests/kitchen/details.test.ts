import { describe, expect, it } from 'vitest';
import type { PropMesh, Solid, Vec3 } from '../../src/engine/light/types';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { buildFine } from '../../src/kitchen/fine';
import { cooktopBox } from '../../src/kitchen/parts/cooktop';
import { shelfBoards } from '../../src/kitchen/parts/shelves';
import { sinkBowls } from '../../src/kitchen/parts/sink';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Plan } from '../../src/kitchen/plan/types';
import { thingsOf } from '../../src/kitchen/props/place-things';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { variants } from './detail-kitchens';
import { inside } from './geometry';
import { brokenInvariants } from './invariants';
import { turnedTriangles, vertex } from './meshes';

const count = ({ positions }: PropMesh): number => positions.length / 3;

/** Fronts that open, by what the rows hold; appliances that show have handles of their own. */
function openingFronts(plan: Plan): number {
  const per = { door: 1, pair: 2, sink: 2, drawers: 3, cooktop: 3, 'cooktop-oven': 0, dishwasher: 1 };
  const rows = plan.runs.flatMap((run) => [run.base, ...run.over]);
  if (plan.island) rows.push(plan.island.row as (typeof rows)[number]);
  let total = 0;
  for (const { kind } of rows.flatMap((row) => row.units)) {
    total += kind === 'dishwasher' && plan.dishwasher === 'free-standing' ? 0 : per[kind];
  }
  for (const { kind } of plan.runs.flatMap((run) => run.tall).flatMap((block) => block.units)) {
    // Drawers under an oven and a door over it; two doors of a larder or a hidden fridge; a door over a fridge that shows.
    total += kind === 'oven' ? 4 : kind === 'larder' || plan.fridge === 'hidden' ? 2 : 1;
  }
  if (plan.hood?.kind === 'built-in') total += plan.hood.to - plan.hood.from >= 0.8 ? 2 : 1;
  return total;
}

const overlap = (a: Solid, b: Solid, margin: number): boolean =>
  a.min.every((low, k) => Math.min(a.max[k]!, b.max[k]!) - Math.max(low, b.min[k]!) > margin);

describe.each(Object.entries(variants))('%s', (name, kitchen) => {
  const room = buildRoom(kitchen);
  const plan = planKitchen(kitchen);
  const fine = buildFine(plan);
  const { props, shades } = room.light;

  it('fits, and keeps every invariant of the geometry', () => {
    expect(kitchenMisfits(kitchen)).toEqual([]);
    expect(brokenInvariants(kitchen, 400)).toEqual([]);
  });

  it('stays within its budget of vertices', () => {
    const total = props.reduce((sum, prop) => sum + count(prop), 0);
    expect(total).toBeLessThan(name === 'demo' ? 15_000 : 25_000);
  });

  it('keeps its props in the room and out of solids, with unit normals on the outside', () => {
    for (const prop of props) {
      expect(prop.surface, prop.name).toBeGreaterThanOrEqual(0);
      expect(turnedTriangles(prop), prop.name).toBe(0);
      for (let i = 0; i < count(prop); i++) {
        const p = vertex(prop.positions, i);
        expect(Math.hypot(...vertex(prop.normals, i))).toBeCloseTo(1, 5);
        p.forEach((c, k) => {
          expect(c).toBeGreaterThanOrEqual(0);
          expect(c).toBeLessThanOrEqual(room.size[k]!);
        });
        if (inside(p, fine.solids, 5e-4)) expect.fail(`${prop.name} in a solid at ${p}`);
      }
    }
  });

  it('has one handle for every door and drawer', () => {
    const handles = fine.bars.filter(({ surface }) => surface === 'hardware').length;
    expect(handles).toBe(plan.fronts.handle === 'none' ? 0 : openingFronts(plan));
  });

  it('stands things on counters and shelves, not over sink or cooktop, none in another, white or steel', () => {
    const things = thingsOf(plan);
    expect(things.length).toBeGreaterThan(3);
    const [min, max] = cooktopBox(plan);
    const taken: Solid[] = [...sinkBowls(plan), { min, max }].map((box) => ({
      min: box.min,
      max: [box.max[0], box.max[1], 2],
    }));
    const levels = [plan.counter.top, ...shelfBoards(plan).map(({ extent }) => extent.z[1])];
    for (const { surface, shade, mesh } of things) {
      expect(['frame', 'appliance']).toContain(surface);
      for (const box of [...fine.solids, ...taken]) expect(overlap(shade, box, 1e-6)).toBe(false);
      const heights = mesh.positions.filter((_, i) => i % 3 === 2);
      const lowest = Math.min(...heights);
      const isOnLevel = levels.some((level) => Math.abs(lowest - level) < 1e-6);
      // Spoons stand in a jar.
      expect(isOnLevel || surface === 'appliance').toBe(true);
    }
    things.forEach((a, i) => {
      for (const b of things.slice(i + 1)) expect(overlap(a.shade, b.shade, 1e-6)).toBe(false);
    });
  });

  it('lets shades lie within the room', () => {
    for (const { min, max } of shades!) {
      min.forEach((low, k) => {
        expect(low).toBeGreaterThanOrEqual(0);
        expect(max[k]!).toBeGreaterThan(low);
        expect(max[k]!).toBeLessThan(room.size[k]!);
      });
    }
  });
});

it('shows no things where the kitchen has none', () => {
  expect(thingsOf({ ...planKitchen(variants.demo!), objects: false })).toEqual([]);
});

it('cuts the counter for the bowls at two fits alike, and shows its cut edge below an undermount sink only', () => {
  const counter = SURFACES.indexOf('counter');
  const linings = (fit: 'inset' | 'undermount'): number => {
    const { light } = buildRoom({ ...variants.demo!, sink: { ...variants.demo!.sink, fit } });
    const plan = planKitchen(variants.demo!);
    const [bowl] = sinkBowls(plan) as [Solid];
    const inHole = (p: Vec3): boolean =>
      p[0] > bowl.min[0] - 1e-6 && p[0] < bowl.max[0] + 1e-6 && p[1] > bowl.min[1] - 1e-6 && p[1] < bowl.max[1] + 1e-6;
    return light.fine
      .filter((rect) => rect.surface === counter && inHole(rect.origin))
      .filter(({ origin, u, v }) => inHole(origin.map((c, k) => c + u[k]! + v[k]!) as unknown as Vec3))
      .reduce((sum, { u, v }) => sum + Math.hypot(...u) * Math.hypot(...v), 0);
  };
  expect(linings('inset')).toBe(0);
  // Four sides of a 560 x 400 cut-out, 30 high.
  expect(linings('undermount')).toBeCloseTo(2 * (0.56 + 0.4) * 0.03, 9);
});
