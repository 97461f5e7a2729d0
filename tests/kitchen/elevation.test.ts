import { expect, it } from 'vitest';
import { drawElevation, drawIsland, type ElevationShape } from '../../src/kitchen/plan/elevation-drawing';
import type { Wall } from '../../src/model/kitchen';
import { LAYOUTS } from './layouts';

const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];
const of = (shapes: readonly ElevationShape[], kind: ElevationShape['kind']): ElevationShape[] =>
  shapes.filter((shape) => shape.kind === kind);
const demo = LAYOUTS['L with island']!;

it('stays within its wall, on every wall of every layout', () => {
  for (const [name, kitchen] of Object.entries(LAYOUTS)) {
    for (const wall of WALLS) {
      const { width_mm, height_mm, shapes } = drawElevation(kitchen, wall);
      expect(width_mm).toBe(wall === 'left' || wall === 'right' ? kitchen.room.depth : kitchen.room.width);
      for (const { kind, x, z, width, height } of shapes) {
        expect(Math.min(x, z), `${name} ${wall} ${kind}`).toBeGreaterThanOrEqual(-0.1);
        expect(x + width, `${name} ${wall} ${kind}`).toBeLessThanOrEqual(width_mm + 0.1);
        expect(z + height, `${name} ${wall} ${kind}`).toBeLessThanOrEqual(height_mm + 0.1);
        expect(Math.min(width, height)).toBeGreaterThan(0);
      }
    }
  }
});

it('draws fronts module less 3 mm wide and 715 mm high on a 720 mm carcass (common practice)', () => {
  const { shapes, modules, levels_mm } = drawElevation(demo, 'back');
  const base = modules.filter(({ row }) => row === 'base');
  const cooktop = base.find(({ x, width }) => x <= 1960 && x + width >= 2060)!;
  expect(of(shapes, 'drawer').filter(({ x }) => x > cooktop.x && x < cooktop.x + 10)).toHaveLength(3);
  const doors = of(shapes, 'front').filter(({ height }) => height === 715);
  expect(doors.length).toBeGreaterThan(0);
  for (const { width } of doors) expect([width + 3, 2 * (width + 3)].some((w) => w % 50 === 0)).toBe(true);
  // Toe kick, counter, wall units, tall units as the record gives them.
  expect(levels_mm).toEqual([150, 900, 1400, 2120, 2300]);
  expect(of(shapes, 'counter-edge')[0]).toMatchObject({ x: 0, z: 870, height: 30 });
  expect(of(shapes, 'hood')[0]).toMatchObject({ z: 900 + 650, height: 60 });
  expect(of(shapes, 'oven')[0]).toMatchObject({ z: 870, height: 595, surface: 'appliance' });
});

it('turns walls to the viewer: the left end of the right wall is its back corner', () => {
  const kitchen = LAYOUTS['L to the right']!;
  const right = drawElevation(kitchen, 'right');
  const [counter] = of(right.shapes, 'counter-edge').filter(({ width }) => width > 1000);
  // The run stands from 1500 mm to the back wall at 4000 mm; its counter butts against the back one, 620 deep.
  expect(counter).toMatchObject({ x: 620, width: 4000 - 620 - 1500 });
  const front = drawElevation(kitchen, 'front');
  const [door] = of(front.shapes, 'door');
  // 2600 mm from the right wall, which is on one's left.
  expect(door).toMatchObject({ x: 2600, width: 900, z: 0, height: 2050 });
});

it('draws windows, the open side, an apron and what stands on the walls beside', () => {
  expect(of(drawElevation(demo, 'left').shapes, 'window')[0]).toMatchObject({
    x: 1450,
    z: 1050,
    width: 1800,
    height: 1200,
  });
  const open = LAYOUTS['U with island, open side']!;
  const [side] = of(drawElevation(open, 'front').shapes, 'open-side');
  expect(side).toMatchObject({ x: 5200 - 3200, width: 2700, height: 2200, surface: null });
  const u = drawElevation(LAYOUTS['U']!, 'back').shapes;
  const ends = of(u, 'side').filter(({ surface, width }) => surface === 'base-fronts' && width === 600);
  expect(ends.map(({ x }) => x).sort((a, b) => a - b)).toEqual([0, 4000]);
  expect(of(drawElevation(LAYOUTS['U']!, 'left').shapes, 'sink').length).toBeGreaterThan(0);
});

it('draws the island from its seats, ends down to the floor included; none where there is none', () => {
  const island = drawIsland(LAYOUTS['U with island, open side']!)!;
  expect([island.width_mm, island.height_mm]).toEqual([1800, 900]);
  const falls = of(island.shapes, 'counter-edge').filter(({ z }) => z === 0);
  expect(falls.map(({ x, width, height }) => [x, width, height])).toEqual([
    [0, 30, 870],
    [1770, 30, 870],
  ]);
  expect(drawIsland(LAYOUTS['U']!)).toBeNull();
});
