import * as culori from 'culori/fn';
import { converter } from 'culori/fn';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  decodeSrgb,
  encodeSrgb,
  hexFromLab,
  isInSrgb,
  labD65FromHex,
  linearSrgbFromXyzD65,
  srgb8FromLinear,
  xyzD65FromLinearSrgb,
} from '../../src/engine/color/display';
import { D65_2 } from '../../src/engine/color/whites';

const hexOf = (bytes: readonly number[]) => `#${bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;

it.each([
  // Calculator at davengrace.com, as quoted by the colorspacious test suite; checks IEC 61966-2-1.
  [0.1, 0.010022825574869],
  [0.2, 0.0331047665708851],
  [0.3, 0.0732389558784054],
  [0.9, 0.787412289395617],
  [0.04, 0.00309597523219814],
  [0.02, 0.00154798761609907],
])('decodes %f', (code, linear) => {
  expect(decodeSrgb(code)).toBeCloseTo(linear, 12);
  expect(encodeSrgb(linear)).toBeCloseTo(code, 12);
});

it('has the matrix of IEC 61966-2-1 to its four printed decimals, white included', () => {
  const printed = [
    [0.4124, 0.2126, 0.0193],
    [0.3576, 0.7152, 0.1192],
    [0.1805, 0.0722, 0.9505],
  ];
  [
    { r: 1, g: 0, b: 0 },
    { r: 0, g: 1, b: 0 },
    { r: 0, g: 0, b: 1 },
  ].forEach((primary, i) => {
    const { x, y, z } = xyzD65FromLinearSrgb(primary);
    [x, y, z].forEach((value, k) => {
      expect(Math.abs(value / 100 - printed[i]![k]!)).toBeLessThan(2.5e-4);
    });
  });
  const white = linearSrgbFromXyzD65(D65_2);
  expect([white.r, white.g, white.b].every((value) => Math.abs(value - 1) < 1e-12)).toBe(true);
});

it('reads a screen colour as published: sRGB 0.2 0.4 0.6 is L* 42.010 a* -0.147 b* -32.845 (davengrace.com)', () => {
  const result = labD65FromHex('#336699');
  expect(result.ok && Math.abs(result.value.l - 42.01)).toBeLessThan(0.02);
  expect(result.ok && Math.abs(result.value.a + 0.147)).toBeLessThan(0.03);
  expect(result.ok && Math.abs(result.value.b + 32.845)).toBeLessThan(0.03);
});

it('agrees with culori on screen colours within 0.05 in L*, a*, b* (its white is the rounded 0.3127, 0.3290)', () => {
  culori.useMode(culori.modeRgb);
  culori.useMode(culori.modeLab65);
  culori.useMode(culori.modeXyz65);
  const toLab65 = converter('lab65');
  fc.assert(
    fc.property(fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255)), (bytes) => {
      const hex = hexOf(bytes);
      const ours = labD65FromHex(hex);
      const theirs = toLab65(hex)!;
      expect(ours.ok && Math.abs(ours.value.l - theirs.l)).toBeLessThan(0.05);
      expect(ours.ok && Math.abs(ours.value.a - (theirs.a ?? 0))).toBeLessThan(0.05);
      expect(ours.ok && Math.abs(ours.value.b - (theirs.b ?? 0))).toBeLessThan(0.05);
    }),
  );
});

it('shows every screen colour again as it was', () => {
  fc.assert(
    fc.property(fc.tuple(fc.nat(255), fc.nat(255), fc.nat(255)), (bytes) => {
      const result = labD65FromHex(hexOf(bytes));
      expect(result.ok && hexFromLab(result.value)).toBe(hexOf(bytes));
      expect(result.ok && isInSrgb(result.value)).toBe(true);
    }),
  );
});

it('brings in what the screen cannot show at constant chromaticity', () => {
  expect(srgb8FromLinear({ r: 2, g: 1, b: 0.5 })).toEqual(srgb8FromLinear({ r: 1, g: 0.5, b: 0.25 }));
  expect(srgb8FromLinear({ r: -0.5, g: 1, b: 1 })).toEqual([0, 255, 255]);
  expect(isInSrgb({ l: 50, a: -80, b: 0 })).toBe(false);
});

it('reads short and plain hex and refuses the rest', () => {
  expect(labD65FromHex('fff')).toEqual({
    ok: true,
    value: { l: 100, a: expect.closeTo(0, 9), b: expect.closeTo(0, 9) },
  });
  expect(labD65FromHex(' #D8D2C4 ').ok).toBe(true);
  for (const bad of ['', '#12', '#12345', '#gggggg', 'white', '#1234567']) {
    const result = labD65FromHex(bad);
    expect(!result.ok && result.problem.code).toBe('hex-not-understood');
  }
});
