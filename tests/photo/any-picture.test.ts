import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readSample } from '../../src/engine/photo/read-sample';
import type { PictureQuad } from '../../src/engine/photo/types';
import { mulberry32 } from '../../src/engine/random';
import { linear } from './scene';

const [WIDTH, HEIGHT] = [48, 32];
const coordinate = fc.oneof(fc.double({ min: -60, max: 120, noNaN: false }), fc.constantFrom(0, 8, 24, 32, 48));
const quad = fc
  .tuple(coordinate, coordinate, coordinate, coordinate, coordinate, coordinate, coordinate, coordinate)
  .map(
    ([a, b, c, d, e, f, g, h]): PictureQuad => [
      { x: a, y: b },
      { x: c, y: d },
      { x: e, y: f },
      { x: g, y: h },
    ],
  );
const whole: PictureQuad = [
  { x: 0, y: 0 },
  { x: WIDTH, y: 0 },
  { x: WIDTH, y: HEIGHT },
  { x: 0, y: HEIGHT },
];
/** Pictures from a few numbers, so that a failing one can be told: noise, or runs of some codes (flat, clipped, of two colors). */
const picture = fc.record({
  seed: fc.nat(1000),
  some: fc.uint8Array({ maxLength: 6 }),
  run: fc.integer({ min: 1, max: 97 }),
});

function codesOf({ seed, some, run }: { seed: number; some: Uint8Array; run: number }): Uint8Array {
  const random = mulberry32(seed);
  return Uint8Array.from({ length: 4 * WIDTH * HEIGHT }, (_, i) =>
    some.length ? some[Math.floor(i / run) % some.length]! : 256 * random(),
  );
}

it('answers any picture and any boxes with numbers or a problem', () => {
  fc.assert(
    fc.property(
      picture,
      fc.oneof(fc.constant(whole), quad),
      fc.array(fc.oneof(fc.constant(whole), quad), { maxLength: 2 }),
      fc.constantFrom(0.03, 0.18, 0.9, 0.99),
      fc.constantFrom('daylight' as const, 'lamps' as const, 'unknown' as const),
      (codes, sample, cards, cardY, light) => {
        const read = readSample(linear(codesOf(codes), WIDTH, HEIGHT), { sample, cards, cardY, light });
        if (!read.ok) {
          expect(read.problem.remedy).not.toBe('');
          return;
        }
        const { colors, flags, uncertaintyDe00 } = read.value;
        const numbers = [
          uncertaintyDe00,
          ...colors.flatMap(({ lab, rawLab, share, spreadDe00 }) => [
            ...[lab, rawLab].flatMap(({ l, a, b }) => [l, a, b]),
            share,
            spreadDe00,
          ]),
          ...flags.flatMap(({ value, addsDe00 }) => [value, addsDe00]),
        ];
        expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
        expect(colors.length).toBeGreaterThan(0);
        expect(colors.length).toBeLessThanOrEqual(4);
        expect(colors.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(uncertaintyDe00).toBeGreaterThanOrEqual(cards.length ? 2.5 : 5);
      },
    ),
    { numRuns: 40 },
  );
});
