import { expect, it } from 'vitest';
import { deviationsOf, zoneMeans } from './zone-means';

// Patches half as long and four times the rays each time, up to what the product uses and one step beyond.
const means = [
  { patchSize: 1.2, raysPerPatch: 36, rays: 25 },
  { patchSize: 0.6, raysPerPatch: 36, rays: 100 },
  {},
  { patchSize: 0.15, raysPerPatch: 121, rays: 1600 },
].map(zoneMeans);

/** Mean deviation from the renderer over zones and bands. */
const sizes = means.map((zones) => {
  const deviations = deviationsOf(zones).flat().map(Math.abs);
  return deviations.reduce((sum, d) => sum + d, 0) / deviations.length;
});

it('halving patches and four times the rays bring every level nearer to the renderer', () => {
  // First-order convergence at least, until the last step reaches what the renderer itself is known to (0.1 %).
  expect(sizes[1]!).toBeLessThan(0.5 * sizes[0]!);
  expect(sizes[2]!).toBeLessThan(0.5 * sizes[1]!);
  expect(sizes[3]!).toBeLessThan(sizes[2]!);
  expect(sizes[3]!).toBeLessThan(0.001);
});

it('what the product says moves by less than its stated 0.3 % when refined', () => {
  const [, , said, finer] = means;
  said!.forEach((bands, i) => {
    bands.forEach((mean, k) => {
      expect(Math.abs(mean / finer![i]![k]! - 1)).toBeLessThan(0.003);
    });
  });
});
