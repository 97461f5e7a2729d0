import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Measured, paginate } from '../../src/ui/handover/paginate';

const ROOM = { height: 100, gap: 5 };

const height = fc.integer({ min: 1, max: 60 });
const block: fc.Arbitrary<Measured> = fc.oneof(
  fc.record({ kind: fc.constant('flow' as const), height, keeps: fc.boolean() }),
  fc.record({
    kind: fc.constant('table' as const),
    head: fc.integer({ min: 0, max: 10 }),
    rows: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 }),
  }),
);
const blocks = fc.array(block, { minLength: 1, maxLength: 30 });

const heightOn = (all: readonly Measured[], { block, from, to }: { block: number; from: number; to: number }) => {
  const one = all[block]!;
  return one.kind === 'flow' ? one.height : one.head + one.rows.slice(from, to).reduce((sum, row) => sum + row, 0);
};

describe('blocks on pages', () => {
  it('all of them, each row once, in their order', () => {
    fc.assert(
      fc.property(blocks, (all) => {
        const placed = paginate(all, ROOM).flat();
        const expected = all.flatMap((one, i) =>
          one.kind === 'flow' ? [`${i}`] : one.rows.map((_, row) => `${i}.${row}`),
        );
        const got = placed.flatMap(({ block, from, to }) =>
          all[block]!.kind === 'flow'
            ? [`${block}`]
            : Array.from({ length: to - from }, (_, k) => `${block}.${from + k}`),
        );
        expect(got).toEqual(expected);
      }),
    );
  });

  it('none sticks out of its page where each fits one, and no page is empty', () => {
    fc.assert(
      fc.property(blocks, (all) => {
        for (const page of paginate(all, ROOM)) {
          expect(page.length).toBeGreaterThan(0);
          const used = page.reduce((sum, one, i) => sum + heightOn(all, one) + (i > 0 ? ROOM.gap : 0), 0);
          expect(used).toBeLessThanOrEqual(ROOM.height);
        }
      }),
    );
  });

  it('a heading is not the last on a page where what it keeps fits with it', () => {
    const heading: Measured = { kind: 'flow', height: 10, keeps: true };
    const text: Measured = { kind: 'flow', height: 40, keeps: false };
    const table: Measured = { kind: 'table', head: 5, rows: [20, 20, 20] };
    fc.assert(
      fc.property(fc.array(fc.constantFrom([heading, text], [heading, table], [heading, heading, table])), (groups) => {
        const all = groups.flat();
        for (const page of paginate(all, ROOM)) {
          const last = all[page.at(-1)?.block ?? -1];
          expect(last === heading).toBe(false);
        }
      }),
    );
  });

  it('a block higher than a page has one of its own', () => {
    const all: readonly Measured[] = [
      { kind: 'flow', height: 10, keeps: false },
      { kind: 'flow', height: 150, keeps: false },
      { kind: 'flow', height: 10, keeps: false },
    ];
    expect(paginate(all, ROOM).map((page) => page.map(({ block }) => block))).toEqual([[0], [1], [2]]);
  });
});
