import fc from 'fast-check';
import { expect, it } from 'vitest';
import { floatFromHalf, halfFromFloat } from './half-float';

// IEEE 754-2019, binary16: known encodings.
it.each([
  [0, 0x0000],
  [1, 0x3c00],
  [-2, 0xc000],
  [65504, 0x7bff],
  [2 ** -14, 0x0400],
  [2 ** -24, 0x0001],
  [1 / 3, 0x3555],
])('encodes %f', (value, half) => expect(halfFromFloat(value)).toBe(half));

it('keeps 11 significant bits', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 65000, noNaN: true }), (value) => {
      expect(Math.abs(floatFromHalf(halfFromFloat(value)) - value)).toBeLessThanOrEqual(value * 2 ** -11);
    }),
  );
});
