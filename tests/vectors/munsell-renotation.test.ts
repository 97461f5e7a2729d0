import { expect, it } from 'vitest';
import { bradfordCToD65 } from '../../src/engine/color/adapt';
import { labD65FromXyzD65 } from '../../src/engine/color/lab';
import { munsellFromLabD65 } from '../../src/engine/naming/munsell';
import { RENOTATION_XY, RENOTATION_Y } from './munsell-renotation.data';

interface Colour {
  readonly hue100: number;
  readonly value: number;
  readonly chroma: number;
  readonly x: number;
  readonly y: number;
  readonly luminance: number;
}

const COLOURS: readonly Colour[] = RENOTATION_XY.flatMap((line, v) =>
  line.split(' ').flatMap((packed, h) =>
    (packed.match(/.{8}/g) ?? []).map((digits, c) => ({
      hue100: (2.5 * (h + 1)) % 100,
      value: v + 1,
      chroma: 2 * (c + 1),
      x: Number(digits.slice(0, 4)) / 1e4,
      y: Number(digits.slice(4)) / 1e4,
      luminance: RENOTATION_Y[v]! * 0.975,
    })),
  ),
);

/** Luminance factor of a value, perfect diffuser 100 (ASTM D1535-14). */
const astmY = (v: number): number =>
  1.1914 * v - 0.22533 * v ** 2 + 0.23352 * v ** 3 - 0.020484 * v ** 4 + 0.00081939 * v ** 5;

function errorsOf({ hue100, value, chroma, x, y }: Colour, luminance: number) {
  const underC = { x: (luminance * x) / y, y: luminance, z: (luminance * (1 - x - y)) / y };
  const found = munsellFromLabD65(labD65FromXyzD65(bradfordCToD65(underC)));
  const turn = Math.abs(found.hue100 - hue100);
  return {
    hue: Math.min(turn, 100 - turn),
    value: Math.abs(found.value - value),
    chroma: Math.abs(found.chroma - chroma),
  };
}

it('has all 2734 real colours of the renotation', () => {
  expect(COLOURS).toHaveLength(2734);
});

it('finds hue, value and chroma of every one from x, y and the Y of its value to 0.001', () => {
  for (const colour of COLOURS) {
    const { hue, value, chroma } = errorsOf(colour, astmY(colour.value));
    // Measured: 1e-4 at most, at chromas above 30.
    expect(Math.max(hue, value, chroma), JSON.stringify(colour)).toBeLessThan(0.001);
  }
});

it('finds them from the printed Y, too, to 0.02 in hue steps, value and chroma', () => {
  for (const colour of COLOURS) {
    const { hue, value, chroma } = errorsOf(colour, colour.luminance);
    expect(hue, JSON.stringify(colour)).toBeLessThan(0.02);
    expect(value, JSON.stringify(colour)).toBeLessThan(0.02);
    // Y of value 1 is printed as 1.21, 0.06 % off the formula of its value: 0.1 % of the chromas up to 38 found there.
    expect(chroma, JSON.stringify(colour)).toBeLessThan(Math.max(0.02, 0.0011 * colour.chroma));
  }
});
