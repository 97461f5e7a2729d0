import fc from 'fast-check';
import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import { lrvFromReflectance } from '../../src/engine/color/lrv';
import { finishComponent, UNCERTAINTY_DE00 } from '../../src/engine/finish/component';
import type { GivenColor, Specular } from '../../src/engine/finish/given-color';
import { fresnelReflectance, mirrorPart, specularDoubtDe00, withMirrorPart } from '../../src/engine/finish/specular';
import type { FinishClass } from '../../src/engine/finish/types';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';

const flat = (value: number) => reflectanceSpd(new Float64Array(81).fill(value));

it('reflects by Fresnel: ((n - 1) / (n + 1))^2 straight on, all at grazing, one polarisation at the Brewster angle', () => {
  for (const n of [1.33, 1.5, 1.567, 2.4]) {
    expect(fresnelReflectance(n, 0)).toBeCloseTo(((n - 1) / (n + 1)) ** 2, 12);
    expect(fresnelReflectance(n, 90)).toBeCloseTo(1, 12);
    // At tan(angle) = n only light polarised across the plane comes back: ((n^2 - 1) / (n^2 + 1))^2, half of the light.
    const brewster = (Math.atan(n) * 180) / Math.PI;
    expect(fresnelReflectance(n, brewster)).toBeCloseTo(((n * n - 1) / (n * n + 1)) ** 2 / 2, 12);
  }
});

it.each([
  // Fresnel reflectance of the gloss standard, n = 1.567, at the three angles of ISO 2813 (ASTM D523; from memory).
  [20, 0.0491],
  [60, 0.1001],
  [85, 0.6191],
])('gives the black glass of the gloss scale its reflectance at %d degrees', (angle, reflectance) => {
  expect(Math.abs(fresnelReflectance(1.567, angle) - reflectance)).toBeLessThan(6e-5);
});

it('takes 4.0 % of a fully glossy surface for mirror-like, nothing of a matt one, in proportion between', () => {
  expect(mirrorPart(100, 0.5)).toBeCloseTo(0.04, 4);
  // A perfectly smooth surface of index 1.5 reads 89 units: 0.0892 / 0.1001.
  expect(mirrorPart(89.3, 0)).toBeCloseTo(mirrorPart(100, 0), 12);
  expect(mirrorPart(44.6, 0)).toBeCloseTo(0.02, 3);
  expect(mirrorPart(0, 0.5)).toBe(0);
  // A perfect matt white reads 2.5 units: half of it by the cosine, 4.4 x 11.7 degrees of pi, of 0.1001 (ISO 2813).
  const solidAngle = ((4.4 * Math.PI) / 180) * ((11.7 * Math.PI) / 180);
  const mattWhiteGu = (100 * 0.5 * solidAngle) / Math.PI / fresnelReflectance(1.567, 60);
  expect(mirrorPart(mattWhiteGu, 1)).toBeLessThan(1e-4);
});

it('adds the same at every wavelength, more with more gloss, and never leaves 0-1', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      (value, gloss, more) => {
        const low = withMirrorPart(flat(value), Math.min(gloss, more));
        const high = withMirrorPart(flat(value), Math.max(gloss, more));
        for (const rho of [low, high]) {
          expect(rho[0]).toBe(rho[80]);
          expect(rho[0]! >= value && rho[0]! <= 1).toBe(true);
        }
        expect(high[0]! >= low[0]!).toBe(true);
      },
    ),
  );
});

const given = (specular: Specular | undefined, glossGu: number | undefined, finishClass: FinishClass = 'glazed') => {
  const color: GivenColor = {
    kind: 'lab',
    lab: [30, 2, -4],
    illuminant: 'D65',
    observer_deg: 10,
    ...(specular && { specular }),
  };
  const result = finishComponent({
    role: 'base',
    share: 1,
    color,
    finishClass,
    provenance: 'measured',
    ...(glossGu !== undefined && { glossGu }),
  });
  if (!result.ok) throw new Error(result.problem.text);
  return { component: result.value, codes: (result.notices ?? []).map(({ code }) => code) };
};

it('computes with the mirror-like part included: puts back what was excluded, and says so where it shows', () => {
  const included = given('included', 88);
  const excluded = given('excluded', 88);
  expect(excluded.component.specular).toBe('included');
  expect(excluded.codes).toEqual(['specular-added']);
  const rise = lrvFromReflectance(excluded.component.spectrum) - lrvFromReflectance(included.component.spectrum);
  expect(rise).toBeCloseTo(100 * mirrorPart(88, 0.062), 2);
  // The colour follows from the raised curve.
  const { spectrum, labD65 } = excluded.component;
  expect(differenceCiede2000(labD65FromReflectance(spectrum), labD65)).toBeLessThan(1e-9);
  expect(given('included', 88).codes).toEqual([]);
  // 3 gloss units: matt; the change stays below what a notice is worth.
  expect(given('excluded', 3).codes).toEqual([]);
});

it('leaves alone and says so what it cannot correct: a metal, and a gloss nobody knows', () => {
  for (const [gloss, finishClass, code] of [
    [88, 'metal', 'metal-specular'],
    [undefined, 'glazed', 'gloss-missing'],
  ] as const) {
    const { component, codes } = given('excluded', gloss, finishClass);
    expect(codes).toEqual([code]);
    expect(component.specular).toBe('excluded');
    expect(component.spectrum).toEqual(given(undefined, gloss, finishClass).component.spectrum);
  }
});

it('is less sure of a mirror-like part that it put back, or of which nobody said, than of one that was measured', () => {
  const sure = (...args: Parameters<typeof given>) => given(...args).component.uncertaintyDe00;
  const included = given('included', 88).component;
  const change = differenceCiede2000(included.labD65, given('excluded', 88).component.labD65);
  expect(change).toBeGreaterThan(4);
  // A third of the change where it is put back, half where nobody said: our judgment, in quadrature.
  expect(sure('excluded', 88)).toBeCloseTo(Math.hypot(included.uncertaintyDe00, change / 3), 9);
  expect(sure(undefined, 88)).toBeCloseTo(Math.hypot(included.uncertaintyDe00, change / 2), 9);
  expect(sure('included', undefined)).toBe(included.uncertaintyDe00);
  // Matt, 0 units: nothing is mirrored, so nothing is open.
  expect(sure('excluded', 0)).toBe(included.uncertaintyDe00);
  // Trapped and the gloss not known: as if it were satin, 28 units, and nobody had said.
  expect(sure('excluded', undefined)).toBeCloseTo(sure(undefined, 28), 9);
  expect(sure(undefined, undefined)).toBe(included.uncertaintyDe00);
});

it('leaves the sureness of metals and of what nobody measured as it is, and asks for the mirror part of a metal', () => {
  const metal = given('included', 88, 'metal');
  for (const specular of ['excluded', undefined] as const) {
    const { component, codes } = given(specular, 88, 'metal');
    expect(component.uncertaintyDe00).toBe(metal.component.uncertaintyDe00);
    expect(codes).toEqual([specular ? 'metal-specular' : 'metal-specular-unsaid']);
  }
  expect(metal.codes).toEqual([]);
  const color: GivenColor = { kind: 'lab', lab: [30, 2, -4], illuminant: 'D65', observer_deg: 2 };
  for (const provenance of ['declared', 'photo-with-card', 'photo', 'by-eye'] as const) {
    const made = finishComponent({ role: 'base', share: 1, color, finishClass: 'glazed', provenance, glossGu: 88 });
    expect(made.ok && made.value.uncertaintyDe00).toBe(UNCERTAINTY_DE00[provenance]);
  }
});

it('says how far a colour would be off if nobody told: much for dark gloss, hardly for light or matt, unknown for metals', () => {
  const doubt = (value: number, gloss: number, finishClass: FinishClass = 'paint') =>
    specularDoubtDe00({ spectrum: flat(value) }, finishClass, gloss);
  expect(doubt(0.05, 85)).toBeGreaterThan(5);
  expect(doubt(0.8, 85)).toBeLessThan(1.2);
  expect(doubt(0.05, 3)).toBeLessThan(0.5);
  expect(doubt(0.5, 85, 'metal')).toBeNull();
  expect(specularDoubtDe00({ spectrum: flat(0.05), specular: 'included' }, 'paint', 85)).toBe(0);
});
