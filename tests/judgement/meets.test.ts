import { describe, expect, it } from 'vitest';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { type Meets, meetsOf } from '../../src/engine/judge/meets';
import type { SurfaceId } from '../../src/engine/surface';
import { inPlace, type Row, scheme, tinted } from './schemes';

/** The same kitchen where two surfaces meet so, and all others are seen together. */
function meeting(input: JudgeInput, a: SurfaceId, b: SurfaceId, how: Meets): JudgeInput {
  const others = (own: SurfaceId) =>
    Object.fromEntries(
      input.surfaces.flatMap(({ surface }) => {
        const meets = [a, b].includes(surface) && [a, b].includes(own) ? how : 'together';
        return surface === own || meets === 'apart' ? [] : [[surface, meets] as const];
      }),
    );
  return { ...input, surfaces: input.surfaces.map((s) => ({ ...s, meets: others(s.surface) })) };
}

// Three unrelated materials, each with a fault between counter and backsplash by the rules for pairs (see whites.test).
const FAULTY: readonly (readonly [string, Row[]])[] = [
  [
    'stone beside glazed tile',
    [
      ['counter', 'ST-02', 30],
      ['backsplash', 'TL-01', 30],
      ['floor', 'WD-03', 40],
    ],
  ],
  [
    'engineered stone beside paint',
    [
      ['counter', 'EN-04', 30],
      ['backsplash', 'PT-04', 30],
      ['floor', 'WD-03', 40],
    ],
  ],
  [
    'laminate beside paint, leans opposed',
    [
      ['counter', 'LM-02', 30],
      ['backsplash', 'PT-16', 30],
      ['floor', 'WD-03', 40],
    ],
  ],
];
const CODES = ['white-looks-dirty', 'too-yellow', 'undertones-pull-apart'];
const faultsOf = (input: JudgeInput) =>
  judge(input).warnings.filter(
    ({ code, surfaces }) => CODES.includes(code) && surfaces.includes('counter') && surfaces.includes('backsplash'),
  );

describe.each(FAULTY)('a fault: %s', (_, rows) => {
  const input = scheme(rows);

  it('keeps its grade where the two touch or are seen together', () => {
    const [plain] = faultsOf(input);
    expect(plain!.severity).not.toBe('note');
    for (const how of ['adjacent', 'together'] as const) {
      expect(faultsOf(meeting(input, 'counter', 'backsplash', how))).toEqual([plain]);
    }
  });

  it('is a note where nobody sees them at once, and says why', () => {
    const [found, ...more] = faultsOf(meeting(input, 'counter', 'backsplash', 'apart'));
    expect(more).toEqual([]);
    expect(found!.severity).toBe('note');
    expect(found!.reason).toContain('seen together');
  });

  it('says where they meet beside the verdict, which stays', () => {
    const findings = (how: Meets) =>
      judge(meeting(input, 'counter', 'backsplash', how)).pairs.filter(
        ({ a, b, basis }) => a.surface === 'counter' && b.surface === 'backsplash' && basis === 'sample',
      );
    expect(findings('apart').length).toBeGreaterThan(0);
    for (const how of ['adjacent', 'together', 'apart'] as const) {
      expect(findings(how)).toEqual(findings('apart').map((pair) => ({ ...pair, meets: how })));
    }
  });
});

describe('a finish on two surfaces', () => {
  const input = scheme([
    ['counter', 'ST-02', 30],
    ['backsplash', 'TL-01', 30],
    ['wall', 'TL-01', 40],
  ]);

  it('is named only on the surface that is seen beside the other', () => {
    const [found, ...more] = judge(meeting(input, 'counter', 'wall', 'apart')).warnings.filter(({ code }) =>
      CODES.includes(code),
    );
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity: 'grave', surfaces: ['counter', 'backsplash'] });
  });
});

it('makes no fault of a place between surfaces that are apart', () => {
  const white = { l: 100, a: 0, b: 7 };
  const input = scheme([
    ['counter', 'EN-03', 40],
    ['wall', 'TL-01', 60],
  ]);
  const wall = input.surfaces.find(({ surface }) => surface === 'wall')!;
  const components = wall.finish.components.map(({ labD65 }) => tinted(labD65, white));
  const there = inPlace(input, 'wall', { placeWhite: white, components });
  const faults = (how: Meets) =>
    judge(meeting(there, 'counter', 'wall', how)).warnings.filter(
      ({ code, surfaces }) => code === 'tinted-by-bounce' && surfaces.includes('counter'),
    );
  expect(faults('together').length).toBe(1);
  expect(faults('apart')).toEqual([]);
});

it('is the same from either side, and the nearer of what both say', () => {
  const one = { surface: 'counter', meets: { wall: 'adjacent' } } as const;
  const other = { surface: 'wall', meets: {} } as const;
  expect([meetsOf(one, other), meetsOf(other, one)]).toEqual(['adjacent', 'adjacent']);
  expect(meetsOf({ surface: 'counter', meets: {} }, other)).toBe('apart');
  expect(meetsOf({ surface: 'counter' }, { surface: 'wall' })).toBe('together');
});
