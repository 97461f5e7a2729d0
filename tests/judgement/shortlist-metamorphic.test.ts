import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FinishClass, LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { judgePair } from '../../src/engine/judge/pair';
import { sampleColor } from '../../src/engine/judge/sample-color';
import { faultHoldsAtLeast } from '../../src/engine/judge/shortlist/firmly';
import { finish, knownTo, laidFinish } from './finishes';
import { scheme } from './schemes';
import { acceptedIds, held, listed } from './shortlists';

const IDS = [
  'TL-01',
  'TL-02',
  'TL-03',
  'LM-01',
  'EN-02',
  'EN-03',
  'EN-05',
  'ST-02',
  'ST-05',
  'SS-01',
  'TL-04',
  'LM-02',
];
const AGAINST = [held('counter', 'EN-01'), held('floor', 'ST-01'), held('wall', 'PT-02', 'ordered')];

describe('what changes nothing', () => {
  const list = listed('backsplash', IDS, AGAINST);

  it('the order of the library, and of the surfaces', () => {
    expect(listed('backsplash', [...IDS].reverse(), AGAINST)).toEqual(list);
    expect(listed('backsplash', IDS, [...AGAINST].reverse())).toEqual(list);
  });

  it('finishes that stand elsewhere in the library', () => {
    const fewer = IDS.filter((id) => id !== 'EN-03' && id !== 'TL-02');
    const without = listed('backsplash', fewer, AGAINST);
    expect(acceptedIds(without)).toEqual(acceptedIds(list).filter((id) => fewer.includes(id)));
    expect(without.rejected).toEqual(list.rejected.filter(({ finish: id }) => fewer.includes(id)));
  });

  it('names', () => {
    const renamed = (id: string): LaidFinish => ({
      ...finish(id),
      id: `x${99 - IDS.indexOf(id)}`,
      label: 'Icy warm yellow',
    });
    const other = listed('backsplash', IDS.map(renamed), AGAINST);
    const idOf = (id: string) => renamed(id).id;
    expect(acceptedIds(other)).toEqual(acceptedIds(list).map(idOf));
    expect(other.accepted.map(({ reasons }) => reasons)).toEqual(list.accepted.map(({ reasons }) => reasons));
    expect(new Set(other.rejected.map(({ finish: id }) => id))).toEqual(
      new Set(list.rejected.map(({ finish: id }) => idOf(id))),
    );
  });
});

const CLASSES: readonly FinishClass[] = ['paint', 'stone', 'engineered', 'laminate', 'wood', 'glazed'];
const part = fc.record({
  kind: fc.constantFrom(...CLASSES),
  l: fc.double({ min: 30, max: 96, noNaN: true }),
  a: fc.double({ min: -6, max: 6, noNaN: true }),
  b: fc.double({ min: -6, max: 14, noNaN: true }),
});

it('turns down nothing more when less is known of the colors', () => {
  fc.assert(
    fc.property(
      fc.array(part, { minLength: 4, maxLength: 8 }),
      fc.double({ min: 0.1, max: 2, noNaN: true }),
      (parts, known) => {
        const finishes = parts.map(({ kind, l, a, b }, i) => laidFinish(`F-${i}`, kind, [`base 1 ${l} ${a} ${b}`]));
        const rejectedAt = (uncertainty: number): Set<string> => {
          const [counter, floor, ...rest] = finishes.map((one) => knownTo(one, uncertainty));
          const list = listed('wall', rest, [held('counter', counter!), held('floor', floor!)]);
          return new Set(list.rejected.map(({ finish: id }) => id));
        };
        const before = rejectedAt(known);
        for (const id of rejectedAt(1.5 * known)) expect(before.has(id)).toBe(true);
      },
    ),
    { numRuns: 60 },
  );
});

// The bound adds up chances to cross limits (Boole's inequality); drawing the errors counts them. 200 draws err by 0.035 at most (one
// standard error); twice that, and first order, are allowed for.
it('never claims that a fault stands more firmly than drawn errors say', () => {
  const pairs: readonly (readonly [string, string])[] = [
    ['TL-02', 'EN-01'],
    ['LM-01', 'EN-01'],
    ['PT-06', 'EN-01'],
    ['ST-03', 'EN-01'],
    ['TL-01', 'ST-02'],
    ['PT-20', 'TL-01'],
    ['LM-02', 'ST-01'],
    ['PT-14', 'ST-01'],
    ['PT-10', 'ST-01'],
  ];
  let firm = 0;
  for (const [one, other] of pairs) {
    const [a, b] = [one, other].map((id) => sampleColor('wall', finish(id), 0));
    const sides = [
      { color: a!, lab: a!.lab },
      { color: b!, lab: b!.lab },
    ] as const;
    const judgment = judgePair(sides[0], sides[1], { anchorY: null });
    const claimed = faultHoldsAtLeast(judgment, sides[0], sides[1]);
    const input = scheme([
      ['wall', one, 50],
      ['counter', other, 50],
    ]);
    const found = holdsIn(input, judge(input)).pairs.find(
      (pair) => pair.basis === 'sample' && pair.a.component === 'base' && pair.b.component === 'base',
    )!;
    const areWhites = judgment.verdict !== 'pulls-apart';
    const drawn = areWhites ? 1 - found.numbers['fine_in']! : found.numbers['holds_in']!;
    expect(claimed, `${one} beside ${other}`).toBeLessThanOrEqual(drawn + 0.08);
    if (claimed >= 0.85) firm++;
  }
  // And it is no bound that never says anything.
  expect(firm).toBeGreaterThanOrEqual(4);
});
