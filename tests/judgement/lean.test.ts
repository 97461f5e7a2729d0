import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LeanSide, leanBeside } from '../../src/engine/judge/lean';
import { inducedSentence, leanSentence } from '../../src/engine/judge/lean-sentence';
import { withoutTint, withTint } from '../../src/engine/judge/place-tint';

const side = (l: number, a: number, b: number, uncertaintyDe00 = 0.25): LeanSide => ({
  lab: { l, a, b },
  uncertaintyDe00,
  mayBeWhite: true,
  whiteChromaMax: 2,
});
const neutral = side(95, 0, 0);
const words = { own: 'the counter', plural: false, beside: 'neutral white', compare: 'Compare.' };

describe('a color beside a neutral white', () => {
  // ISCC-NBS hue words at the centers of the tinted whites (Kelly 1958; blue at 5PB): beside a white without a tint the lean is the undertone.
  it.each([
    ['yellow', 92.13, -1.27, 10.64],
    ['pink', 92.13, 2.89, 2.36],
    ['green', 92.13, -5.41, 1.69],
    ['purple', 91.15, 2.29, -1.18],
    ['blue', 92.13, -0.2, -2.4],
  ])('leans %s', (hue, l, a, b) => {
    const lean = leanBeside(side(l, a, b), neutral);
    expect(lean).toMatchObject({ kind: 'leans', hue });
    expect(leanSentence(lean, words)).toMatch(new RegExp(`^The counter leans( strongly| a little)? toward ${hue} `));
  });

  it('leans no way where people see none, whatever the lightness', () => {
    expect(leanBeside(side(60, 0.2, 0.2), neutral).kind).toBe('level');
    expect(leanBeside(side(95.3, 0, 0.3), neutral).kind).toBe('same');
  });

  it('is too close to call within the combined error, and told once it is measured', () => {
    const byEye = leanBeside(side(92, 0, 5, 5), neutral);
    expect(byEye.kind).toBe('too-close');
    expect(leanSentence(byEye, words)).toBe(
      'Too close to call how the counter leans beside neutral white: what is known of the colors does not reach that far. Compare.',
    );
    expect(leanBeside(side(92, 0, 5), neutral)).toMatchObject({ kind: 'leans', hue: 'yellow', firmness: 'firm' });
  });

  it('tells whiteness for whites alone', () => {
    // WID = 0.511 L* - 2.324 a* - 1.1 b* (Perez et al. 2016).
    expect(leanBeside(side(93, 0, 3), neutral).dWid).toBeCloseTo(0.511 * -2 - 1.1 * 3, 9);
    expect(leanBeside(side(70, 0, 3), neutral).dWid).toBeNull();
    expect(leanBeside({ ...side(93, 0, 3), mayBeWhite: false }, neutral).dWid).toBeNull();
  });
});

describe('a color beside a neighbor', () => {
  it('leans away from what it has less of: a neutral beside a yellowish white leans blue', () => {
    expect(leanBeside(side(88.5, -0.8, -0.3), side(88, 0.6, 12))).toMatchObject({ kind: 'leans', hue: 'blue' });
  });

  it('is pushed away from the tint of the neighbor, by a stated range', () => {
    // Worked with 0.2 elsewhere: b* -0.3 becomes -2.7 beside b* 12; with the whole range of 0.3 it is -3.9.
    const lean = leanBeside(side(88.5, -0.8, -0.3), side(88, 0.6, 12));
    expect(lean.induced!.lab.b).toBeCloseTo(-3.9, 9);
    expect(lean.induced!.name).toBe('bluish white');
    expect(inducedSentence(lean, 'the tile')).toContain('no value is published for kitchens');
    expect(leanBeside(side(88.5, -0.8, -0.3), neutral).induced).toBeNull();
  });

  const color = fc.record({
    l: fc.double({ min: 20, max: 97, noNaN: true }),
    a: fc.double({ min: -12, max: 12, noNaN: true }),
    b: fc.double({ min: -12, max: 20, noNaN: true }),
  });

  it('leans as far as the other does, the opposite way', () => {
    fc.assert(
      fc.property(color, color, (one, two) => {
        const there = leanBeside(side(one.l, one.a, one.b), side(two.l, two.a, two.b));
        const back = leanBeside(side(two.l, two.a, two.b), side(one.l, one.a, one.b));
        expect(back.chromaPart).toBeCloseTo(there.chromaPart, 9);
        expect(back.dL).toBeCloseTo(-there.dL, 9);
        expect(back.dW).toBeCloseTo(-there.dW, 9);
      }),
      { numRuns: 50 },
    );
  });

  it('never holds more firmly the less is known', () => {
    fc.assert(
      fc.property(color, color, (one, two) => {
        const holds = [0.2, 0.5, 1, 2, 4].map(
          (rms) => leanBeside(side(one.l, one.a, one.b, rms), side(two.l, two.a, two.b, rms)).holdsIn ?? 0,
        );
        for (let i = 1; i < holds.length; i++) expect(holds[i]!).toBeLessThanOrEqual(holds[i - 1]! + 0.03);
      }),
      { numRuns: 40 },
    );
  });
});

it('puts a color into a tinted place and takes it out again', () => {
  fc.assert(
    fc.property(fc.double({ min: -6, max: 6, noNaN: true }), fc.double({ min: -6, max: 15, noNaN: true }), (a, b) => {
      const lab = { l: 80, a: 3, b: 8 };
      const back = withoutTint(withTint(lab, { a, b }), { a, b });
      expect(back.a).toBeCloseTo(lab.a, 9);
      expect(back.b).toBeCloseTo(lab.b, 9);
    }),
  );
});
