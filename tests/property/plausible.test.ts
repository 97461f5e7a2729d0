import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shiftUnder } from '../../src/engine/change/shift-under';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLinearSrgb } from '../../src/engine/color/display';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import type { Lab } from '../../src/engine/color/types';
import { plausibleReflectance } from '../../src/engine/finish/plausible-reflectance';
import type { FinishClass } from '../../src/engine/finish/types';
import { plausibleCurves } from '../../src/engine/plausible/curves';
import { CLASS_SPREAD } from '../../src/engine/plausible/spread.data';
import { lightById } from '../../src/engine/spectrum/lights';

const CLASSES = Object.keys(CLASS_SPREAD) as FinishClass[];

function colorOnly(labD65: Lab<'D65-2'>, finishClass: FinishClass) {
  const curve = plausibleReflectance(xyzD65FromLabD65(labD65), finishClass);
  if (!curve.ok) throw new Error(curve.problem.text);
  return { labD65, spectrum: curve.value.rho, spectrumSource: curve.value.source };
}

const channel = fc.double({ min: 0.0005, max: 0.999, noNaN: true });
const screenColor = fc.record({ r: channel, g: channel, b: channel }).map((rgb) => {
  return labD65FromXyzD65(xyzD65FromLinearSrgb(rgb));
});
const finishClass = fc.constantFrom(...CLASSES);
/** Where kitchens are: chroma up to 20. */
const quietColor = fc
  .record({ l: fc.double({ min: 25, max: 94, noNaN: true }), h: fc.integer({ min: 0, max: 359 }), c: fc.nat(20) })
  .map(({ l, h, c }): Lab<'D65-2'> => {
    // A light color has less room.
    const chroma = c * Math.min(1, (100 - l) / 15);
    return { l, a: chroma * Math.cos((h * Math.PI) / 180), b: chroma * Math.sin((h * Math.PI) / 180) };
  });

it('gives seventeen curves of exactly the color, inside 0-1, the one computed with first', () => {
  fc.assert(
    fc.property(screenColor, finishClass, (lab, material) => {
      const component = colorOnly(lab, material);
      const curves = plausibleCurves(component, material);
      expect(curves).toHaveLength(17);
      expect(curves[0]).toBe(component.spectrum);
      for (const rho of curves) {
        expect(rho.every((value) => value > 0 && value < 1)).toBe(true);
        // 1e-4 is a hundredth of the last digit of a printed Lab.
        expect(differenceCiede2000(labD65FromReflectance(rho), lab)).toBeLessThan(1e-4);
      }
    }),
    { numRuns: 60 },
  );
});

it('has sixteen different members for every class, at the ends of lightness, too', () => {
  for (const material of CLASSES) {
    for (const l of [1, 20, 50, 80, 97]) {
      const curves = plausibleCurves(colorOnly({ l, a: 0, b: 0 }, material), material);
      expect(new Set(curves.map((rho) => rho.join())).size, `${material} ${l}`).toBe(17);
    }
  }
});

it('leaves a neutral flat in the curve computed with', () => {
  for (const l of [20, 50, 80, 95]) {
    const [nominal] = plausibleCurves(colorOnly({ l, a: 0, b: 0 }, 'paint'), 'paint');
    expect(Math.max(...nominal!) - Math.min(...nominal!)).toBeLessThan(1e-8);
  }
});

it('gives the same curves again, from memory for one spectrum and made anew for an equal one', () => {
  fc.assert(
    fc.property(quietColor, finishClass, (lab, material) => {
      const component = colorOnly(lab, material);
      const curves = plausibleCurves(component, material);
      expect(plausibleCurves(component, material)).toBe(curves);
      const again = plausibleCurves({ ...component, spectrum: component.spectrum.slice() as never }, material);
      expect(again.map((rho) => [...rho])).toEqual(curves.map((rho) => [...rho]));
    }),
    { numRuns: 20 },
  );
});

it('takes a measured spectrum as it is, and the class of the component before that of its finish', () => {
  const component = colorOnly({ l: 70, a: 4, b: 14 }, 'stone');
  expect(plausibleCurves({ ...component, spectrumSource: 'measured' }, 'stone')).toEqual([component.spectrum]);
  const grout = plausibleCurves({ ...component, finishClass: 'paint' }, 'stone');
  expect(grout).toBe(plausibleCurves(component, 'paint'));
  expect(grout).not.toBe(plausibleCurves(component, 'stone'));
});

it('spreads nothing under D65 and more the farther a daylight is from it, most under incandescent light', () => {
  const lights = ['D65', 'D55', 'D50', 'A'].map((id) => lightById(id)!);
  fc.assert(
    fc.property(quietColor, finishClass, (lab, material) => {
      const component = colorOnly(lab, material);
      const spreads = lights.map((light) => shiftUnder(component, material, light).spreadDe00);
      expect(spreads[0]).toBeLessThan(1e-6);
      for (let i = 1; i < spreads.length; i++) expect(spreads[i]).toBeGreaterThan(spreads[i - 1]!);
    }),
    { numRuns: 60 },
  );
});

it('knows stone and wood better than paint of the same color', () => {
  const light = lightById('FL11')!;
  fc.assert(
    fc.property(quietColor, (lab) => {
      const spread = (material: FinishClass) => shiftUnder(colorOnly(lab, material), material, light).spreadDe00;
      expect(spread('stone')).toBeLessThan(spread('paint'));
      expect(spread('wood')).toBeLessThan(spread('paint'));
    }),
    { numRuns: 30 },
  );
});
