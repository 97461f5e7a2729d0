import { expect, it } from 'vitest';
import { fresnelReflectance, mirrorPart } from '../../src/engine/finish/specular';
import { coatAlbedo } from '../../src/engine/sheen/albedo';
import { alphaOfShare } from '../../src/engine/sheen/gloss-alpha';
import { glossMeterReading } from '../../src/engine/sheen/gloss-meter';
import { lobeRays } from '../../src/engine/sheen/lobe';
import { sheenOfFinish } from '../../src/engine/sheen/sheen';

it('reads 100 gloss units of smooth black glass, 89 of a smooth coat, and less the rougher', () => {
  // ISO 2813: n = 1.567 is the unit of the scale, and what reads otherwise does so by Fresnel's equations.
  expect(glossMeterReading([0, 0], 1.567)).toBe(100);
  expect(glossMeterReading([0, 0], 1.5)).toBeCloseTo(
    (100 * fresnelReflectance(1.5, 60)) / fresnelReflectance(1.567, 60),
    9,
  );
  // Smooth is the limit of rough.
  expect(Math.abs(glossMeterReading([1e-4, 1e-4], 1.567) - 100)).toBeLessThan(0.03);
  let last = Infinity;
  for (const alpha of [1e-4, 0.003, 0.01, 0.03, 0.1, 0.3, 1]) {
    const reading = glossMeterReading([alpha, alpha], 1.567);
    expect(reading).toBeLessThan(last);
    last = reading;
  }
});

it('reads what sampled directions of the same lobe bring into the receptor', () => {
  // An independent way to the same integral: the share of sampled directions inside 4.4 x 11.7 degrees about 60 (ISO 2813),
  // for a source without extent; that of 0.75 x 2.5 degrees changes these readings by less than 1 %.
  for (const alpha of [0.02, 0.06]) {
    const count = 16384;
    let inside = 0;
    for (const { direction, reached } of lobeRays([alpha, alpha], [-Math.sqrt(0.75), 0, 0.5], count)) {
      const along = direction[0] * Math.sqrt(0.75) + direction[2] * 0.5;
      const inPlane = direction[0] * 0.5 - direction[2] * Math.sqrt(0.75);
      const isIn = along > 0 && Math.abs(inPlane / along) < Math.tan((2.2 * Math.PI) / 180);
      if (isIn && Math.abs(direction[1] / along) < Math.tan((5.85 * Math.PI) / 180)) inside += reached;
    }
    // Fresnel's reflectance hardly varies over the receptor: 2 % of the reading covers that, the source and the sampling.
    expect(Math.abs((inside / count) * 100 - glossMeterReading([alpha, alpha], 1.567))).toBeLessThan(
      0.02 * glossMeterReading([alpha, alpha], 1.567) + 0.1,
    );
  }
});

it('finds the roughness of a gloss back', () => {
  for (const alpha of [0.0018, 0.0031, 0.0083, 0.025, 0.055, 0.12, 0.27, 0.6]) {
    const share = glossMeterReading([alpha, alpha], 1.5) / glossMeterReading([0, 0], 1.5);
    // Straight lines between the table's points: 1 %.
    expect(Math.abs(alphaOfShare(share) / alpha - 1)).toBeLessThan(0.01);
  }
  expect(alphaOfShare(1)).toBe(0);
  expect(alphaOfShare(1.2)).toBe(0);
  expect(alphaOfShare(0)).toBe(1);
  expect(alphaOfShare(Number.NaN)).toBe(1);
});

it('makes finishes smoother the more gloss they have, and none of matt ones', () => {
  expect(sheenOfFinish(5, 0.5, false)).toBeNull();
  expect(sheenOfFinish(Number.NaN, 0.5, false)).toBeNull();
  let last = Infinity;
  for (const gloss of [6, 10, 25, 50, 70, 85, 92]) {
    const sheen = sheenOfFinish(gloss, 0.3, false)!;
    expect(sheen.alpha < last || sheen.alpha === 0).toBe(true);
    last = sheen.alpha;
  }
  expect(last).toBe(0);
  // Continuous where the mirror begins to be told apart.
  expect(sheenOfFinish(5.001, 0.5, false)!.part).toBeLessThan(0.001);
  expect(sheenOfFinish(10, 0.5, false)!.part).toBe(1);
});

it('takes a metal of as many units for rougher than a coat: a smooth one would read many hundreds', () => {
  const brushed = sheenOfFinish(60, 0.6, true)!;
  const coat = sheenOfFinish(60, 0.6, false)!;
  expect(brushed.alpha).toBeGreaterThan(3 * coat.alpha);
});

it('knows metals up to a perfect mirror, by the scale of black glass', () => {
  // Fresnel, n = 1.567 at 60 degrees: a mirror of all light reads 1 / 0.1001 times as much as the standard's 100 (ISO 2813).
  const mirror = 100 / fresnelReflectance(1.567, 60);
  expect(mirror).toBeCloseTo(999, 0);
  expect(sheenOfFinish(mirror, 1, true)!.alpha).toBe(0);
  // Between brushed and mirror the lobe reads what was given: flux of the same lobe over that of a smooth surface, by the meter.
  for (const gloss of [60, 100, 200, 400, 600, 800]) {
    const { alpha } = sheenOfFinish(gloss, 0.9, true)!;
    const smooth = 0.9 + 0.1 * 0.5 ** 5;
    const share = glossMeterReading([alpha, alpha], 1.567) / 100;
    expect(Math.abs((share * smooth * mirror) / gloss - 1)).toBeLessThan(0.015);
  }
});

it('lets a light trap take away no more than the whole mirror', () => {
  // The trap's part (a proportion of gloss) against the lobe's whole albedo at 8 degrees.
  for (let gloss = 6; gloss <= 100; gloss += 2) {
    const { alpha } = sheenOfFinish(gloss, 0, false)!;
    expect(mirrorPart(gloss, 0)).toBeLessThan(coatAlbedo(alpha, Math.cos((8 * Math.PI) / 180)) + 2e-4);
  }
});
