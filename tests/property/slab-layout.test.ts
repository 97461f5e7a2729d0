import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOnSlabs } from '../../src/model/quantity/slab/lay-on-slabs';
import type { PlacedPart, SlabLayout, SlabPiece, SlabRules } from '../../src/model/quantity/slab-types';
import { bruteSeams, bruteSlabs } from './brute-slabs';

/** Dust of floating point, mm. */
const DUST = 1e-5;

const cutouts = (length: number) =>
  fc.array(
    fc
      .tuple(fc.double({ min: 0, max: 0.9, noNaN: true }), fc.double({ min: 100, max: 900, noNaN: true }))
      .map(([at, size]) => [at * length, at * length + size] as const),
    { maxLength: 2 },
  );

const pieces = fc
  .array(
    fc
      .record({
        length_mm: fc.double({ min: 50, max: 7000, noNaN: true }),
        width_mm: fc.double({ min: 50, max: 1800, noNaN: true }),
      })
      .chain((size) => cutouts(size.length_mm).map((cutouts_mm) => ({ ...size, cutouts_mm }))),
    { maxLength: 7 },
  )
  .map((all): readonly SlabPiece[] => all.map((one, i) => ({ id: `P${i}`, ...one })));

const rules: fc.Arbitrary<SlabRules> = fc.record({
  slab_mm: fc.tuple(fc.double({ min: 1500, max: 3300, noNaN: true }), fc.double({ min: 700, max: 1700, noNaN: true })),
  trim_mm: fc.double({ min: 0, max: 60, noNaN: true }),
  kerf_mm: fc.double({ min: 0, max: 8, noNaN: true }),
  shortest_part_mm: fc.double({ min: 0, max: 900, noNaN: true }),
  seam_clear_mm: fc.double({ min: 0, max: 300, noNaN: true }),
  may_turn: fc.boolean(),
  match: fc.constantFrom('bookmatch', 'slip', null),
  always_match: fc.boolean(),
});

const box = ({ x_mm, y_mm, length_mm, width_mm, turned }: PlacedPart) => {
  const [along, across] = turned ? [width_mm, length_mm] : [length_mm, width_mm];
  return { left: x_mm, right: x_mm + along, low: y_mm, high: y_mm + across };
};
type Box = ReturnType<typeof box>;

/** Can the parts be cut apart by cuts that each go from edge to edge? */
function isCutThrough(boxes: readonly Box[], kerf: number): boolean {
  if (boxes.length < 2) return true;
  for (const [low, high] of [['left', 'right'] as const, ['low', 'high'] as const]) {
    for (const edge of boxes) {
      const before = boxes.filter((one) => one[high] <= edge[high] + DUST);
      const after = boxes.filter((one) => one[low] >= edge[high] + kerf - DUST);
      if (after.length === 0 || before.length + after.length < boxes.length) continue;
      return isCutThrough(before, kerf) && isCutThrough(after, kerf);
    }
  }
  return false;
}

/** Parts that go on in each other over a seam lie on slabs that follow each other, at one height, where they have to match. */
function expectMatched({ slabs, seams, matching }: SlabLayout, by: SlabRules): void {
  if (by.match === null || seams.length === 0) {
    expect(matching).toBeNull();
    return;
  }
  expect(matching).toMatchObject({ match: by.match });
  expect(matching!.slabs ?? Infinity).toBeGreaterThanOrEqual(matching!.fewest);
  expect(slabs.length).toBe(matching!.isKept ? matching!.slabs : matching!.fewest);
  expect(matching!.isKept).toBe(
    matching!.slabs !== null && (matching!.slabs === matching!.fewest || by.always_match === true),
  );
  if (!matching!.isKept) return;
  const placed = slabs.flatMap(({ parts }, slab) => parts.map((part) => ({ ...part, slab })));
  for (const { piece, at_mm } of seams) {
    const before = placed.find((part) => part.piece === piece && part.to_mm === at_mm)!;
    const after = placed.find((part) => part.piece === piece && part.from_mm === at_mm)!;
    expect([after.slab, after.turned, before.turned]).toEqual([before.slab + 1, false, false]);
    expect(after.y_mm).toBeCloseTo(before.y_mm, 5);
    const ends = before.x_mm + before.length_mm;
    // The mirror of a place is as far from the other end of the slab.
    if (by.match === 'bookmatch') expect(after.x_mm).toBeCloseTo(by.slab_mm[0] - ends, 5);
    else expect(after.x_mm).toBeCloseTo(by.trim_mm, 5);
  }
}

/** Everything that has to hold of a layout, told apart from how it was found. */
function expectSound(layout: SlabLayout, all: readonly SlabPiece[], by: SlabRules): void {
  const [length, width] = by.slab_mm;
  for (const [i, { parts, mirrored }] of layout.slabs.entries()) {
    expect(parts.length).toBeGreaterThan(0);
    expect(mirrored).toBe(by.match === 'bookmatch' && layout.matching?.isKept === true && i % 2 === 1);
    const boxes = parts.map(box);
    for (const [k, one] of boxes.entries()) {
      expect(parts[k]!.turned && !by.may_turn).toBe(false);
      expect(Math.min(one.left, one.low)).toBeGreaterThanOrEqual(by.trim_mm - DUST);
      expect(one.right).toBeLessThanOrEqual(length - by.trim_mm + DUST);
      expect(one.high).toBeLessThanOrEqual(width - by.trim_mm + DUST);
      for (const other of boxes.slice(k + 1)) {
        const apart = Math.max(
          other.left - one.right,
          one.left - other.right,
          other.low - one.high,
          one.low - other.high,
        );
        expect(apart).toBeGreaterThanOrEqual(by.kerf_mm - DUST);
      }
    }
    expect(isCutThrough(boxes, by.kerf_mm)).toBe(true);
  }
  const placed = layout.slabs.flatMap(({ parts }) => parts);
  for (const piece of all) {
    const own = placed.filter((part) => part.piece === piece.id).sort((a, b) => a.from_mm - b.from_mm);
    const seams = layout.seams.filter((seam) => seam.piece === piece.id).map(({ at_mm }) => at_mm);
    // Its parts are the piece, each place once, with the seams between them.
    expect(own.map(({ from_mm }) => from_mm)).toEqual([0, ...seams]);
    expect(own.map(({ to_mm }) => to_mm)).toEqual([...seams, piece.length_mm]);
    for (const part of own) {
      expect(part.length_mm).toBeCloseTo(part.to_mm - part.from_mm, 6);
      expect(part.width_mm).toBe(piece.width_mm);
      if (own.length > 1) expect(part.length_mm).toBeGreaterThanOrEqual(by.shortest_part_mm - DUST);
    }
    for (const at of seams) {
      for (const [from, to] of piece.cutouts_mm) expect(at > from + DUST && at < to - DUST).toBe(false);
    }
  }
  expectMatched(layout, by);
  const area = all.reduce((sum, { length_mm, width_mm }) => sum + length_mm * width_mm, 0);
  expect(layout.lower_bound).toBeLessThanOrEqual(layout.slabs.length);
  expect(layout.lower_bound).toBe(all.length === 0 ? 0 : Math.ceil(area / (length * width) - 1e-6));
  if (layout.slabs.length > 0) expect(layout.yield).toBeCloseTo(area / (layout.slabs.length * length * width), 9);
  expect(layout.yield).toBeLessThanOrEqual(1);
}

describe('slabs', () => {
  it('hold every part once, a saw cut apart, inside the trim, with seams where they may be', () => {
    let laid = 0;
    let matched = 0;
    fc.assert(
      fc.property(pieces, rules, (all, by) => {
        const result = layOnSlabs(all, by);
        if (!result.ok) {
          expect(['slab-too-small', 'no-seam-place']).toContain(result.problem.code);
          return;
        }
        laid++;
        if (result.value.matching?.isKept) matched++;
        expectSound(result.value, all, by);
        expect(layOnSlabs(all, by)).toEqual(result);
      }),
      { numRuns: 150 },
    );
    // Not only problems were looked at.
    expect(laid).toBeGreaterThan(20);
    expect(matched).toBeGreaterThan(5);
  });

  it('hold many strips, too', () => {
    const strip = fc.record({
      length_mm: fc.double({ min: 100, max: 3100, noNaN: true }),
      width_mm: fc.double({ min: 40, max: 400, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(strip, { minLength: 10, maxLength: 25 }), fc.boolean(), (sizes, may_turn) => {
        const all = sizes.map((size, i) => ({ id: `S${i}`, ...size, cutouts_mm: [] }));
        const by: SlabRules = {
          slab_mm: [3200, 1600],
          trim_mm: 20,
          kerf_mm: 3,
          shortest_part_mm: 600,
          seam_clear_mm: 0,
          may_turn,
          match: 'slip',
        };
        const result = layOnSlabs(all, by);
        expect(result.ok).toBe(true);
        if (result.ok) expectSound(result.value, all, by);
      }),
      { numRuns: 15 },
    );
  });

  it('are as few as trying everything finds', () => {
    const size = fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 6 }));
    const slab = fc.tuple(fc.integer({ min: 9, max: 12 }), fc.integer({ min: 6, max: 8 }));
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 1, maxLength: 5 }),
        slab,
        fc.integer({ min: 0, max: 1 }),
        fc.boolean(),
        (parts, slab_mm, kerf_mm, may_turn) => {
          const result = layOnSlabs(
            parts.map(([length_mm, width_mm], i) => ({ id: `${i}`, length_mm, width_mm, cutouts_mm: [] })),
            { slab_mm, kerf_mm, may_turn, trim_mm: 0, shortest_part_mm: 1, seam_clear_mm: 0, match: 'slip' },
          );
          expect(result.ok && result.value.slabs.length).toBe(bruteSlabs(parts, slab_mm, kerf_mm, may_turn));
        },
      ),
      { numRuns: 120 },
    );
  });

  it('are one where all parts were cut from one', () => {
    // Each cut: which part, along or across, and where.
    const cuts = fc.array(fc.tuple(fc.nat(), fc.boolean(), fc.double({ min: 0.05, max: 0.95, noNaN: true })), {
      minLength: 3,
      maxLength: 8,
    });
    fc.assert(
      fc.property(cuts, fc.integer({ min: 0, max: 4 }), (all, kerf_mm) => {
        const parts: (readonly [number, number])[] = [[3000, 1400]];
        for (const [which, isAlong, share] of all) {
          const [length, width] = parts[which % parts.length]!;
          const size = Math.round(share * (isAlong ? width : length));
          const rest = (isAlong ? width : length) - size - kerf_mm;
          if (size < 1 || rest < 1) continue;
          const two = isAlong
            ? ([
                [length, size],
                [length, rest],
              ] as const)
            : ([
                [size, width],
                [rest, width],
              ] as const);
          parts.splice(which % parts.length, 1, ...two);
        }
        const result = layOnSlabs(
          parts.map(([length_mm, width_mm], i) => ({ id: `${i}`, length_mm, width_mm, cutouts_mm: [] })),
          {
            slab_mm: [3000, 1400],
            kerf_mm,
            may_turn: false,
            trim_mm: 0,
            shortest_part_mm: 1,
            seam_clear_mm: 0,
            match: 'slip',
          },
        );
        expect(result.ok && result.value.slabs.length).toBe(1);
      }),
    );
  });

  it('have seams clear of what they keep from wherever as many can be so, and else it is told', () => {
    const cutout = fc
      .tuple(fc.integer({ min: 0, max: 70 }), fc.integer({ min: 1, max: 12 }))
      .map(([from, size]) => [from, from + size] as const);
    const told = { yes: 0, no: 0 };
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 80 }),
        fc.array(cutout, { maxLength: 2 }),
        fc.integer({ min: 10, max: 35 }),
        fc.integer({ min: 1, max: 6 }),
        (length_mm, cutouts_mm, longest, seam_clear_mm) => {
          const result = layOnSlabs([{ id: 'a', length_mm, width_mm: 5, cutouts_mm }], {
            slab_mm: [longest, 5],
            kerf_mm: 0,
            may_turn: false,
            trim_mm: 0,
            shortest_part_mm: 3,
            seam_clear_mm,
            match: 'slip',
          });
          if (!result.ok) return;
          const seams = result.value.seams.map(({ at_mm }) => at_mm);
          const wide = cutouts_mm.map(([from, to]) => [from - seam_clear_mm, to + seam_clear_mm] as const);
          const isKept = seams.every((at) => wide.every(([from, to]) => at <= from || at >= to));
          const least = bruteSeams(length_mm, wide, longest, 3);
          expect(isKept).toBe(least !== null && least === seams.length);
          expect((result.notices ?? []).map(({ code }) => code)).toEqual(isKept ? [] : ['seam-near-cutout']);
          told[isKept ? 'no' : 'yes']++;
        },
      ),
      { numRuns: 300 },
    );
    expect(Math.min(told.yes, told.no)).toBeGreaterThan(10);
  });

  it('have as few seams as trying every place finds', () => {
    const cutout = fc
      .tuple(fc.integer({ min: 0, max: 70 }), fc.integer({ min: 1, max: 20 }))
      .map(([from, size]) => [from, from + size] as const);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 80 }),
        fc.array(cutout, { maxLength: 3 }),
        fc.integer({ min: 10, max: 35 }),
        fc.integer({ min: 1, max: 15 }),
        (length_mm, cutouts_mm, longest, shortest_part_mm) => {
          const result = layOnSlabs([{ id: 'a', length_mm, width_mm: 5, cutouts_mm }], {
            slab_mm: [longest, 5],
            kerf_mm: 0,
            may_turn: false,
            trim_mm: 0,
            shortest_part_mm,
            seam_clear_mm: 7,
            match: 'slip',
          });
          const seams = result.ok ? result.value.seams.length : null;
          expect(seams).toBe(bruteSeams(length_mm, cutouts_mm, longest, shortest_part_mm));
        },
      ),
      { numRuns: 500 },
    );
  });
});
