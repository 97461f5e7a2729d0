import { expect, it } from 'vitest';
import { cieWhiteness } from '../../src/engine/color/cie-whiteness';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { wid } from '../../src/engine/color/wid';
import { yellownessE313 } from '../../src/engine/color/yellowness';
import { undertoneOf } from '../../src/engine/naming/undertone';
import { warmCool2004, warmCool2018, warmth } from '../../src/engine/naming/warmth';

type Row = readonly [
  finish: string,
  lab: readonly [number, number, number],
  name: string,
  strength: number,
  warmth: readonly [w50: number, w44: number, w32: number],
  wc04: number,
  wc18: number,
  y: number,
];

/**
 * Seventeen invented colours, computed independently of this code (Python; ISCC-NBS tables, npm munsell, the equations of
 * Ou et al. 2004 and 2018): name, chroma over neutral limit, warmth on three axes, warm-cool scores, Y.
 */
// biome-ignore format: a table
const COLORS: readonly Row[] = [
  ['slate floor', [37, -1.5, -5.5], 'dark bluish gray', 2.56, [-5.18, -4.92, -4.19], -0.62, -1.2, 9.5],
  ['birch boards', [74, 6, 26], 'light yellowish brown', 5.94, [23.77, 22.48, 18.87], 0.1, 0.13, 46.7],
  ['red quarry tile', [42, 21, 19], 'moderate reddish brown', 10.2, [28.05, 28.3, 27.88], 0.21, 0.55, 12.5],
  ['terrazzo, base', [80, 4, 4.5], 'pinkish gray', 2.79, [6.02, 6.01, 5.78], -0.36, -0.59, 56.7],
  ['terrazzo, red fleck', [58, 14, 10], 'light reddish brown', 6.98, [16.66, 17.0, 17.17], -0.09, 0, 26],
  ['terrazzo, gray fleck', [48, 0.5, 0.5], 'medium gray', 0.26, [0.7, 0.71, 0.69], -0.49, -0.85, 16.8],
  ['pale green-gray front', [73, -5.5, 6.5], 'light greenish gray', 2.27, [1.44, 0.62, -1.22], -0.47, -0.81, 45.2],
  ['deep blue-green front', [32, -13, -4.5], 'dark bluish green', 5.71, [-11.8, -12.44, -13.41], -0.78, -1.43, 7.1],
  ['cool counter, base', [88.5, -0.8, -0.3], 'white', 0.33, [-0.74, -0.78, -0.84], -0.51, -0.92, 73.1],
  ['cool counter, vein', [62, -1.3, -4.3], 'bluish gray', 2.54, [-4.13, -3.94, -3.38], -0.59, -1.14, 30.4],
  ['sand-colored limestone', [82, 1.2, 8.5], 'yellowish gray', 1.8, [7.28, 6.8, 5.52], -0.33, -0.58, 60.3],
  ['neutral white tile', [93, -0.3, 1.8], 'white', 0.31, [1.19, 1.05, 0.7], -0.48, -0.84, 83],
  ['yellowish white tile', [88, 0.6, 12], 'yellowish white', 2.31, [9.58, 8.82, 6.87], -0.27, -0.49, 72.1],
  ['bluish white laminate', [96, 0.2, -2.5], 'bluish white', 1.91, [-1.79, -1.61, -1.16], -0.54, -1, 90],
  ['olive-gray laminate', [50, -2, 9], 'light olive gray', 1.81, [5.61, 4.87, 3.07], -0.37, -0.66, 18.4],
  ['brushed brass', [72, 4, 27], 'light yellowish brown', 5.85, [23.25, 21.75, 17.7], 0.09, 0.09, 43.7],
  ['mid walnut', [44, 8, 15], 'moderate brown', 5.48, [16.63, 16.21, 14.73], -0.09, -0.12, 13.8],
];

const labOf = ([l, a, b]: readonly [number, number, number]) => ({ l, a, b });

it.each(COLORS)('%s', (_finish, triple, name, strength, [w50, w44, w32], wc04, wc18, y) => {
  const lab = labOf(triple);
  const undertone = undertoneOf(lab);
  expect(undertone.name).toBe(name);
  expect(Math.abs(undertone.strength - strength)).toBeLessThan(0.02);
  const w = warmth(lab);
  expect(Math.abs(w.w50 - w50)).toBeLessThan(0.0051);
  expect(Math.abs(w.w44 - w44)).toBeLessThan(0.0051);
  expect(Math.abs(w.w32 - w32)).toBeLessThan(0.0051);
  expect(Math.abs(warmCool2004(lab) - wc04)).toBeLessThan(0.0051);
  expect(Math.abs(warmCool2018(lab) - wc18)).toBeLessThan(0.0051);
  expect(Math.abs(xyzD65FromLabD65(lab).y - y)).toBeLessThan(0.051);
});

it.each([
  // Same independent run: CIE whiteness and whether it may be used, E313 yellowness, WID.
  ['terrazzo, base', 33.3, false, 13.4, 26.6],
  ['cool counter, base', 74.5, true, -1.3, 47.4],
  ['sand-colored limestone', 16.6, false, 18.8, 29.8],
  ['neutral white tile', 74.6, true, 3.3, 46.2],
  ['yellowish white tile', 13.8, false, 23.7, 30.4],
  ['bluish white laminate', 101.3, true, -4.7, 51.3],
] as const)('whiteness of %s', (finish, w, holds, yellowness, widValue) => {
  const lab = labOf(COLORS.find(([name]) => name === finish)![1]);
  const xyz = xyzD65FromLabD65(lab);
  const cie = cieWhiteness(xyz, 'D65-2')!;
  expect(Math.abs(cie.w - w)).toBeLessThan(0.06);
  expect(cie.holds).toBe(holds);
  expect(Math.abs(yellownessE313(xyz, 'D65-2')! - yellowness)).toBeLessThan(0.06);
  expect(Math.abs(wid(lab) - widValue)).toBeLessThan(0.06);
});

it.each([
  // Equations of Ou et al. 2004 and 2018, worked independently.
  [50, 0, 0, -0.5, -0.89],
  [60, 30, 30, 0.5989, 1.2465],
  [70, -20, -20, -1.2121, -2.396],
])('warm-cool scores of L* %f a* %f b* %f', (l, a, b, wc04, wc18) => {
  expect(Math.abs(warmCool2004({ l, a, b }) - wc04)).toBeLessThan(5e-5);
  expect(Math.abs(warmCool2018({ l, a, b }) - wc18)).toBeLessThan(5e-5);
});

it.each([
  // Levels and words follow from the ISCC-NBS blocks (Kelly and Judd 1955) and the strengths above; faint leans: about
  // 0.7 of the neutral limit towards 5Y, 5PB and 6R.
  [[93, -0.3, 1.8], 'none', 'none'],
  [[93, -0.2, 3.5], 'faint', 'yellowish'],
  [[93, -0.2, -1], 'faint', 'bluish'],
  [[88, 0.6, 12], 'named', 'yellowish'],
  [[50, -2, 9], 'named', 'olive'],
  [[73, -5.5, 6.5], 'named', 'greenish'],
  [[44, 8, 15], 'color', 'brown'],
  [[32, -13, -4.5], 'color', 'bluish green'],
  [[35.55, 1.9, 0.95], 'faint', 'reddish'],
] as const)('%o leans %s, %s', (triple, level, word) => {
  const undertone = undertoneOf(labOf(triple));
  expect([undertone.level, undertone.word]).toEqual([level, word]);
});

it('never calls a lean by a word that is no hue, over the whole near-neutral range', () => {
  const words = new Set(['pinkish', 'reddish', 'brownish', 'yellowish', 'olive', 'greenish', 'bluish', 'purplish']);
  for (let l = 1; l < 100; l += 3) {
    for (let a = -8; a <= 8; a += 0.8) {
      for (let b = -8; b <= 14; b += 1.1) {
        const { level, word, name } = undertoneOf({ l, a, b });
        if (level === 'faint' || level === 'named')
          expect(words.has(word), `${l} ${a} ${b} ${name}: ${word}`).toBe(true);
        if (level === 'named') expect(name).toMatch(/(white|gray|black)$/);
      }
    }
  }
});
