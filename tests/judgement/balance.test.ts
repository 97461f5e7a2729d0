import { describe, expect, it } from 'vitest';
import { schemeVerdict } from '../../src/engine/judge/balance';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { sampleColor } from '../../src/engine/judge/sample-color';
import { temperatureClass } from '../../src/engine/judge/temperature-class';
import type { SurfaceId } from '../../src/engine/surface';
import { finish, laidFinish } from './finishes';
import { inPlace, type Row, relaid, scheme, tinted } from './schemes';

// Expected shares and verdicts: an independent computation of five schemes in a room without and with an island,
// with the zero of the warm-cool score of Ou et al. 2018 (published) and limits that are our judgment.

/** Percent of the overview without and with an island. */
const overview = (view: 0 | 1, ids: { fronts: string; floor: string; white: string; counter: string }): Row[] => [
  ['base-fronts', ids.fronts, [39, 49][view]!],
  ['wall', ids.white, [23, 20][view]!],
  ['backsplash', ids.white, 10],
  ['counter', ids.counter, [5, 11][view]!],
  ['floor', ids.floor, [22, 9][view]!],
  ['hardware', 'MT-01', 1],
];

/** One component a surface, as in the published comparison: no grain, no clefts. */
const plain = { slate: 'ST-01', birch: 'WD-01', quarry: 'TL-07', walnut: 'WD-03' };

const SCHEMES = [
  [
    'A',
    { fronts: 'PT-01', floor: plain.slate, white: 'TL-01', counter: 'EN-01' },
    'lacks-warm',
    [1, 0, 62, 37],
    [1, 0, 60, 39],
  ],
  [
    'B',
    { fronts: 'PT-01', floor: plain.birch, white: 'TL-01', counter: 'EN-01' },
    'balanced',
    [23, 0, 40, 37],
    [10, 0, 51, 39],
  ],
  [
    'C',
    { fronts: 'PT-14', floor: plain.slate, white: 'TL-01', counter: 'EN-01' },
    'muted',
    [1, 0, 23, 76],
    [1, 0, 11, 88],
  ],
  [
    'D',
    { fronts: 'PT-14', floor: plain.quarry, white: 'TL-01', counter: 'EN-01' },
    'balanced',
    [23, 0, 1, 76],
    [10, 0, 2, 88],
  ],
  [
    'E',
    { fronts: plain.walnut, floor: plain.quarry, white: 'TL-02', counter: 'ST-02' },
    'lacks-cool',
    [62, 38, 0, 0],
    [59, 41, 0, 0],
  ],
] as const;

const percents = (b: ReturnType<typeof judge>['balance']) =>
  [b.warm_share, b.leaning_share, b.cool_share, b.neutral_share].map((x) => 100 * x);

describe('five schemes, without and with an island', () => {
  it.each(SCHEMES)('%s: %o is %s', (_, ids, verdict, without, withIsland) => {
    for (const [view, expected] of [
      [0, without],
      [1, withIsland],
    ] as const) {
      const { balance } = judge(scheme(overview(view, ids)));
      expect(balance.verdict).toBe(verdict);
      percents(balance).forEach((share, i) => {
        // Printed in whole percent.
        expect(Math.abs(share - expected[i]!)).toBeLessThanOrEqual(1);
      });
      expect(balance.installed.verdict).toBe(verdict);
    }
  });

  it('says why: the cool fronts and floor, and asks for one warm surface', () => {
    const { balance, warnings } = judge(scheme(overview(0, SCHEMES[0][1])));
    expect(balance.sentence).toContain('base fronts');
    expect(balance.sentence).toContain('floor');
    expect(balance.sentence).toContain('One warm surface');
    expect(warnings.find((w) => w.code === 'lacks-warm')).toMatchObject({ severity: 'visible', basis: 'sample' });
  });

  it('raises nothing for muted and balanced schemes', () => {
    for (const i of [1, 2, 3]) {
      const codes = judge(scheme(overview(0, SCHEMES[i]![1]))).warnings.map((w) => w.code);
      expect(codes).not.toContain('lacks-warm');
      expect(codes).not.toContain('lacks-cool');
    }
  });

  it('finds green-gray fronts and slate pulling apart in scheme C, and only there', () => {
    const pulled = SCHEMES.map(([, ids]) =>
      judge(scheme(overview(0, ids))).warnings.some(
        (w) => w.code === 'undertones-pull-apart' && w.surfaces.includes('floor') && w.surfaces.includes('base-fronts'),
      ),
    );
    expect(pulled).toEqual([false, false, true, false, false]);
  });

  it('says "may" where the viewpoints disagree, and gives the range', () => {
    // Olive-gray fronts over terrazzo, limestone counter, yellowish tile, white walls: warm and leaning warm cover 74 %
    // without the island and 79 % with it, on either side of the limit.
    const terrazzo = laidFinish('terrazzo', 'engineered', [
      'base .7 80 4 4.5',
      'fleck .18 58 14 10',
      'fleck .12 48 .5 .5',
    ]);
    const ids = { fronts: 'LM-02', floor: 'ST-01', white: 'TL-02', counter: 'ST-02' };
    const rows = relaid(overview(0, ids), { floor: terrazzo, wall: 'TL-01' });
    const both = rows.map((row, i): Row => [...row, overview(1, ids)[i]![2]!]);
    expect(judge(scheme(rows)).balance.verdict).toBe('muted');
    const withIsland = both.map(([surface, of, , percent]): Row => [surface, of, percent!]);
    expect(judge(scheme(withIsland)).balance.verdict).toBe('lacks-cool');
    const { balance } = judge(scheme(both));
    expect(balance.sentence).toMatch(/may|from most places/);
    expect(balance.range.warm[0]).toBeLessThanOrEqual(balance.warm_share);
    expect(balance.range.warm[1]).toBeGreaterThanOrEqual(balance.warm_share);
  });
});

describe('classes of temperature', () => {
  const kind = (id: string) => {
    const color = sampleColor('wall', finish(id), 0);
    return temperatureClass(color.lab, color.strength);
  };
  it.each([
    ['WD-01', 'warm'],
    ['TL-07', 'warm'],
    ['MT-01', 'warm'],
    // The published sign calls mid walnut cool; a full color with w >= 10 is warm all the same.
    ['WD-03', 'warm'],
    ['ST-02', 'leaning'],
    ['TL-02', 'leaning'],
    ['LM-02', 'leaning'],
    ['PT-01', 'cool'],
    ['ST-01', 'cool'],
    ['LM-01', 'cool'],
    ['EN-01', 'neutral'],
    ['TL-01', 'neutral'],
    // w +1.44, +0.62, -1.22 on the three axes: green-leaning, neither warm nor cool.
    ['PT-14', 'neutral'],
  ] as const)('%s is %s', (id, expected) => {
    expect(kind(id)).toBe(expected);
  });
});

describe('scheme verdict at its limits', () => {
  const shares = (warm: number, leaning: number, cool: number) => ({
    warm,
    leaning,
    cool,
    neutral: 1 - warm - leaning - cool,
  });
  it.each([
    [shares(0.049, 0, 0.4), 20, 'lacks-warm'],
    [shares(0.05, 0, 0.4), 20, 'balanced'],
    [shares(0.049, 0, 0.39), 7.9, 'muted'],
    [shares(0.049, 0, 0.39), 8, 'balanced'],
    [shares(0.5, 0.25, 0.09), 8, 'lacks-cool'],
    [shares(0.5, 0.25, 0.1), 8, 'balanced'],
    [shares(0.5, 0.24, 0.09), 8, 'balanced'],
  ] as const)('%o, mean chroma %d: %s', (given, chroma, verdict) => {
    expect(schemeVerdict(given, chroma)).toBe(verdict);
  });
});

describe('balance as installed', () => {
  const rows = overview(1, SCHEMES[0][1]);

  it('takes an even cast off before it counts', () => {
    const cast = rows.reduce((input, [surface]) => {
      const s = input.surfaces.find((x) => x.surface === surface)!;
      const components = s.finish.components.map((c) => tinted(c.labD65, { l: 100, a: 1, b: 8 }));
      return inPlace(input, surface, { placeWhite: { l: 100, a: 1, b: 8 }, components });
    }, scheme(rows));
    const { balance } = judge(cast);
    expect(balance.installed.verdict).toBe('lacks-warm');
    expect(balance.installed.shares[2]).toBeCloseTo(balance.cool_share, 6);
  });

  it('does not count a white as cool that reads yellowish because other places are yellower still', () => {
    const cast = (input: JudgeInput, surface: SurfaceId, b: number) => {
      const s = input.surfaces.find((x) => x.surface === surface)!;
      const components = s.finish.components.map((c) => tinted(c.labD65, { l: 100, a: 0, b }));
      return inPlace(input, surface, { placeWhite: { l: 100, a: 0, b }, components });
    };
    const uneven = rows.reduce((input, [surface]) => cast(input, surface, surface === 'wall' ? 3 : 14), scheme(rows));
    const { balance } = judge(uneven);
    expect(balance.installed.shares[2]).toBeLessThanOrEqual(balance.cool_share + 1e-9);
  });

  it('notes where the light tips the scheme, without changing its verdict', () => {
    // The fronts alone read brown in place: their pigment under this lamp, not the room.
    const brown = inPlace(scheme(rows), 'base-fronts', { components: [{ l: 35, a: 14, b: 20 }] });
    const reversed = relaid(rows, { 'base-fronts': 'WD-03' });
    const cooled = inPlace(scheme(reversed), 'base-fronts', {
      components: [
        { l: 44, a: -12, b: -6 },
        { l: 36, a: -12, b: -6 },
      ],
    });
    expect(judge(brown).balance).toMatchObject({ verdict: 'lacks-warm', installed: { verdict: 'balanced' } });
    const tipped = judge(cooled);
    expect(tipped.balance.verdict).toBe('balanced');
    expect(tipped.warnings.find((w) => w.code === 'lacks-warm')).toMatchObject({
      severity: 'note',
      basis: 'installed',
    });
  });
});

it('calls near-neutral colors quiet only where they are not light against dark', () => {
  const gray = (l: number): Row[] => [
    ['base-fronts', laidFinish(`gray-${l}`, 'paint', [`base 1 ${l} 0 0`]), 45],
    ['wall', laidFinish('white', 'paint', ['base 1 93 0 0']), 55],
  ];
  const said = (l: number) => judge(scheme(gray(l))).balance;
  expect(said(39)).toMatchObject({ verdict: 'muted', sentence: expect.stringMatching(/quiet, near-neutral/) });
  expect(said(37)).toMatchObject({ verdict: 'muted', sentence: expect.stringMatching(/^Light against dark/) });
});
