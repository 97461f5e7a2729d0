import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { yFromLightness } from '../../src/engine/color/lab';
import type { ComponentRole, FinishClass, LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import type { JudgeInput } from '../../src/engine/judge/input';
import { judge } from '../../src/engine/judge/judge';
import { judgePair } from '../../src/engine/judge/pair';
import { sampleColor } from '../../src/engine/judge/sample-color';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';

const CLASSES: readonly FinishClass[] = [
  'paint',
  'stone',
  'engineered',
  'laminate',
  'wood',
  'vinyl',
  'glazed',
  'metal',
];
const ROLES: readonly ComponentRole[] = ['base', 'vein', 'fleck', 'grain', 'grout'];

interface Part {
  readonly role: ComponentRole;
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** A finish with gray spectra of the right Y: the rules read its Lab, the edges its reflectance. */
const laid = (id: string, kind: FinishClass, parts: readonly Part[], provenance: 'declared' | 'photo'): LaidFinish => ({
  id,
  label: id,
  class: kind,
  glossGu: 20,
  components: parts.map((p) => ({
    role: p.role,
    share: 1 / parts.length,
    labD65: { l: p.l, a: p.a, b: p.b },
    spectrum: reflectanceSpd(Array.from({ length: 81 }, () => yFromLightness(p.l) / 100)),
    spectrumSource: 'lhtss',
    provenance,
    uncertaintyDe00: provenance === 'photo' ? 5 : 1,
  })),
});

// Half of the colors near white, where most rules live.
const part = fc.oneof(
  fc.record({
    role: fc.constantFrom(...ROLES),
    l: fc.double({ min: 78, max: 98, noNaN: true }),
    a: fc.double({ min: -4, max: 4, noNaN: true }),
    b: fc.double({ min: -5, max: 13, noNaN: true }),
  }),
  fc.record({
    role: fc.constantFrom(...ROLES),
    l: fc.double({ min: 20, max: 85, noNaN: true }),
    a: fc.double({ min: -15, max: 22, noNaN: true }),
    b: fc.double({ min: -15, max: 30, noNaN: true }),
  }),
);
const finishes = fc
  .array(
    fc.tuple(
      fc.constantFrom(...CLASSES),
      fc.array(part, { minLength: 1, maxLength: 3 }),
      fc.constantFrom('declared' as const, 'photo' as const),
    ),
    { minLength: 2, maxLength: 5 },
  )
  .map((list) => list.map(([kind, parts, provenance], i) => laid(`F-${i}`, kind, parts, provenance)));

const input = fc
  .record({
    finishes,
    surfaces: fc.uniqueArray(fc.constantFrom(...SURFACES), { minLength: 2, maxLength: 8 }),
    picks: fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
    shares: fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
      minLength: 8,
      maxLength: 8,
    }),
    curves: fc.double({ min: 0, max: 3, noNaN: true }),
    tint: fc.tuple(fc.double({ min: -3, max: 4, noNaN: true }), fc.double({ min: -3, max: 9, noNaN: true })),
  })
  .map(({ finishes, surfaces, picks, shares, tint, curves }): JudgeInput => {
    const shifted = ({ l, a, b }: { l: number; a: number; b: number }, i: number) =>
      i % 2 === 0 ? { l, a: a + tint[0], b: b + tint[1] } : { l, a, b };
    return {
      project: 'p',
      option: 'o',
      setting: { id: 's', cct_k: 3000, duv: 0 },
      lights: 'one',
      burning: { daylight: true, lamps: false },
      overviews: ['one', 'two'],
      surfaces: surfaces.map((surface: SurfaceId, i) => {
        const finish = finishes[picks[i]! % finishes.length]!;
        return {
          surface,
          finish,
          state: 'open',
          installed: [
            {
              facing: 'upright',
              illuminanceLx: 300,
              luxMin: 200,
              lightFrom: [],
              lightnessInRoom: 50,
              placeWhite: shifted({ l: 100, a: 0, b: 0 }, i),
              lightWhite: { l: 100, a: 0, b: 0 },
              components: finish.components.map((c) => shifted(c.labD65, i)),
              average: shifted(finish.components[0]!.labD65, i),
              variants: finish.components.map((c) =>
                [0, 1, -1].map((step) => {
                  const lab = shifted(c.labD65, i);
                  return { l: lab.l, a: lab.a + step * curves, b: lab.b - step * curves };
                }),
              ),
              tintFrom: null,
              viewShares: [...shares[i]!],
            },
          ],
        };
      }),
    };
  });

describe('judgment, whatever the scheme', () => {
  it('judges a pair alike from either side', () => {
    fc.assert(
      fc.property(finishes, fc.option(fc.double({ min: 60, max: 100, noNaN: true })), (list, anchorY) => {
        const [one, other] = list.map((f) => sampleColor('wall', f, 0)).map((color) => ({ color, lab: color.lab }));
        const there = judgePair(one!, other!, { anchorY });
        const back = judgePair(other!, one!, { anchorY });
        expect(back.verdict).toBe(there.verdict);
        expect(back.severity).toBe(there.severity);
        expect(back.numbers).toEqual(there.numbers);
        const swapped = there.faulty === null ? null : there.faulty === 'a' ? 'b' : 'a';
        expect(back.faulty).toBe(swapped);
      }),
      { numRuns: 300 },
    );
  });

  it('does not depend on the order of the surfaces', () => {
    fc.assert(
      fc.property(input, fc.nat(), (given, turn) => {
        const k = turn % given.surfaces.length;
        const turned = { ...given, surfaces: [...given.surfaces.slice(k), ...given.surfaces.slice(0, k)].reverse() };
        expect(judge(turned)).toEqual(judge(given));
        expect(holdsIn(turned, judge(turned), { draws: 5, seed: 2 })).toEqual(
          holdsIn(given, judge(given), { draws: 5, seed: 2 }),
        );
      }),
      { numRuns: 40 },
    );
  });

  it('gives shares that sum to 1, within their range over the views', () => {
    fc.assert(
      fc.property(input, (given) => {
        const { balance } = judge(given);
        const sum = balance.warm_share + balance.leaning_share + balance.cool_share + balance.neutral_share;
        expect(sum).toBeCloseTo(1, 9);
        expect(balance.installed.shares.reduce((x, y) => x + y, 0)).toBeCloseTo(1, 9);
        expect(balance.range.warm[0]).toBeLessThanOrEqual(balance.warm_share + 1e-9);
        expect(balance.range.warm[1]).toBeGreaterThanOrEqual(balance.warm_share - 1e-9);
      }),
      { numRuns: 100 },
    );
  });

  it('raises nothing twice, and nothing on surfaces that are not there', () => {
    fc.assert(
      fc.property(input, (given) => {
        const there = new Set(given.surfaces.map((s) => s.surface));
        for (const { warnings } of [judge(given), holdsIn(given, judge(given), { draws: 10 })]) {
          const keys = warnings.map((w) => `${w.code}|${w.basis}|${w.surfaces.join()}`);
          expect(new Set(keys).size).toBe(keys.length);
          const texts = warnings.map((w) => w.text);
          expect(new Set(texts).size).toBe(texts.length);
          for (const w of warnings) {
            expect(w.surfaces.every((s) => there.has(s))).toBe(true);
            expect(w.text).toMatch(/^[A-Z].*\.$/);
            expect(`${w.text}${w.why}`).not.toMatch(/!|undefined|NaN|Infinity/);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('orders warnings gravest first, and a share of draws is a share', () => {
    const rank = { grave: 0, visible: 1, note: 2 };
    fc.assert(
      fc.property(input, (given) => {
        const done = holdsIn(given, judge(given), { draws: 10 });
        const ranks = done.warnings.map((w) => rank[w.severity]);
        expect(ranks).toEqual([...ranks].sort());
        for (const w of done.warnings) {
          // Nothing that rests on colors is left without a share; low light and one light's mix do not.
          if (w.code !== 'low-light') expect(w.holds_in, w.text).not.toBeNull();
          expect(w.holds_in ?? 0).toBeGreaterThanOrEqual(0);
          expect(w.holds_in ?? 0).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('calls a kitchen of one gray muted and has nothing to compare', () => {
    fc.assert(
      fc.property(fc.double({ min: 15, max: 98, noNaN: true }), input, (l, given) => {
        const gray = laid('gray', 'paint', [{ role: 'base', l, a: 0, b: 0 }], 'declared');
        const assessed = judge({
          ...given,
          surfaces: given.surfaces.map((s) => ({ ...s, finish: gray, installed: [] })),
        });
        expect(assessed.balance.verdict).toBe('muted');
        expect(assessed.balance.neutral_share).toBeCloseTo(1, 9);
        expect(assessed.pairs).toEqual([]);
        // A room without readings is dark, which is said.
        expect(assessed.warnings.map(({ code }) => code)).toEqual(['low-light']);
      }),
      { numRuns: 50 },
    );
  });
});
