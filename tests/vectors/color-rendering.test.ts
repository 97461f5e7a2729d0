import { expect, it } from 'vitest';
import { colorRendering } from '../../src/engine/lamp/color-rendering';
import { emissionSpd, GRID_COUNT, wavelengthNm } from '../../src/engine/spectrum/grid';
import { daylightSpd, lightById, planckSpd } from '../../src/engine/spectrum/lights';

const rendering = (id: string) => colorRendering(lightById(id)!)!;

it.each([
  // CIE 15:2004, table T.7: integers, from memory; FL1, FL2, FL4 also in handbooks.
  ['FL1', 76],
  ['FL2', 64],
  ['FL3', 57],
  ['FL4', 51],
  ['FL5', 72],
  ['FL6', 59],
  ['FL7', 90],
  ['FL8', 95],
  ['FL9', 90],
  ['FL10', 81],
  ['FL11', 83],
  ['FL12', 83],
])('%s has its published Ra of %i', (id, published) => {
  // Half a unit of rounding, and 0.2 for sums at 5 nm instead of 1 nm.
  expect(Math.abs(rendering(id).ra - published)).toBeLessThan(0.7);
});

it.each([
  // Computed once, from the CIE 15 tables, by an independent program (Python) of CIE 13.3-1995.
  ['C', [96.9, 97.3, 99.4, 97.8, 96.9, 97.2, 99.3, 95.6, 85.2, 95.2, 97.0, 94.8, 96.8, 99.8]],
  ['FL2', [55.9, 76.7, 90.3, 57.0, 59.0, 67.2, 74.1, 33.2, -83.9, 45.3, 45.9, 53.7, 60.3, 94.1]],
  ['FL4', [42.0, 69.9, 90.4, 37.8, 40.8, 53.7, 64.9, 11.3, -111.3, 31.4, 18.3, 25.0, 46.8, 94.3]],
  ['FL11', [98.3, 92.9, 50.4, 88.4, 87.3, 77.3, 88.5, 79.5, 25.3, 46.8, 72.3, 53.0, 96.9, 66.7]],
  ['LED-B3', [83.6, 89.3, 93.2, 84.8, 83.8, 84.8, 88.2, 71.1, 23.8, 74.3, 83.8, 66.5, 84.7, 96.2]],
  ['LED-B5', [79.1, 84.4, 84.9, 80.2, 78.9, 76.3, 87.5, 70.7, 6.9, 59.8, 77.2, 50.7, 80.4, 91.5]],
  ['LED-BH1', [98.5, 93.6, 81.2, 89.2, 95.4, 92.8, 92.1, 91.6, 73.4, 77.4, 89.4, 74.2, 98.4, 86.3]],
])('%s has R1-R14 as another program gives them', (id, indices) => {
  rendering(id).r.forEach((index, i) => {
    // The other program's colour temperature differs by up to 1 K, and its figures are rounded to 0.1.
    expect(Math.abs(index - indices[i]!), `R${i + 1}`).toBeLessThan(0.15);
  });
});

it('renders as its reference does: A, a black body and daylight have 100 throughout', () => {
  // A differs from a black body only by its temperature (2855.5 K on the present scale).
  for (const spd of [lightById('A')!, planckSpd(3000), planckSpd(4900), daylightSpd(5010), daylightSpd(6504)]) {
    for (const index of colorRendering(spd)!.r) expect(index).toBeGreaterThan(99.8);
  }
  // The tabled D lights have the temperature of their chromaticity, up to 3 K off nominal, where M1 and M2 are rounded.
  for (const id of ['D50', 'D55', 'D65', 'D75']) {
    for (const index of rendering(id).r) expect(index, id).toBeGreaterThan(99.8);
  }
});

it('says when a light is too far from its reference, and has no answer where there is no reference', () => {
  expect(rendering('FL5').isOutsideTolerance).toBe(true);
  expect(rendering('FL5').uvDistance).toBeGreaterThan(5.4e-3);
  expect(rendering('LED-B3').isOutsideTolerance).toBe(false);
  const green = emissionSpd(Array.from({ length: GRID_COUNT }, (_, i) => (wavelengthNm(i) === 530 ? 1 : 0)));
  expect(colorRendering(green)).toBeNull();
  expect(colorRendering(emissionSpd(new Float64Array(GRID_COUNT)))).toBeNull();
  expect(colorRendering(planckSpd(30_000))).toBeNull();
});

it('does not depend on the scale of the spectrum', () => {
  const spd = lightById('FL2')!;
  const dimmed = emissionSpd(spd.map((power) => power * 1e-6));
  expect(colorRendering(dimmed)!.ra).toBeCloseTo(rendering('FL2').ra, 6);
});
