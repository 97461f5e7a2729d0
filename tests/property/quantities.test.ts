import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LAYOUTS } from '../../src/engine/pattern/types';
import { groutMass } from '../../src/model/quantity/grout-mass';
import { type Measure, toMeasure } from '../../src/model/quantity/measures';
import { orderOf, packsFor } from '../../src/model/quantity/order';
import { moduleArea, piecesNeeded } from '../../src/model/quantity/piece-count';
import { packOf } from '../../src/model/quantity/supply-pack';

const amount = fc.double({ min: 0, max: 1e4, noNaN: true });
const some = fc.double({ min: 0.01, max: 1e4, noNaN: true });
const packSize = fc.double({ min: 0.05, max: 1000, noNaN: true });
const percent = fc.double({ min: 0, max: 100, noNaN: true });
const spares = fc.integer({ min: 0, max: 5 });

describe('packs', () => {
  it('hold the quantity, and one pack less would not', () => {
    fc.assert(
      fc.property(some, packSize, (quantity, pack) => {
        const packs = packsFor(quantity, pack)!;
        // A millionth of a pack is dust of floating point.
        expect(packs * pack).toBeGreaterThanOrEqual(quantity - 1.01e-6 * pack);
        expect((packs - 1) * pack).toBeLessThan(quantity);
        expect(Number.isInteger(packs)).toBe(true);
      }),
    );
  });

  it('are exact where the quantity is whole packs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), packSize, (count, pack) => {
        expect(packsFor(count * pack, pack)).toBe(count);
      }),
    );
  });
});

const pairs: readonly (readonly [Measure, Measure])[] = [
  ['m2', 'ft2'],
  ['L', 'gal'],
  ['kg', 'lb'],
  ['m', 'ft'],
];

describe('orders', () => {
  const pack = (quantity: number, measure: Measure) => ({ container: 'box', quantity, measure });

  it('never fall below the net quantity, and more waste never makes fewer packs', () => {
    fc.assert(
      fc.property(amount, percent, percent, packSize, spares, (net, a, b, size, spare_packs) => {
        const of = (waste_percent: number) =>
          orderOf({ net, measure: 'm2', waste_percent, spare_packs }, pack(size, 'm2'));
        const [less, more] = [of(Math.min(a, b)), of(Math.max(a, b))];
        expect(less.quantity).toBeGreaterThanOrEqual(net);
        expect(less.bought).toBeGreaterThanOrEqual(net - 1.01e-6 * size);
        expect(more.quantity).toBeGreaterThanOrEqual(less.quantity);
        expect(more.packs!).toBeGreaterThanOrEqual(less.packs!);
        expect(less.spares).toBe(less.packs === 0 ? 0 : spare_packs);
      }),
    );
  });

  it('are the same packs in metric and in US measures', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pairs), amount, percent, packSize, ([si, us], net, waste_percent, size) => {
        const inUs = (value: number) => toMeasure(value, si, us)!;
        const need = { net, measure: si, waste_percent, spare_packs: 1 };
        const needUs = { ...need, net: inUs(net), measure: us };
        const { packs } = orderOf(need, pack(size, si));
        expect(orderOf(needUs, pack(inUs(size), us)).packs).toBe(packs);
        expect(orderOf(need, pack(inUs(size), us)).packs).toBe(packs);
        expect(orderOf(needUs, pack(size, si)).packs).toBe(packs);
      }),
    );
  });
});

it('converts there and back', () => {
  fc.assert(
    fc.property(fc.constantFrom(...pairs), some, ([a, b], value) => {
      expect(toMeasure(toMeasure(value, a, b)!, b, a)! / value).toBeCloseTo(1, 12);
    }),
  );
  fc.assert(
    fc.property(some, packSize, (value, piece_m2) => {
      const one = { piece_m2 };
      expect(toMeasure(toMeasure(value, 'ft2', 'piece', one)!, 'piece', 'ft2', one)! / value).toBeCloseTo(1, 12);
    }),
  );
});

const side = fc.double({ min: 10, max: 1500, noNaN: true });

it('pieces and their joints fill the field, in every layout and whichever side is said first', () => {
  fc.assert(
    fc.property(amount, side, side, fc.double({ min: 0, max: 20, noNaN: true }), (area, a, b, joint) => {
      for (const layout of LAYOUTS) {
        const count = piecesNeeded(area, [a, b], joint, layout)!;
        expect(count * moduleArea([b, a], joint, layout)).toBeCloseTo(area, 6);
      }
    }),
  );
  expect(piecesNeeded(3, [0, 0], 0)).toBeNull();
});

it('grout is more where joints are wider or deeper, and none where there is no joint', () => {
  fc.assert(
    fc.property(some, side, side, fc.double({ min: 0.5, max: 10, noNaN: true }), (area_m2, a, b, joint_mm) => {
      for (const layout of ['stack', 'hexagon'] as const) {
        const field = { area_m2, piece_mm: [a, b], joint_mm, depth_mm: 8, layout } as const;
        const mass = groutMass(field, 1.6);
        expect(groutMass({ ...field, joint_mm: joint_mm * 1.1 }, 1.6)).toBeGreaterThan(mass);
        expect(groutMass({ ...field, depth_mm: 9 }, 1.6)).toBeGreaterThan(mass);
        expect(groutMass({ ...field, joint_mm: 0 }, 1.6)).toBe(0);
        expect(groutMass({ ...field, piece_mm: [a, 0] }, 1.6)).toBe(0);
      }
    }),
  );
});

it('reads any words of a unit without throwing, and what it reads is above 0', () => {
  const words = fc.constantFrom(
    'box',
    'of',
    'can',
    '2.5',
    '1,44',
    '25',
    'm2',
    'L',
    'sq ft',
    'x',
    '/',
    'slab',
    '(',
    '-',
  );
  const texts = fc.oneof(
    fc.string(),
    fc.array(words, { maxLength: 8 }).map((all) => all.join(' ')),
  );
  fc.assert(
    fc.property(texts, fc.option(fc.double(), { nil: undefined }), (unit, pack) => {
      const read = packOf({ unit, ...(pack !== undefined && { pack }) });
      if (read) expect(read.quantity).toBeGreaterThan(0);
    }),
  );
});
