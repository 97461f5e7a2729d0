import fc from 'fast-check';
import { DataUtils } from 'three';
import { expect, it } from 'vitest';
import { halvesFromFloats } from '../../src/view/half-floats';

function halfOf(value: number): number {
  const out = new Uint16Array(1);
  halvesFromFloats(out, Float32Array.of(value));
  return out[0]!;
}

it.each([
  // IEEE 754-2008 binary16: one, smallest normal and subnormal, largest, one third, minus two.
  [1, 0x3c00],
  [2 ** -14, 0x0400],
  [2 ** -24, 0x0001],
  [65504, 0x7bff],
  [1 / 3, 0x3555],
  [-2, 0xc000],
  [0, 0],
  // Ties go to even: 1 + 2^-11 lies between 0x3c00 and 0x3c01, 1 + 3 * 2^-11 between 0x3c01 and 0x3c02.
  [1 + 2 ** -11, 0x3c00],
  [1 + 3 * 2 ** -11, 0x3c02],
])('writes %d as binary16', (value, bits) => {
  expect(halfOf(value)).toBe(bits);
});

it('keeps what a half cannot hold finite', () => {
  expect(halfOf(1e6)).toBe(0x7bff);
  expect(halfOf(Number.NEGATIVE_INFINITY)).toBe(0xfbff);
  expect(halfOf(Number.NaN)).toBe(0);
});

it('is within half a step of the value, read back by another decoder', () => {
  fc.assert(
    fc.property(fc.float({ min: Math.fround(-65504), max: Math.fround(65504), noNaN: true }), (value) => {
      const back = DataUtils.fromHalfFloat(halfOf(value));
      const step = Math.max(2 ** -24, 2 ** (Math.floor(Math.log2(Math.abs(value) || 2 ** -24)) - 10));
      expect(Math.abs(back - value)).toBeLessThanOrEqual(step / 2);
    }),
  );
});
