import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { finish, knownTo, laidFinish } from './finishes';
import { inPlace, type Row, relaid, scheme, tinted } from './schemes';

const assessed = (rows: readonly Row[]) => {
  const input = scheme(rows);
  return holdsIn(input, judge(input), { draws: 1000, seed: 5 });
};

describe('an edge under errors', () => {
  const edgeOf = (counter: LaidFinish) =>
    assessed([
      ['counter', counter, 10],
      ['base-fronts', laidFinish('fronts', 'paint', ['base 1 60 0 0']), 30],
    ]).warnings.find((w) => w.surfaces.includes('base-fronts'))!;

  it('stands only where it stays as bad: a visible one on the verge of a note does so in about half', () => {
    // CIE 15: L* 60 is Y 28.1, L* 74.7 is Y 47.8. So they stand 19.7 points apart, a hair under the limit of 20.
    const verge = edgeOf(laidFinish('verge', 'engineered', ['base 1 74.7 0 0']));
    expect(verge.severity).toBe('visible');
    expect(verge.holds_in!).toBeGreaterThan(0.4);
    expect(verge.holds_in!).toBeLessThan(0.7);
  });

  it('does not gain from a finish having parts: base and vein err together', () => {
    const plain = edgeOf(laidFinish('top', 'engineered', ['base 1 73.5 0 0']));
    const veined = edgeOf(laidFinish('top', 'engineered', ['base .5 73.5 0 0', 'vein .5 73.5 0 0']));
    expect(plain.holds_in!).toBeLessThan(1);
    // Each is drawn from numbers of its own: a standard error of 0.01.
    expect(Math.abs(veined.holds_in! - plain.holds_in!)).toBeLessThan(0.04);
  });
});

describe('a fault whose name does not stand', () => {
  it('is told by all its names, and never as grave', () => {
    const rows = (uncertainty: number): Row[] => [
      ['counter', knownTo(finish('ST-05'), uncertainty), 10],
      ['wall', knownTo(finish('TL-03'), uncertainty), 40],
    ];
    // Outside draws: dirty in 66 %, yellow in 30 %.
    const found = assessed(rows(1.45)).warnings.find((w) => w.code === 'white-looks-dirty')!;
    expect(found.text).toBe('The counter may look dirty or yellow beside the wall.');
    expect(found.severity).toBe('visible');
    expect(Math.abs(found.holds_in! - 0.66)).toBeLessThan(0.05);
    expect(found.why).toMatch(/Some fault stands in 9\d% of the tries\.$/);
    const firm = assessed(rows(0.1)).warnings.find((w) => w.code === 'white-looks-dirty')!;
    expect(firm.text).toBe('The counter looks dirty beside the cleaner white of the wall.');
    expect(firm.severity).toBe(judge(scheme(rows(0.1))).warnings.find((w) => w.code === 'white-looks-dirty')!.severity);
  });

  it('describes the errors as they are drawn', () => {
    const open = assessed([
      ['counter', knownTo(finish('EN-01'), 1.3), 10],
      ['wall', knownTo(finish('PT-06'), 1.3), 10],
    ]).warnings.find((w) => w.code === 'cannot-tell')!;
    expect(open.why).toContain('known to about 1.3 CIEDE2000 (root mean square)');
  });
});

describe('draws', () => {
  // Whites, edges and undertones near their limits, each place with a tint and with curves that differ.
  const rows: Row[] = [
    ['counter', 'EN-01', 10],
    ['floor', 'ST-01', 20],
    ['base-fronts', knownTo(finish('PT-14'), 2), 30],
    ['backsplash', 'TL-01', 10],
    ['wall', 'PT-06', 30],
  ];
  const plain = scheme(rows);
  const input: JudgeInput = {
    ...plain,
    surfaces: plain.surfaces.map((s, k) => ({
      ...s,
      installed: s.installed.map((reading) => {
        const placeWhite = { l: 100, a: 0.5 * k - 1, b: 2.2 * k };
        const components = s.finish.components.map((c) => tinted(c.labD65, placeWhite));
        const variants = components.map((lab) =>
          Array.from({ length: 16 }, (_, i) => ({ l: lab.l, a: lab.a + (i - 7.5) / 6, b: lab.b + (7.5 - i) / 4 })),
        );
        return { ...reading, placeWhite, components, average: components[0]!, variants };
      }),
    })),
  };
  const drawn = (draws: number, seed: number) => holdsIn(input, judge(input), { draws, seed });

  it('200 say what 5000 plain repetitions do, within their sampling error', () => {
    const many = drawn(5000, 99);
    const few = drawn(200, 1);
    const shares = ({ warnings, pairs }: typeof many) =>
      new Map([
        ...pairs.flatMap((p, i) =>
          ['holds_in', 'fine_in'].map((k) => [`${i} ${p.basis} ${k}`, p.numbers[k] ?? null] as const),
        ),
        ...warnings.map((w) => [`${w.basis} ${w.why}`, w.holds_in] as const),
      ]);
    const [expected, found] = [shares(many), shares(few)];
    let compared = 0;
    let between = 0;
    for (const [key, share] of expected) {
      const other = found.get(key);
      if (share === null || other === null || other === undefined) continue;
      // 3.5 standard errors of a share in 200 draws (one in 2000 by chance; there are some 60), and one draw for rounding.
      const error = Math.sqrt((share * (1 - share)) / 200);
      expect(Math.abs(other - share), key).toBeLessThanOrEqual(3.5 * error + 1 / 200 + 1e-12);
      compared++;
      if (share > 0.02 && share < 0.98) between++;
    }
    expect(compared).toBeGreaterThan(30);
    expect(between).toBeGreaterThan(10);
  });

  it('give installed pairs, tints and faults a share, too', () => {
    const done = drawn(200, 1);
    const installed = done.pairs.filter((p) => p.basis === 'installed');
    expect(installed.length).toBeGreaterThan(0);
    for (const p of installed) expect(p.numbers).toHaveProperty('holds_in');
    const tints = done.warnings.filter((w) => w.code === 'tinted-by-bounce');
    expect(tints.length).toBeGreaterThan(0);
    for (const w of done.warnings) expect(w.holds_in, w.text).not.toBeNull();
  });

  it('do not move a finish when another changes', () => {
    const other = scheme(relaid(rows, { floor: 'WD-01' }));
    const yellow = (given: typeof input) =>
      holdsIn(given, judge(given)).warnings.find((w) => w.code === 'too-yellow' && w.basis === 'sample')?.holds_in;
    expect(yellow(other)).toBe(yellow(plain));
  });
});

describe('a tint of its place', () => {
  /** A white wall where a perfect white reads b*, in a place that 16 curves of the paint take on as `lift` says. */
  const wall = (b: number, lift: (curve: number) => number) => {
    const placeWhite = { l: 100, a: 0, b };
    const lab = tinted({ l: 92, a: -0.4, b: 1.6 }, placeWhite);
    const variants = Array.from({ length: 16 }, (_, i) => ({ ...lab, b: lab.b + lift(i) }));
    const input = scheme([
      ['floor', 'WD-01', 30],
      ['wall', knownTo(finish('PT-02'), 0.05), 40],
    ]);
    const [nominal] = variants;
    const found = inPlace(input, 'wall', {
      placeWhite,
      components: [nominal!],
      average: nominal!,
      variants: [variants],
    });
    return holdsIn(found, judge(found)).warnings.find((w) => w.surfaces.includes('wall') && w.basis === 'installed')!;
  };
  // At b* +5 the chroma part is 3.9 and the name yellowish white; 1.2 less keeps neither.
  const lessFrom = (many: number) => (curve: number) => (curve < many ? 0 : -1.2);

  it.each([
    [16, 'The wall reads yellowish white here; the sample is white.', 'visible'],
    [13, 'The wall may read yellowish white here; the sample is white.', 'visible'],
    // As such it does not stand, as some tint it does.
    [8, 'The wall picks up a yellowish tint here.', 'note'],
  ])('visible by %d of 16 curves: %s', (many, text, severity) => {
    const found = wall(5, lessFrom(many));
    expect(found).toMatchObject({ code: 'tinted-by-bounce', severity });
    expect(found.text).toContain(text);
  });

  it('that does not even stand as some tint is not worth a question', () => {
    // At b* +2.2 the chroma part is 1.8, a hair over the note.
    const found = wall(2.2, (curve) => (curve < 8 ? 0 : -0.4));
    expect(found).toBeUndefined();
    expect(wall(2.2, () => 0)).toMatchObject({ code: 'tinted-by-bounce', severity: 'note' });
  });
});

describe('the trade’s rule', () => {
  const verdict = (uncertainty: number, other = '92.3 -.4 1.6') => {
    const [a, b] = ['92 -.4 1.6', other].map((lab, i) =>
      knownTo(laidFinish(`P-${i}`, 'paint', [`base 1 ${lab}`]), uncertainty),
    );
    const input = scheme([
      ['counter', a!, 10],
      ['wall', b!, 10],
    ]);
    return [judge(input), holdsIn(input, judge(input))].map(({ pairs }) => pairs[0]!.verdict);
  };

  it.each([
    // 0.19 CIEDE2000 apart. Known to 0.25 each, nobody could see what the errors hide.
    [0.25, 'same'],
    // Known to 1 each, the difference says nothing of whether they look the same.
    [1, 'cannot-tell'],
    [5, 'cannot-tell'],
  ])('two whites that seem the same, known to %d: %s', (uncertainty, expected) => {
    expect(verdict(uncertainty)).toEqual([expected, expected]);
  });

  it('leaves a difference larger than its error to the draws', () => {
    // 1.5 apart, known to 0.7 each: the difference is real, the match is not sure.
    expect(verdict(0.7, '94.4 -.4 1.6')).toEqual(['match', 'cannot-tell']);
  });
});
