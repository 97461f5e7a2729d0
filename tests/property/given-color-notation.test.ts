import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { finishComponent } from '../../src/engine/finish/component';
import { notationDoubtDe00 } from '../../src/engine/finish/notation-doubt';
import type { FinishComponent } from '../../src/engine/finish/types';
import { mulberry32 } from '../../src/engine/random';

function made(munsell: string): FinishComponent {
  const color = { kind: 'munsell', munsell } as const;
  const result = finishComponent({ role: 'base', share: 1, color, finishClass: 'paint', provenance: 'declared' });
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

const doubt = (munsell: string) => notationDoubtDe00({ kind: 'munsell', munsell });

const FAMILIES = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'];

function notation(hue100: number, value: number, chroma: number): string {
  const family = Math.floor(hue100 / 10) % 10;
  const hue = hue100 - 10 * Math.floor(hue100 / 10);
  return `${hue.toFixed(6)}${FAMILIES[family]} ${value.toFixed(6)}/${chroma.toFixed(6)}`;
}

it.each([
  // As written; hue on the circle of 100, value, chroma; the step of each by our rule.
  ['10YR 9/1', [20, 9, 1], [2.5, 1, 1]],
  ['10YR 8.5/0.5', [20, 8.5, 0.5], [2.5, 0.5, 0.5]],
  ['4.1Y 9.2/1.3', [24.1, 9.2, 1.3], [0.1, 0.1, 0.1]],
  ['3Y 9/1', [23, 9, 1], [1, 1, 1]],
  ['5PB 4/8', [75, 4, 8], [2.5, 1, 1]],
] as const)('is as unsure of %s as the colors that round to it lie apart, each made anew', (written, middle, steps) => {
  const draw = mulberry32(7);
  const said = made(written).labD65;
  let squares = 0;
  const count = 400;
  for (let i = 0; i < count; i++) {
    const [h, v, c] = [0, 1, 2].map((k) => middle[k]! + (draw() - 0.5) * steps[k]!);
    squares += differenceCiede2000(said, made(notation(h!, v!, c!)).labD65) ** 2;
  }
  // 400 draws know a root mean square of these shapes to about 2 %, and adaptation by Bradford differs by 1 % from the curve's.
  const rms = Math.sqrt(squares / count);
  expect(doubt(written) / rms).toBeGreaterThan(0.93);
  expect(doubt(written) / rms).toBeLessThan(1.07);
});

it('adds the rounding to what the supplier leaves open', () => {
  for (const written of ['10YR 9/1', '4.1Y 9.2/1.3', 'N 9']) {
    expect(made(written).uncertaintyDe00).toBeCloseTo(Math.hypot(1, doubt(written)), 9);
  }
});

it('is surer the finer a notation is written', () => {
  for (const [coarse, fine] of [
    ['10YR 9/1', '10YR 9.0/1.0'],
    ['10YR 9/1', '10YR 8.5/1'],
    ['N 9', 'N 9.25'],
    ['N 9.25', 'N 9.20'],
  ] as const) {
    expect(doubt(coarse)).toBeGreaterThan(doubt(fine));
  }
});

it('knows neutrals by their value: a uniform error of half a step in L*, through the lightness weight of CIEDE2000', () => {
  // Value 9.25 is L* 92.9 (ASTM D1535); a step of 0.25 is 2.46 in L* there, its root mean square 2.46 / sqrt(12), S_L 1.64.
  expect(doubt('N 9.25/')).toBeCloseTo(2.46 / Math.sqrt(12) / 1.64, 1);
});

it('says nothing of other kinds of color, and of what is no notation', () => {
  expect(notationDoubtDe00({ kind: 'hex', hex: '#ffffff' })).toBe(0);
  expect(doubt('5Q 9/1')).toBe(0);
});

it('stays finite where the scales end', () => {
  for (const written of ['5Y 0/0', '5Y 10/1', '10RP 0.2/50', 'N 0', 'N 10', '0R 5/0']) {
    expect(Number.isFinite(doubt(written)), written).toBe(true);
  }
});
