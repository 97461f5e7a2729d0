import { describe, expect, it } from 'vitest';
import { areaOfParts } from '../../src/model/quantity/area-of-parts';
import { layOnSlabs } from '../../src/model/quantity/slab/lay-on-slabs';
import type { SlabLayout, SlabPiece, SlabRules } from '../../src/model/quantity/slab-types';

const piece = (
  id: string,
  length_mm: number,
  width_mm: number,
  cutouts_mm: SlabPiece['cutouts_mm'] = [],
): SlabPiece => ({
  id,
  length_mm,
  width_mm,
  cutouts_mm,
});

const RULES: SlabRules = {
  slab_mm: [3200, 1600],
  trim_mm: 20,
  kerf_mm: 3,
  shortest_part_mm: 600,
  seam_clear_mm: 0,
  may_turn: false,
  match: null,
};

function laid(...of: Parameters<typeof layOnSlabs>): SlabLayout {
  const result = layOnSlabs(...of);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

const code = (...of: Parameters<typeof layOnSlabs>): string | null => {
  const result = layOnSlabs(...of);
  return result.ok ? null : result.problem.code;
};

// Trade worked case, computed by hand.
describe('an L of 3600 + 2400 mm, 620 deep, and an island of 2000 x 1000 on slabs of 3200 x 1600', () => {
  const pieces = [piece('long', 3600, 620), piece('short', 2400 - 620, 620), piece('island', 2000, 1000)];
  const layout = laid(pieces, RULES);
  const [first, second] = layout.slabs;

  it('takes two slabs, what area asks for, with a yield of 52.1 %', () => {
    expect(layout.slabs).toHaveLength(2);
    expect(layout.lower_bound).toBe(2);
    expect(100 * layout.yield).toBeCloseTo(52.1, 1);
  });
  it('seams the long leg into 2400 + 1200; the second seam is the corner, which the plan makes, not the slab', () => {
    expect(layout.seams).toEqual([{ piece: 'long', at_mm: 2400 }]);
    const cornerJoints = 1;
    expect(layout.seams.length + cornerJoints).toBe(2);
  });
  it('cuts a strip of 2400, one of 1780 + 1200 = 2983 with the saw cut, 1243 high in all, and the island from the second', () => {
    expect(first!.parts).toEqual([
      { piece: 'long', from_mm: 0, to_mm: 2400, x_mm: 20, y_mm: 20, length_mm: 2400, width_mm: 620, turned: false },
      { piece: 'short', from_mm: 0, to_mm: 1780, x_mm: 20, y_mm: 643, length_mm: 1780, width_mm: 620, turned: false },
      {
        piece: 'long',
        from_mm: 2400,
        to_mm: 3600,
        x_mm: 1803,
        y_mm: 643,
        length_mm: 1200,
        width_mm: 620,
        turned: false,
      },
    ]);
    expect(1803 + 1200 - 20).toBe(2983);
    expect(643 + 620 - 20).toBe(1243);
    expect(second!.parts).toEqual([
      { piece: 'island', from_mm: 0, to_mm: 2000, x_mm: 20, y_mm: 20, length_mm: 2000, width_mm: 1000, turned: false },
    ]);
  });
});

// Trade worked case, computed by hand: 144 + 96 in, 25 1/2 deep, island 84 x 42 on slabs of 126 x 63.
it('lays the same in inches: 62.48 ft2 on two slabs, 56.7 %', () => {
  const inch = 25.4;
  const pieces = [
    piece('long', 144 * inch, 25.5 * inch),
    piece('short', (96 - 25.5) * inch, 25.5 * inch),
    piece('island', 84 * inch, 42 * inch),
  ];
  expect(areaOfParts(pieces) / 0.3048 ** 2).toBeCloseTo(62.48, 2);
  const layout = laid(pieces, { ...RULES, slab_mm: [126 * inch, 63 * inch] });
  expect(layout.slabs).toHaveLength(2);
  expect(100 * layout.yield).toBeCloseTo(56.7, 1);
  expect(layout.seams).toEqual([{ piece: 'long', at_mm: 2438.4 }]);
});

// By hand; where seams go is our judgment.
describe('seams', () => {
  const seams = (length: number, cutouts: SlabPiece['cutouts_mm'], rules = RULES) =>
    laid([piece('top', length, 620, cutouts)], rules).seams.map(({ at_mm }) => at_mm);

  it('are none up to the usable length', () => {
    expect(seams(3160, [])).toEqual([]);
    expect(seams(3161, [])).toEqual([2107.3]);
  });
  it('give way to cut-outs: to the other third, or where both are cut out to the edge that is nearest to one', () => {
    expect(seams(3600, [[1900, 2900]])).toEqual([1200]);
    const low = [1100, 1350] as const;
    expect(seams(3600, [low, [2350, 2900]])).toEqual([2350]);
    expect(seams(3600, [low, [2000, 2410]])).toEqual([2410]);
    expect(seams(3600, [low, [1900, 3400]])).toEqual([1100]);
  });
  it('are never so that a part is too long', () => expect(seams(4800, [])).toEqual([3160]));
  it('share a long piece evenly where there are several, clear of cut-outs', () => {
    expect(seams(7500, [])).toEqual([2500, 5000]);
    expect(seams(7500, [[2400, 3200]])).toEqual([2400, 5000]);
    expect(seams(9480, [])).toEqual([3160, 6320]);
    expect(seams(9481, [])).toHaveLength(3);
  });
  it('may be one more because of a cut-out', () => {
    expect(seams(6000, [[2500, 3500]])).toHaveLength(2);
  });
  it('move where that saves a slab', () => {
    // 2400 + 1200 leave no slab with room beside the 2560; of 3100 + 500 the shorter part goes there: 2560 + 3 + 500.
    const pieces = [piece('a', 3600, 1560), piece('b', 2560, 1560)];
    const rules = { ...RULES, shortest_part_mm: 500 };
    expect(laid(pieces, rules).slabs).toHaveLength(2);
    expect(laid(pieces, { ...rules, shortest_part_mm: 700 }).slabs).toHaveLength(3);
  });
  it('are those given, with a word on what is against the rules', () => {
    const pieces = [piece('top', 3600, 620, [[1600, 2200]])];
    const own = (...at: number[]) => layOnSlabs(pieces, RULES, new Map([['top', at]]));
    const result = own(1500);
    expect(result).toMatchObject({ ok: true, value: { seams: [{ piece: 'top', at_mm: 1500 }] } });
    expect(result.ok && result.notices).toBeFalsy();
    expect(own(1800)).toMatchObject({ ok: true, notices: [{ code: 'seam-in-cutout' }] });
    expect(own(500)).toMatchObject({ ok: true, notices: [{ code: 'part-short' }] });
    expect(own(3000, 1000)).toMatchObject({ value: { seams: [{ at_mm: 1000 }, { at_mm: 3000 }] } });
    expect(own()).toMatchObject({ ok: false, problem: { code: 'part-too-long' } });
    expect(own(3600)).toMatchObject({ ok: false, problem: { code: 'seam-outside' } });
    expect(own(Number.NaN)).toMatchObject({ ok: false, problem: { code: 'seam-outside' } });
  });
});

// By hand; what seams keep clear of is common practice, no source.
describe('seams, where nothing forces them elsewhere,', () => {
  const rules: SlabRules = { ...RULES, seam_clear_mm: 100 };
  const over = (from: number, to: number, what: 'dishwasher' | 'cooktop' = 'dishwasher') => [
    { what, span_mm: [from, to] as const },
  ];
  const one = (length: number, cutouts: SlabPiece['cutouts_mm'], avoid: SlabPiece['avoid'] = [], by = rules) =>
    seamsAndNotices([{ ...piece('top', length, 620, cutouts), avoid }], by);
  const seamsAndNotices = (pieces: readonly SlabPiece[], by = rules) => {
    const result = layOnSlabs(pieces, by);
    if (!result.ok) throw new Error(result.problem.text);
    return {
      seams: result.value.seams.map(({ piece: id, at_mm }) => [id, at_mm]),
      notices: (result.notices ?? []).map(({ code }) => code),
      slabs: result.value.slabs.length,
    };
  };

  it('keep their distance from a cut-out', () => {
    expect(
      one(3600, [
        [1050, 1150],
        [2450, 3100],
      ]),
    ).toMatchObject({ seams: [['top', 2350]], notices: [] });
    expect(one(3600, [[2450, 3100]], [], RULES)).toMatchObject({ seams: [['top', 2400]], notices: [] });
  });
  it('lie off the dishwasher', () => {
    // Left are 600 to 800, 1600 to 2300 and 2900 to 3000: of 2400 and 1200 the first is nearer to a place.
    expect(one(3600, [[900, 1500]], over(2300, 2900))).toMatchObject({ seams: [['top', 2300]], notices: [] });
  });
  it('say so where they cannot', () => {
    // Between 600 and 3000 only 50 mm are left on either side of the cut-out.
    expect(one(3600, [[650, 2950]])).toMatchObject({ seams: [['top', 2950]], notices: ['seam-near-cutout'] });
    // Clear of the cut-out is nothing but what stands over the dishwasher.
    expect(one(3600, [[550, 2050]], over(2100, 3050))).toMatchObject({
      seams: [['top', 2400]],
      notices: ['seam-over-dishwasher'],
    });
  });
  it('are not more because of that', () => {
    expect(one(3160, [[100, 3000]], over(0, 3160))).toMatchObject({ seams: [], notices: [] });
    expect(one(3600, [[650, 2950]]).seams).toHaveLength(1);
  });

  const counter = { ...piece('counter', 3600, 620), along: { line: 'back', from_mm: 0 } };
  const splash = (length: number, avoid: SlabPiece['avoid'] = []): SlabPiece => ({
    ...piece('splash', length, 500),
    along: { line: 'back', from_mm: 100 },
    follows: 'seams',
    avoid,
  });
  it('of a backsplash go where the counter is seamed', () => {
    expect(seamsAndNotices([counter, splash(3400)])).toMatchObject({
      seams: [
        ['counter', 2400],
        ['splash', 2300],
      ],
      notices: [],
    });
    // One that comes out of a slab whole has none.
    expect(seamsAndNotices([counter, splash(3100)]).seams).toEqual([['counter', 2400]]);
  });
  it('of a backsplash are not behind the cooktop, and then apart from those of the counter, which is said', () => {
    expect(seamsAndNotices([counter, splash(3400, over(2000, 2600, 'cooktop'))])).toMatchObject({
      seams: [
        ['counter', 2400],
        ['splash', 1133.3],
      ],
      notices: ['seams-apart'],
    });
    // Over another wall it does not matter where the counter has its seam.
    const elsewhere = { ...splash(3400), along: { line: 'left', from_mm: 100 } };
    expect(seamsAndNotices([counter, elsewhere])).toMatchObject({ notices: [] });
  });
  it('of a backsplash stay behind a cooktop as wide as all of it, which is said', () => {
    const { seams, notices } = seamsAndNotices([splash(3400, over(100, 3300, 'cooktop'))]);
    expect([seams.length, notices]).toEqual([1, ['seam-behind-cooktop']]);
  });
  it('of an upstand go to the joint of a corner', () => {
    const leg = { ...piece('leg', 2470, 620), along: { line: 'left', from_mm: 910 } };
    const upstand: SlabPiece = {
      ...piece('upstand', 3182, 100),
      along: { line: 'left', from_mm: 910 },
      follows: 'pieces',
    };
    expect(seamsAndNotices([leg, upstand])).toMatchObject({ seams: [['upstand', 2470]], notices: [] });
  });
  it('of an upstand are more where that saves a slab', () => {
    // Beside 1600 mm, as high as the slab, 1557 mm are left: 3000 mm go there in halves.
    const upstand: SlabPiece = { ...piece('upstand', 3000, 100), follows: 'pieces' };
    const rest = piece('top', 1600, 1560);
    expect(seamsAndNotices([rest, upstand])).toMatchObject({ seams: [['upstand', 1500]], slabs: 1 });
    expect(seamsAndNotices([rest, { ...upstand, follows: 'seams' }])).toMatchObject({ seams: [], slabs: 2 });
    expect(seamsAndNotices([upstand]).seams).toEqual([]);
  });
});

// By hand: what lies `e` mm from one end of a slab lies `e` mm from the other end of its mirror.
describe('slabs that follow each other in the block', () => {
  const book: SlabRules = { ...RULES, match: 'bookmatch' };
  const places = (layout: SlabLayout) =>
    layout.slabs.map(({ parts, mirrored }) => [
      mirrored,
      ...parts.map(({ piece: id, x_mm, y_mm }) => [id, x_mm, y_mm]),
    ]);
  const l = [piece('long', 3600, 620), piece('short', 2400 - 620, 620), piece('island', 2000, 1000)];

  it('are mirrored at a seam where that takes no more of them', () => {
    // Two strips of 1000 do not lie on one slab, nor do 2400 + 1200 in one strip. 2400 ends at 3180, 20 from the end; 1200 begins there.
    const layout = laid([piece('top', 3600, 1000)], book);
    expect(places(layout)).toEqual([
      [false, ['top', 780, 20]],
      [true, ['top', 20, 20]],
    ]);
    expect(layout.matching).toEqual({ match: 'bookmatch', isKept: true, slabs: 2, fewest: 2 });
  });
  it('are mirrored over several seams, each the mirror of the one before', () => {
    // Parts of 2500: the first from 680 to 3180, the second from 20 to 2520, the third from 3200 - 2520 = 680.
    expect(places(laid([piece('top', 7500, 1000)], book))).toEqual([
      [false, ['top', 680, 20]],
      [true, ['top', 20, 20]],
      [false, ['top', 680, 20]],
    ]);
  });
  it('all begin at their start where they are laid the same way up', () => {
    expect(places(laid([piece('top', 7500, 1000)], { ...RULES, match: 'slip' }))).toEqual([
      [false, ['top', 680, 20]],
      [false, ['top', 20, 20]],
      [false, ['top', 20, 20]],
    ]);
  });
  it('are not matched where that takes more of them, which is told, unless it is wanted', () => {
    // Beside the parts of the long leg neither strip of 3160 has room for 1780, and the island lies on no slab above one: it is the third.
    const matching = { match: 'bookmatch', slabs: 3, fewest: 2 };
    const fewest = laid(l, book);
    expect(fewest.slabs).toEqual(laid(l, RULES).slabs);
    expect(fewest.matching).toEqual({ ...matching, isKept: false });
    const matched = laid(l, { ...book, always_match: true });
    expect(matched.matching).toEqual({ ...matching, isKept: true });
    expect(matched.slabs).toHaveLength(3);
    expect(matched.slabs.map(({ mirrored }) => mirrored)).toEqual([false, true, false]);
  });
  it('are not asked for by what has no seam, nor by an upstand, which is cut from what is left', () => {
    expect(laid([piece('top', 3000, 620)], book).matching).toBeNull();
    expect(laid([{ ...piece('upstand', 3600, 100), follows: 'pieces' }], book).matching).toBeNull();
  });
});

// Eight parts that one slab was cut into: no order of strips or offcuts that is tried puts them together again.
it('finds the one slab that eight parts fill to the last', () => {
  const sizes = [
    [2, 2],
    [10, 4],
    [2, 6],
    [2, 4],
    [10, 2],
    [10, 6],
    [16, 1],
    [16, 5],
  ] as const;
  const pieces = sizes.map(([length, width], i) => piece(`P${i}`, 100 * length, 100 * width));
  const layout = laid(pieces, { ...RULES, slab_mm: [2000, 1200], trim_mm: 0, kerf_mm: 0 });
  expect(layout).toMatchObject({ slabs: { length: 1 }, yield: 1, lower_bound: 1 });
});

describe('pieces that need no slab or come out of none', () => {
  it('are none, or without area', () => {
    const none = { slabs: [], seams: [], matching: null, yield: 0, lower_bound: 0 };
    expect(laid([], RULES)).toEqual(none);
    expect(laid([piece('a', 0, 620), piece('b', 620, 0)], RULES)).toEqual(none);
  });
  it('are wider than the slab, unless they may be turned', () => {
    expect(code([piece('a', 1500, 2000)], RULES)).toBe('slab-too-small');
    const turned = laid([piece('a', 1500, 2000)], { ...RULES, may_turn: true });
    expect(turned.slabs[0]!.parts[0]).toMatchObject({ turned: true, length_mm: 1500, width_mm: 2000 });
    // Turned, its length lies across the slab.
    const seamed = laid([piece('a', 2000, 2000)], { ...RULES, may_turn: true });
    expect(seamed.seams).toEqual([{ piece: 'a', at_mm: 1333.3 }]);
  });
  it('are longer than a slab that does not hold the shortest part', () => {
    expect(code([piece('a', 800, 300)], { ...RULES, slab_mm: [600, 600] })).toBe('slab-too-small');
    expect(code([piece('a', 300, 300)], { ...RULES, slab_mm: [600, 30] })).toBe('slab-too-small');
    expect(code([piece('a', 300, 300)], { ...RULES, trim_mm: 900 })).toBe('slab-too-small');
  });
  it('have no place for a seam', () => {
    expect(code([piece('a', 3600, 620, [[400, 3200]])], RULES)).toBe('no-seam-place');
    expect(code([piece('a', 3200, 620)], { ...RULES, shortest_part_mm: 1700 })).toBe('no-seam-place');
  });
  it('have no size', () => {
    expect(code([piece('a', Number.NaN, 620)], RULES)).toBe('no-size');
    expect(code([piece('a', 600, -1)], RULES)).toBe('no-size');
    expect(code([piece('a', 600, 600)], { ...RULES, kerf_mm: Number.POSITIVE_INFINITY })).toBe('no-size');
  });
});
