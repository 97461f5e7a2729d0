import { describe, expect, it } from 'vitest';
import type { SurfaceId } from '../../src/engine/surface';
import { coursingOf } from '../../src/kitchen/drawings/coursing';
import { drawingsOf } from '../../src/kitchen/drawings/drawings-of';
import type { LaidPieces } from '../../src/kitchen/drawings/laid-pieces';
import type { Chain, Drawing } from '../../src/kitchen/drawings/types';
import type { Kitchen } from '../../src/model/kitchen';
import { counterTop } from '../../src/model/layout/hood-place';
import { mirrorKitchen } from '../../src/model/layout/mirror-kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { LAYOUTS as DRAFTS } from '../../src/model/new-kitchen/layout-drafts';
import { writtenHeights, writtenLengths } from '../../src/ui/drawings/chain-labels';
import { LAYOUTS } from './layouts';

const usual = DRAFTS.flatMap((layout) =>
  (['eu', 'uk', 'us'] as const).map(
    (region) => [`${layout}, ${region}`, kitchenFor(layout, region, usualRoom(layout, region))!] as const,
  ),
);
const KITCHENS: readonly (readonly [string, Kitchen])[] = [
  ...usual,
  ...Object.entries(LAYOUTS),
  ...usual.map(([name, kitchen]) => [`${name}, mirrored`, mirrorKitchen(kitchen)] as const),
];

const chainsOf = ({ chains }: Drawing, what: Chain['what']) => chains.filter((chain) => chain.what === what);
const sum = (lengths: readonly number[]): number => lengths.reduce((all, one) => all + one, 0);

describe.each(KITCHENS)('the drawings of a kitchen with dimensions: %s', (_name, kitchen) => {
  const drawings = drawingsOf(kitchen, []);
  const rows = planRows(kitchen);
  const drawn = (id: Drawing['id']): Drawing => drawings.find((one) => one.id === id)!;

  it('have chains that run from end to end, and add up to the whole as it is written, in mm and in inches', () => {
    for (const drawing of drawings) {
      for (const { what, side, marks } of drawing.chains) {
        const length = side === 'below' || side === 'above' ? drawing.width : drawing.height;
        expect(marks[0]).toBeCloseTo(0, 6);
        expect(marks.at(-1)!).toBeCloseTo(length, 1);
        for (const [i, mark] of marks.slice(1).entries()) expect(mark - marks[i]!).toBeGreaterThan(0.4);
        for (const [unit, step] of [
          ['mm', 0.1],
          ['in', 25.4 / 16],
        ] as const) {
          const written = what === 'heights' ? writtenHeights(marks, unit) : writtenLengths(marks, unit);
          expect(sum(written), `${drawing.id} ${what}`).toBeCloseTo(Math.round(length / step + 1e-6) * step, 6);
          // None is written off by more than a step.
          for (const [i, one] of written.entries())
            expect(Math.abs(one - (marks[i + 1]! - marks[i]!))).toBeLessThanOrEqual(step + 1e-6);
        }
      }
    }
  });

  it('tell the units below each wall in their order, and the depths, aisles and lengths on the plan', () => {
    for (const run of rows.runs) {
      const [chain] = chainsOf(drawn(run.wall), 'units');
      const lengths = chain!.marks.slice(1).map((mark, i) => mark - chain!.marks[i]!);
      const units = [...run.base.units, ...run.tall.flatMap((block) => block.units)];
      for (const { from, to } of units) expect(lengths.some((one) => Math.abs(one - (to - from)) < 0.15)).toBe(true);
      expect(lengths.length).toBeGreaterThanOrEqual(units.length);
    }
    const { island, counter, room } = kitchen;
    const marks = drawn('plan').chains.flatMap((chain) => (chain.what === 'across' ? [chain.marks] : []));
    if (rows.runs.some(({ wall }) => wall === 'back')) {
      expect(marks.some((one) => one.some((mark) => Math.abs(mark - (room.depth - counter.depth)) < 0.1))).toBe(true);
    }
    if (island) {
      for (const [from, to] of [
        [island.x, island.x + island.width],
        [island.y, island.y + island.depth],
      ] as const) {
        const has = (place: number) => marks.some((one) => one.some((mark) => Math.abs(mark - place) < 0.1));
        expect([from, to].every(has)).toBe(true);
      }
    }
  });

  it('tell heights that are those of the record', () => {
    const { base, wall_units } = kitchen;
    const top = counterTop(kitchen);
    for (const run of rows.runs) {
      const [chain] = chainsOf(drawn(run.wall), 'heights');
      const want = [base.plinth_height, base.plinth_height + base.carcass_height, top, kitchen.room.height];
      if (run.over.length > 0)
        want.push(top + wall_units.gap_above_counter, top + wall_units.gap_above_counter + wall_units.height);
      for (const level of want)
        expect(
          chain!.marks.some((mark) => Math.abs(mark - level) < 0.1),
          String(level),
        ).toBe(true);
    }
  });
});

it('writes lengths that add up without touching those that are whole', () => {
  // 24 in units between a filler and a panel of 20 mm: 3/4 in rounded each, 13/16 where the whole asks for it.
  const [panel, unit] = [20, 24 * 25.4];
  const marks = [0, panel, panel + unit, panel + 2 * unit, 2 * panel + 2 * unit];
  const inches = writtenLengths(marks, 'in').map((one) => one / 25.4);
  expect(inches[1]).toBeCloseTo(24, 9);
  expect(inches[2]).toBeCloseTo(24, 9);
  expect(inches[0]! + inches[3]!).toBeCloseTo(25 / 16, 9);
});

const laid: LaidPieces = { layout: 'running-bond', piece: [198, 98], joint: 2, turn_deg: 0, start: 'corner' };
const field = { x: 100, y: 900, width: 1000, height: 500 };
const surface: SurfaceId = 'backsplash';

it('draws joints where tiles meet: rows from the foot, every second half a tile aside', () => {
  const { joints, pitch_mm, start } = coursingOf(surface, laid, field, true);
  expect(pitch_mm).toBe(100);
  expect(start).toEqual({ at: [100, 900], direction_deg: 0 });
  const level = joints.filter(([[, y0], [, y1]]) => y0 === y1).map(([[, y]]) => y);
  expect([...new Set(level)].sort((a, b) => a - b)).toEqual([900, 1000, 1100, 1200, 1300, 1400]);
  const upright = (low: number) =>
    joints.filter(([[x0, y0], [x1]]) => x0 === x1 && y0 === low).map(([[x]]) => Math.round(x));
  expect(upright(900)).toEqual([100, 300, 500, 700, 900, 1100]);
  expect(upright(1000)).toEqual([200, 400, 600, 800, 1000]);
});

it('centers a laying that starts in the middle: cuts at both ends are alike', () => {
  const { joints } = coursingOf(
    surface,
    { ...laid, layout: 'stack', start: 'centered' },
    { ...field, width: 1060 },
    true,
  );
  const places = joints.filter(([[x0, y0], [x1]]) => x0 === x1 && y0 === 900).map(([[x]]) => x);
  expect(places[0]! - 100).toBeCloseTo(1160 - places.at(-1)!, 6);
  expect(places[0]! - 100).toBeGreaterThanOrEqual(100 - 1e-6);
});

it.each(['herringbone', 'hexagon', 'third-offset', 'stack-upright', 'planks'] as const)(
  'keeps the joints of %s within their field',
  (layout) => {
    const turn_deg = layout === 'stack-upright' ? 90 : 0;
    const { joints } = coursingOf(surface, { ...laid, layout, turn_deg, start: 'centered' }, field, true);
    expect(joints.length).toBeGreaterThan(4);
    for (const [x, y] of joints.flat()) {
      expect(x).toBeGreaterThanOrEqual(field.x - 1e-6);
      expect(x).toBeLessThanOrEqual(field.x + field.width + 1e-6);
      expect(y).toBeGreaterThanOrEqual(field.y - 1e-6);
      expect(y).toBeLessThanOrEqual(field.y + field.height + 1e-6);
    }
  },
);
