import { describe, expect, it } from 'vitest';
import { anchoredLightness } from '../../src/engine/color/anchored-lightness';
import { cieWhiteness } from '../../src/engine/color/cie-whiteness';
import { notWhiteE313, yellownessHolds } from '../../src/engine/color/e313-range';
import { xyzD65FromLabD65, yFromLightness } from '../../src/engine/color/lab';
import { stensby } from '../../src/engine/color/stensby';
import { C_2, C_10, D50_2, D50_10, D65_2, D65_10 } from '../../src/engine/color/whites';
import { whitesRecord } from '../../src/engine/color/whites-record';
import { wid } from '../../src/engine/color/wid';
import { yellownessE313 } from '../../src/engine/color/yellowness';
import { munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { GRID_COUNT } from '../../src/engine/spectrum/grid';
import { reflectanceFromXyz } from '../../src/engine/spectrum/reflectance-from-color';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';

const fromXy = (x: number, y: number, luminance: number) => ({
  x: (x / y) * luminance,
  y: luminance,
  z: ((1 - x - y) / y) * luminance,
});

describe('CIE whiteness and tint', () => {
  it('have their worked values (CIE 15:2004 equations, values of colour-science 0.4.6)', () => {
    const found = cieWhiteness(fromXy(0.3167, 0.3334, 100), 'D65-2', fromXy(0.3139, 0.3311, 100))!;
    expect(found.w).toBeCloseTo(93.85, 2);
    expect(found.tint).toBeCloseTo(-1.305, 3);
    expect(found).toMatchObject({ holds: true, why: [] });
  });

  it('weigh the tint otherwise for 10 degrees (900 instead of 1000, CIE 15), worked by hand', () => {
    const found = cieWhiteness(fromXy(0.3167, 0.3334, 100), 'D65-10', fromXy(0.3139, 0.3311, 100))!;
    expect(found.w).toBeCloseTo(93.85, 2);
    expect(found.tint).toBeCloseTo(900 * -0.0028 + 650 * 0.0023, 6);
  });

  it('give the perfect diffuser 100 and 0 under every light they are defined for', () => {
    for (const found of [
      cieWhiteness(D65_2, 'D65-2'),
      cieWhiteness(D65_10, 'D65-10'),
      cieWhiteness(C_2, 'C-2'),
      cieWhiteness(C_10, 'C-10'),
      cieWhiteness(D50_2, 'D50-2'),
      cieWhiteness(D50_10, 'D50-10'),
    ]) {
      // Whites come out of 5 nm sums, where the Y of the perfect diffuser is 100 up to rounding.
      expect(found!.w).toBeCloseTo(100, 10);
      expect(found!.tint).toBeCloseTo(0, 10);
      expect(found!.holds).toBe(true);
    }
  });

  it.each([
    // Whites printed in ASTM E313 for its tables.
    ['C-2', C_2, 0.3101, 0.3161],
    ['D50-2', D50_2, 0.3457, 0.3585],
    ['D65-2', D65_2, 0.3127, 0.329],
    ['C-10', C_10, 0.3104, 0.3191],
    ['D50-10', D50_10, 0.3477, 0.3595],
    ['D65-10', D65_10, 0.3138, 0.331],
  ] as const)('rest on the printed white of %s', (_basis, white, x, y) => {
    const sum = white.x + white.y + white.z;
    // Four printed decimals; illuminant C of the 2 degree observer is printed as 0.3161 here and as 0.3162 by CIE 15.
    expect(Math.abs(white.x / sum - x)).toBeLessThan(1e-4);
    expect(Math.abs(white.y / sum - y)).toBeLessThan(1e-4);
  });

  it.each([
    // Limits of CIE 15: 40 < W < 5 Y - 280, -4 < T < 2.
    ['a cool counter', { l: 88.5, a: -0.8, b: -0.3 }, []],
    ['a yellowish white', { l: 88, a: 0.6, b: 12 }, ['w-below-40', 'too-red']],
    ['a gray', { l: 60, a: 0, b: 0 }, ['w-below-40', 'w-above-5y-280']],
    ['a light gray', { l: 80, a: 0, b: 0 }, ['w-above-5y-280']],
    ['a green white', { l: 96, a: -4, b: 1 }, ['too-green']],
    ['a pink white', { l: 96, a: 4, b: 1 }, ['too-red']],
  ])('say where they say something: %s', (_name, lab, why) => {
    const found = cieWhiteness(xyzD65FromLabD65(lab), 'D65-2')!;
    expect(found.why).toEqual(why);
    expect(found.holds).toBe(why.length === 0);
  });

  it('have nothing to say of black', () => {
    expect(cieWhiteness({ x: 0, y: 0, z: 0 }, 'D65-2')).toBeNull();
  });
});

describe('ASTM E313 yellowness', () => {
  it('has its worked values for X 95, Y 100, Z 105 (C/2 and D65/10: colour-science 0.4.6)', () => {
    const sample = { x: 95, y: 100, z: 105 };
    expect(yellownessE313<'C-2'>(sample, 'C-2')).toBeCloseTo(10.0895, 4);
    expect(yellownessE313<'D65-10'>(sample, 'D65-10')).toBeCloseTo(2.8945, 4);
    expect(yellownessE313<'D65-2'>(sample, 'D65-2')).toBeCloseTo(4.34, 4);
    // By hand: 1.2871 x 95 - 1.0781 x 105.
    expect(yellownessE313<'C-10'>(sample, 'C-10')).toBeCloseTo(9.074, 4);
  });

  it('is 0 for the perfect diffuser under every light it is defined for', () => {
    // Coefficients with four decimals: 5e-5 of about 125 each.
    expect(Math.abs(yellownessE313(C_2, 'C-2')!)).toBeLessThan(0.03);
    expect(Math.abs(yellownessE313(C_10, 'C-10')!)).toBeLessThan(0.03);
    expect(Math.abs(yellownessE313(D65_2, 'D65-2')!)).toBeLessThan(0.03);
    expect(Math.abs(yellownessE313(D65_10, 'D65-10')!)).toBeLessThan(0.03);
    expect(yellownessE313({ x: 0, y: 0, z: 0 }, 'C-2')).toBeNull();
  });

  it.each([
    // ASTM E313-20, 5.2: hues of about 2.5Y to 2.5GY.
    ['5Y', 25, true],
    ['2GY', 32, true],
    ['10YR', 20, false],
    ['5GY', 35, false],
    ['5PB', 75, false],
  ])('holds for %s: %s %s', (_name, hue100, holds) => {
    expect(yellownessHolds({ hue100, value: 9, chroma: 1 })).toBe(holds);
    expect(yellownessHolds({ hue100, value: 9, chroma: 0.02 })).toBe(true);
  });
});

it.each([
  // ASTM E313-20, 5.2: value above 8.3; chroma up to 0.5 for B, 0.8 for Y, 0.3 for all other hues.
  [{ hue100: 25, value: 9, chroma: 0.8 }, []],
  [{ hue100: 25, value: 9, chroma: 0.81 }, ['too-colorful']],
  [{ hue100: 65, value: 9, chroma: 0.5 }, []],
  [{ hue100: 65, value: 9, chroma: 0.51 }, ['too-colorful']],
  [{ hue100: 75, value: 9, chroma: 0.31 }, ['too-colorful']],
  [{ hue100: 5, value: 9, chroma: 0.3 }, []],
  [{ hue100: 25, value: 8.3, chroma: 0.2 }, ['too-dark']],
  [{ hue100: 5, value: 5, chroma: 6 }, ['too-dark', 'too-colorful']],
])('knows a white by the limits of ASTM E313: %o', (munsell, why) => {
  expect(notWhiteE313(munsell)).toEqual(why);
});

it('has the worked value of Stensby whiteness (colour-science 0.4.6)', () => {
  expect(stensby({ l: 100, a: -2.46875131, b: -16.72486654 })).toBeCloseTo(142.768, 3);
});

it('reads the dental whiteness index as its printed formula does', () => {
  // Perez et al. 2016: 0.511 L* - 2.324 a* - 1.100 b*, here worked by hand for L* 93, a* -0.3, b* 1.8.
  expect(wid({ l: 93, a: -0.3, b: 1.8 })).toBeCloseTo(47.523 + 0.6972 - 1.98, 10);
});

describe('anchored lightness', () => {
  it('is 100 for the anchor and L* where the anchor is the perfect white', () => {
    expect(anchoredLightness(73.1, 73.1)).toBeCloseTo(100, 12);
    expect(anchoredLightness(yFromLightness(88.5), 100)).toBeCloseTo(88.5, 12);
    expect(anchoredLightness(0, 80)).toBe(0);
  });

  it.each([
    // Whites beside counters, computed independently of this code (Python) from Y = 73.1, 60.3, 90.0 and 83.0.
    [73.1, 90, 92.2],
    [73.1, 83, 95.2],
    [60.3, 90, 85.5],
    [60.3, 83, 88.3],
  ])('of Y %f beside Y %f is %f', (y, anchor, expected) => {
    // Printed with one decimal from Y with one decimal.
    expect(Math.abs(anchoredLightness(y, anchor) - expected)).toBeLessThan(0.1);
  });
});

describe('the record of whites', () => {
  const of = (lab: { l: number; a: number; b: number }, yAnchor?: number) => {
    const made = reflectanceFromXyz(xyzD65FromLabD65(lab), 'lhtss');
    if (!made.ok) throw new Error(made.problem.text);
    return whitesRecord({
      labD65: lab,
      spectrum: made.value,
      munsell: munsellFromLabD65(lab),
      ...(yAnchor === undefined ? {} : { yAnchor }),
    });
  };

  it('has every figure of a white tile, and they agree on what it is', () => {
    const lab = { l: 93, a: -0.3, b: 1.8 };
    const record = of(lab, 90);
    const direct = cieWhiteness(xyzD65FromLabD65(lab), 'D65-2')!;
    // The spectrum reproduces the colour to rounding.
    expect(record.cie['D65-2']!.w).toBeCloseTo(direct.w, 3);
    expect(Object.values(record.cie).every((cie) => cie?.holds)).toBe(true);
    expect(record.white_e313).toEqual({ holds: true, why: [] });
    expect(record.yellowness_holds).toBe(true);
    expect(record.yellowness_e313['C-2']).toBeGreaterThan(0);
    expect(record.anchored_lightness).toBeCloseTo(anchoredLightness(yFromLightness(93), 90), 12);
    // Under other lights and for the other observer a smooth near-white stays about as white: a few units of W.
    const all = Object.values(record.cie).map((cie) => cie!.w);
    expect(Math.max(...all) - Math.min(...all)).toBeLessThan(5);
  });

  it('says of a wood that nothing of it holds', () => {
    const record = of({ l: 74, a: 6, b: 26 });
    expect(Object.values(record.cie).some((cie) => cie?.holds)).toBe(false);
    expect(record.yellowness_holds).toBe(false);
    expect(record.white_e313.why).toEqual(['too-dark', 'too-colorful']);
    expect(record.anchored_lightness).toBeNull();
  });

  it('has no chromaticity of black', () => {
    const record = whitesRecord({
      labD65: { l: 0, a: 0, b: 0 },
      spectrum: new Float64Array(GRID_COUNT) as ReflectanceSpd,
      munsell: { hue100: 0, value: 0, chroma: 0 },
    });
    expect(record.cie['D65-2']).toBeNull();
    expect(record.yellowness_e313['C-2']).toBeNull();
  });
});
