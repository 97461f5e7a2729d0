import { expect, it } from 'vitest';
import { fresnelPair, fresnelUnpolarized, schlickWeight } from '../../src/engine/sheen/fresnel';

const cosineOf = (degrees: number) => Math.cos((degrees * Math.PI) / 180);

it.each([
  // Reflectance of the black glass of the gloss scale, n = 1.567, in per cent, at the angles of ISO 2813 (from memory).
  [20, 4.91],
  [60, 10.006],
  [85, 61.91],
])('gives the glass of the gloss standard its reflectance at %d degrees', (angle, percent) => {
  // A unit of the last figure that all three have.
  expect(Math.abs(100 * fresnelUnpolarized(1.567, cosineOf(angle)) - percent)).toBeLessThan(0.01);
});

it('reflects 4.88 % of straight light from that glass: ((n - 1) / (n + 1))^2', () => {
  expect(100 * fresnelUnpolarized(1.567, 1)).toBeCloseTo(100 * (0.567 / 2.567) ** 2, 12);
});

it('gives glass of index 1.5 what optics books print: 4 % straight on, nothing in the plane at 56.31 degrees', () => {
  // Born and Wolf, Principles of Optics, 1.5: ((n - 1) / (n + 1))^2, and Brewster's angle atan(n).
  expect(fresnelUnpolarized(1.5, 1)).toBeCloseTo(0.04, 12);
  const { s, p } = fresnelPair(1.5, cosineOf(56.30993247));
  expect(p).toBeLessThan(1e-18);
  // ((n^2 - 1) / (n^2 + 1))^2
  expect(s).toBeCloseTo((1.25 / 3.25) ** 2, 9);
  // The same source's figure 1.12: 8.9 % at 60 degrees, unpolarised; closed form with cos = 1/2, inside = sqrt(2/3).
  const inside = Math.sqrt(2 / 3);
  const closed = (((0.5 - 1.5 * inside) / (0.5 + 1.5 * inside)) ** 2 + ((0.75 - inside) / (0.75 + inside)) ** 2) / 2;
  expect(fresnelUnpolarized(1.5, 0.5)).toBeCloseTo(closed, 12);
  expect(fresnelUnpolarized(1.5, 0)).toBe(1);
});

it.each([
  // Refractive indices n + ik near 550 nm as handbooks give them (from memory), largest departure to 60 and to 85 degrees.
  ['silver', 0.13, 3.4, 0.01, 0.015],
  ['copper', 0.4, 2.7, 0.015, 0.02],
  ['aluminum', 1.1, 6.6, 0.025, 0.12],
  ['iron', 2.9, 3.1, 0.05, 0.19],
  ['chromium', 3.1, 3.3, 0.05, 0.21],
] as const)('comes as near to the exact reflectance of %s as it says', (_, n, k, limit60, limit85) => {
  const f0 = ((n - 1) ** 2 + k * k) / ((n + 1) ** 2 + k * k);
  for (let angle = 0; angle <= 85; angle += 5) {
    const c = cosineOf(angle);
    const error = f0 + (1 - f0) * schlickWeight(c) - conductor(n, k, c);
    expect(Math.abs(error)).toBeLessThan(angle <= 60 ? limit60 : limit85);
  }
});

/** Exact reflectance of a conductor (M. Born and E. Wolf, Principles of Optics, 14.2). */
function conductor(n: number, k: number, cosine: number): number {
  const c2 = cosine * cosine;
  const s2 = 1 - c2;
  const d = n * n - k * k - s2;
  const ab2 = Math.sqrt(d * d + 4 * n * n * k * k);
  const a = Math.sqrt((ab2 + d) / 2);
  const s = (ab2 + c2 - 2 * a * cosine) / (ab2 + c2 + 2 * a * cosine);
  const p = (s * (c2 * ab2 + s2 * s2 - 2 * a * cosine * s2)) / (c2 * ab2 + s2 * s2 + 2 * a * cosine * s2);
  return (s + p) / 2;
}
