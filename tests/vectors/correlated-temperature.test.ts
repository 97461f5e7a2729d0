import fc from 'fast-check';
import { expect, it } from 'vitest';
import { uv1960FromXy } from '../../src/engine/color/chromaticity';
import { cctDuv } from '../../src/engine/color/correlated-temperature';
import { whiteOf } from '../../src/engine/color/xyz';
import { lightById, planckSpd } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';

it.each([
  // CIE 15:2004, table T.7 (FL) and CIE 15:2018, tables 5 and 12; the integers from memory.
  ['A', 2856],
  ['C', 6774],
  ['D50', 5003],
  ['D55', 5503],
  ['D65', 6504],
  ['D75', 7504],
  ['FL1', 6430],
  ['FL2', 4230],
  ['FL3', 3450],
  ['FL4', 2940],
  ['FL5', 6350],
  ['FL6', 4150],
  ['FL7', 6500],
  ['FL8', 5000],
  ['FL9', 4150],
  ['FL10', 5000],
  ['FL11', 4000],
  ['FL12', 3000],
  ['LED-B1', 2733],
  ['LED-B2', 2998],
  ['LED-B3', 4103],
  ['LED-B4', 5109],
  ['LED-B5', 6598],
  ['LED-BH1', 2851],
  ['LED-RGB1', 2840],
  ['LED-V1', 2724],
  ['LED-V2', 4070],
])('%s has its published colour temperature within 10 K', (id, published_k) => {
  const reading = cctDuv(whiteOf(lightById(id)!, observer2))!;
  expect(Math.abs(reading.cct_k - published_k)).toBeLessThan(10);
});

it('has the example of Ohno 2013 (LEUKOS 10, 47): u 0.1978, v 0.3122 is 6507.5 K, Duv 0.00322', () => {
  // His locus comes from 1 nm sums; on ours of 5 nm the nearest point by brute force is 6508.94 K, 0.0032105.
  const [u, v] = [0.1978, 0.3122];
  const xy = { x: (3 * u) / (2 * u - 8 * v + 4), y: (2 * v) / (2 * u - 8 * v + 4) };
  expect(uv1960FromXy(xy).u).toBeCloseTo(u, 12);
  const reading = cctDuv(xy)!;
  expect(Math.abs(reading.cct_k - 6507.47)).toBeLessThan(2);
  expect(Math.abs(reading.duv - 0.00322334)).toBeLessThan(2e-5);
});

it('finds the temperature of a black body and a distance of 0', () => {
  fc.assert(
    fc.property(fc.double({ min: 1500, max: 25000, noNaN: true }), (cct_k) => {
      const reading = cctDuv(whiteOf(planckSpd(cct_k), observer2))!;
      expect(Math.abs(reading.cct_k / cct_k - 1)).toBeLessThan(1e-5);
      expect(Math.abs(reading.duv)).toBeLessThan(1e-7);
    }),
  );
});

it('says nothing of a saturated light, and which side of the locus a light is on', () => {
  expect(cctDuv({ x: 0.3, y: 0.6 })).toBeNull();
  expect(cctDuv({ x: 0, y: 0, z: 0 })).toBeNull();
  expect(cctDuv(whiteOf(lightById('FL5')!, observer2))!.duv).toBeGreaterThan(0.01);
  expect(cctDuv(whiteOf(lightById('LED-V1')!, observer2))!.duv).toBeLessThan(-0.0015);
});
