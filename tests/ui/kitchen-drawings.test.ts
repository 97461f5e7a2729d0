import { describe, expect, it } from 'vitest';
import { drawElevation } from '../../src/kitchen/plan/elevation-drawing';
import { clearanceHints } from '../../src/model/clearances';
import type { Kitchen, Region, Wall } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import type { LayoutId } from '../../src/model/new-kitchen/layout-drafts';
import { USERS } from '../../src/model/project';
import { type Dimension, dimensionWords, planDimensions, planMargins } from '../../src/ui/room/dimensions';
import { elevationDimensions } from '../../src/ui/room/elevation-dimensions';
import { fieldOfShape } from '../../src/ui/room/field-of-shape';
import { wallAxis } from '../../src/ui/room/wall-axis';
import { clearanceWords } from '../../src/ui/words/clearances';
import { KITCHEN } from '../../src/ui/words/kitchen';

const REGIONS: readonly Region[] = ['eu', 'uk', 'us'];
const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];
const kitchens = (Object.keys(KITCHEN.layouts) as LayoutId[]).flatMap((layout) =>
  REGIONS.map((region) => [layout, region, kitchenFor(layout, region, usualRoom(layout, region))!] as const),
);
const LETTER = 200;
const WALL_MM = 110;

/** What the words of dimensions take, as boxes. */
function wordBoxes(dimensions: readonly Dimension[], unit: 'mm' | 'in', mayTurn: boolean) {
  return dimensions.flatMap((one) => {
    const words = dimensionWords(one, unit, LETTER);
    if (!words || (words.isTurned && !mayTurn)) return [];
    const isAlongX = one.from[1] === one.to[1];
    const [low, high] = one.side === 'before' ? [-words.depth_mm, 0] : [0, words.depth_mm];
    const [x, y] = one.from;
    return [
      isAlongX
        ? { x: [Math.min(x, one.to[0]), Math.max(x, one.to[0])], y: [y + low, y + high] }
        : { x: [x + low, x + high], y: [Math.min(y, one.to[1]), Math.max(y, one.to[1])] },
    ];
  });
}

describe.each(kitchens)('the drawings of a kitchen, %s, %s', (_layout, _region, kitchen) => {
  it.each(['mm', 'in'] as const)('keep every dimension within the drawing, in %s', (unit) => {
    const { width, depth } = kitchen.room;
    const rows = planRows(kitchen);
    const plan = planMargins(rows, LETTER, WALL_MM);
    for (const { x, y } of wordBoxes(planDimensions(kitchen, rows, LETTER, WALL_MM), unit, false)) {
      expect(x[0]).toBeGreaterThanOrEqual(-plan.left - 0.1);
      expect(x[1]).toBeLessThanOrEqual(width + plan.right + 0.1);
      expect(y[0]).toBeGreaterThanOrEqual(-plan.top - 0.1);
      expect(y[1]).toBeLessThanOrEqual(depth + plan.bottom + 0.1);
    }
    for (const wall of WALLS) {
      const drawing = drawElevation(kitchen, wall);
      const { dimensions, margins } = elevationDimensions(drawing, unit, LETTER);
      for (const { x, y } of wordBoxes(dimensions, unit, true)) {
        expect(x[0]).toBeGreaterThanOrEqual(-margins.left - 0.1);
        expect(x[1]).toBeLessThanOrEqual(drawing.width_mm + margins.right + 0.1);
        expect(y[0]).toBeGreaterThanOrEqual(-margins.top - 0.1);
        expect(y[1]).toBeLessThanOrEqual(drawing.height_mm + margins.bottom + 0.1);
      }
    }
  });

  it('sum up: the chains beside an elevation are as high as the room, and its length is that of the wall', () => {
    for (const wall of WALLS) {
      const drawing = drawElevation(kitchen, wall);
      const { length, turn } = wallAxis(kitchen, wall);
      expect(drawing.width_mm).toBeCloseTo(length, 1);
      expect(turn(turn(123))).toBeCloseTo(123, 6);
      const { dimensions } = elevationDimensions(drawing, 'mm', LETTER);
      const beside = dimensions.filter(({ from, to, side }) => from[0] === to[0] && side === 'before');
      expect(beside.reduce((sum, one) => sum + one.length_mm, 0)).toBeCloseTo(kitchen.room.height, 0);
    }
  });

  it('name a field of the kitchen for every shape that may be picked', () => {
    for (const wall of WALLS) {
      for (const shape of drawElevation(kitchen, wall).shapes) {
        const path = fieldOfShape(kitchen, wall, shape);
        expect(path, shape.kind).not.toBeNull();
        expect(valueAt(kitchen, path!), `${shape.kind}: ${path}`).toBeDefined();
      }
    }
  });

  it('tell every recommendation in a sentence with both figures', () => {
    const nth = new Map<string, number>();
    for (const hint of clearanceHints(kitchen, USERS)) {
      const before = nth.get(hint.code) ?? 0;
      nth.set(hint.code, before + 1);
      const words = clearanceWords(hint, kitchen, before, { measured: 'MEASURED', wanted: 'WANTED' });
      expect(words).toMatch(/^[A-Z].*\.$/);
      expect(words).toContain('WANTED');
      if (hint.measured_mm > 0) expect(words).toContain('MEASURED');
      expect(words).not.toMatch(/undefined|null/);
    }
  });
});

/** What stands at `runs[0].splash`. */
const valueAt = (kitchen: Kitchen, path: string): unknown =>
  path
    .split(/[.[\]]+/)
    .filter(Boolean)
    .reduce<unknown>((part, key) => (part as Record<string, unknown> | undefined)?.[key], kitchen);
