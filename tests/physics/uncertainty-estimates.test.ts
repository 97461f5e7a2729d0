import { describe, expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { lrvFromReflectance } from '../../src/engine/color/lrv';
import type { Lab } from '../../src/engine/color/types';
import { wid } from '../../src/engine/color/wid';
import { munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { neutralLimit } from '../../src/engine/naming/undertone';
import { warmth } from '../../src/engine/naming/warmth';
import { reflectanceFromXyz } from '../../src/engine/spectrum/reflectance-from-color';
import { estimatesBetween, estimatesOf } from '../../src/engine/uncertainty/estimates';
import { labCovariance } from '../../src/engine/uncertainty/lab-error';
import { propagate } from '../../src/engine/uncertainty/propagate';
import { COLORS, erring, plainNormals, rms } from './uncertainty-brute-force';

function curveOf(lab: Lab<'D65-2'>) {
  const curve = reflectanceFromXyz(xyzD65FromLabD65(lab), 'lhtss');
  if (!curve.ok) throw new Error(curve.problem.text);
  return curve.value;
}

const spectral = (labD65: Lab<'D65-2'>, uncertaintyDe00: number) => ({
  labD65,
  spectrum: curveOf(labD65),
  uncertaintyDe00,
});

function draws(lab: Lab<'D65-2'>, u: number, count: number, seed = 29): Lab<'D65-2'>[] {
  const normal = plainNormals(seed);
  return Array.from({ length: count }, () => erring(lab, u, [normal(), normal(), normal()]));
}

const apart = (ratio: number): number => Math.abs(ratio - 1);

/** Sampling error of a deviation from n plain draws is 1 / sqrt(2 n): 1.1 % for 4000. */
const DRAWS = 4000;

describe.each(Object.entries(COLORS))('numbers of a %s known to 1 CIEDE2000', (_, lab) => {
  const said = estimatesOf(spectral(lab, 1));
  const drawn = draws(lab, 1, DRAWS);
  const off = (numberOf: (lab: Lab<'D65-2'>) => number) => rms(drawn.map((d) => numberOf(d) - numberOf(lab)));

  it('WID, warmth and Munsell value', () => {
    // Three deviations of the sampling error; the first two are linear and exact in what is said.
    expect(apart(said.wid.sigma / off(wid))).toBeLessThan(0.034);
    expect(apart(said.w50.sigma / off((d) => warmth(d).w50))).toBeLessThan(0.034);
    expect(apart(said.munsellValue.sigma / off((d) => munsellFromLabD65(d).value))).toBeLessThan(0.034);
  });

  it('Munsell chroma and hue, and undertone strength', () => {
    const at = munsellFromLabD65(lab);
    const chroma = off((d) => munsellFromLabD65(d).chroma);
    const strength = off((d) => munsellFromLabD65(d).chroma / neutralLimit(munsellFromLabD65(d)));
    const hue = rms(drawn.map((d) => ((munsellFromLabD65(d).hue100 - at.hue100 + 150) % 100) - 50));
    expect([said.munsellChroma.value, said.munsellHue100.value]).toEqual([at.chroma, at.hue100]);
    // Bent near neutral, so that the 200 sets of what is said have a sampling error of their own: 2 %, one deviation.
    expect(apart(said.munsellChroma.sigma / chroma)).toBeLessThan(0.06);
    expect(apart(said.munsellHue100.sigma / hue)).toBeLessThan(0.06);
    // U jumps by 0.7 / 0.5 at two hues: a wood near one of them owes much of its sigma to the few sets beyond it.
    expect(apart(said.strength.sigma / strength)).toBeLessThan(0.12);
  });

  it('light reflectance value, with every curve solved anew', () => {
    const some = drawn.slice(0, 800);
    const lrv = rms(some.map((d) => lrvFromReflectance(curveOf(d)) - lrvFromReflectance(curveOf(lab))));
    // 800 draws leave 2.5 %, one deviation.
    expect(apart(said.lrv.sigma / lrv)).toBeLessThan(0.08);
  });
});

it('says that the hue of a gray known by eye cannot be known: nearly that of any hue at all', () => {
  const { munsellHue100 } = estimatesOf(spectral(COLORS['mid gray'], 5));
  // Uniform on the circle of 100 is 100 / sqrt(12) = 28.9 from wherever it is said to be.
  expect(munsellHue100.sigma).toBeGreaterThan(22);
  expect(munsellHue100.sigma).toBeLessThan(32);
});

describe('differences of two colors, against plain draws', () => {
  const white = { lab: COLORS['near-neutral white'], u: 1 };
  const cream = { lab: { l: 90.5, a: -0.2, b: 6 }, u: 0.7 };
  it.each([
    ['two readings', 'one', 'other'],
    ['one reading', 'one', 'one'],
  ])('of %s', (_, first, second) => {
    const said = estimatesBetween({ ...white, source: first }, { ...cream, source: second });
    const normal = plainNormals(31);
    const nominal = differenceCiede2000(white.lab, cream.lab);
    const pairs = Array.from({ length: DRAWS }, () => {
      const one = [normal(), normal(), normal()];
      const other = first === second ? one : [normal(), normal(), normal()];
      return [erring(white.lab, white.u, one), erring(cream.lab, cream.u, other)] as const;
    });
    const de00 = rms(pairs.map(([a, b]) => differenceCiede2000(a, b) - nominal));
    const dWid = rms(pairs.map(([a, b]) => wid(a) - wid(b) - (wid(white.lab) - wid(cream.lab))));
    const dWarm = rms(
      pairs.map(([a, b]) => warmth(a).w50 - warmth(b).w50 - warmth(white.lab).w50 + warmth(cream.lab).w50),
    );
    expect(said.de00.value).toBe(nominal);
    // Sampling 1.1 %, one deviation; the difference bends and adds 1 % of what is said.
    expect(apart(said.de00.sigma / de00)).toBeLessThan(0.045);
    expect(apart(said.wid.sigma / dWid)).toBeLessThan(0.034);
    expect(apart(said.w50.sigma / dWarm)).toBeLessThan(0.034);
  });

  it('two colors said to be the same are as far apart as their uncertainties together', () => {
    // Not 0: the expected square of the difference is the sum of the squares.
    const same = { lab: COLORS.wood, u: 1 };
    const { de00 } = estimatesBetween({ ...same, source: 'a' }, { ...same, source: 'b' });
    expect(de00.sigma).toBeCloseTo(Math.SQRT2, 1.5);
    expect(estimatesBetween({ ...same, source: 'a' }, { ...same, source: 'a' }).de00.sigma).toBeCloseTo(0, 12);
  });
});

describe('propagation', () => {
  const inputs = [
    { lab: COLORS['mid gray'], u: 1, source: 'tile' },
    { lab: COLORS.wood, u: 2.5, source: 'floor' },
    { lab: COLORS['near-neutral white'], u: 0.25, source: 'tile' },
  ];

  it('is exact for what is linear, from as few as 12 sets', () => {
    const [difference] = propagate([inputs[0]!, inputs[1]!], ([a, b]) => [wid(a!) - wid(b!)], { count: 12 });
    // Coefficients of WID: the variance is the quadratic form of the covariance.
    const variance = inputs.slice(0, 2).reduce((sum, { lab, u }) => {
      const [ll, , , , aa, ab, , , bb] = labCovariance(lab, u);
      return sum + 0.511 ** 2 * ll + 2.324 ** 2 * aa + 1.1 ** 2 * bb + 2 * 2.324 * 1.1 * ab;
    }, 0);
    expect(difference!.sigma).toBeCloseTo(Math.sqrt(variance), 10);
    expect(difference!.mean).toBeCloseTo(difference!.nominal, 10);
  });

  it('is the same for the same seed, whatever else is computed', () => {
    const sum = (labs: readonly Lab<'D65-2'>[]) => [labs.reduce((total, { l, a, b }) => total + l * a * b, 0)];
    const numbers = (seed: number) => {
      const [spread] = propagate(inputs, sum, { seed });
      return [spread!.nominal, spread!.mean, spread!.sigma, spread!.rms, spread!.quantile(0.1)];
    };
    expect(numbers(3)).toEqual(numbers(3));
    expect(numbers(4)).not.toEqual(numbers(3));
  });

  it('has the quantiles of a normal number where the number is one', () => {
    const [spread] = propagate(inputs, ([, floor]) => [floor!.l], { count: 1000 });
    // 5 and 95 percent lie 1.645 deviations out; 500 strata keep them to a few hundredths.
    expect((spread!.quantile(0.95) - spread!.nominal) / spread!.sigma).toBeCloseTo(1.645, 1);
    expect((spread!.quantile(0.05) - spread!.nominal) / spread!.sigma).toBeCloseTo(-1.645, 1);
    expect(spread!.quantile(0.5)).toBeCloseTo(spread!.nominal, 1);
  });

  it('leaves colors without error alone', () => {
    const [spread] = propagate([{ ...inputs[0]!, u: 0 }], ([lab]) => [lab!.b]);
    expect(spread!.quantile(1)).toBe(COLORS['mid gray'].b);
    expect(spread!.rms).toBeLessThan(1e-12);
  });
});
