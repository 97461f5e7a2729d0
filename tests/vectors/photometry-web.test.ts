import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cosineExponent } from '../../src/engine/photometry/cosine-exponent';
import { readyBeam, relativeIntensity } from '../../src/engine/photometry/relative-intensity';
import type { PhotometricWeb } from '../../src/engine/photometry/types';
import { frontShare, webFlux } from '../../src/engine/photometry/web-flux';
import { webFromRecord } from '../../src/engine/photometry/web-from-record';
import { intensityOf } from '../../src/engine/photometry/web-intensity';

const RADIANS = Math.PI / 180;

const steps = (end: number, step: number): number[] => Array.from({ length: end / step + 1 }, (_, i) => i * step);

/** A web sampled from a law, cd of vertical and horizontal degrees. */
const webOf = (law: (v: number, h: number) => number, vertical: number[], horizontal: number[] = [0]): PhotometricWeb =>
  webFromRecord({
    vertical_deg: vertical,
    horizontal_deg: horizontal,
    candela: horizontal.map((h) => vertical.map((v) => law(v, h))),
  });

const cosine = (v: number): number => Math.max(0, Math.cos(v * RADIANS));

// Closed forms of luminous flux: isotropic I = Phi / 4 pi; Lambert I0 = Phi / pi; I0 cos^n: I0 = Phi (n + 1) / 2 pi.
it('an isotropic lamp of 1000 lm has 79.577 cd: the integral of a constant is exact, whatever the steps', () => {
  const web = webOf(() => 79.577, [0, 7, 40, 91, 180], [0, 33, 90]);
  // Five digits are given: half of the last is 6e-6.
  expect(Math.abs(webFlux(web) / 1000 - 1)).toBeLessThan(7e-6);
  expect(frontShare(web)).toBeCloseTo(0.5, 12);
});

it('a Lambert lamp of 1000 lm has 318.310 cd straight down; linear steps of h cut a cosine by h2 / 12', () => {
  for (const step of [0.5, 1, 5, 10]) {
    const web = webOf((v) => 318.31 * cosine(v), steps(90, step));
    // What the straight lines between the angles miss, to the second order; the rest is of the fourth.
    const missing = (step * RADIANS) ** 2 / 12;
    expect(Math.abs(webFlux(web) / 1000 - (1 - missing))).toBeLessThan(1e-5);
    expect(frontShare(web)).toBe(1);
  }
});

it.each([
  [2, 1],
  [20, 0.5],
  [100, 0.25],
])('cos^%i of 1000 lm has I0 = 1000 (n + 1) / 2 pi (0.1 %% with steps of %d degrees)', (n, step) => {
  const web = webOf((v) => ((1000 * (n + 1)) / (2 * Math.PI)) * cosine(v) ** n, steps(90, step));
  expect(Math.abs(webFlux(web) / 1000 - 1)).toBeLessThan(1e-3);
});

it('agrees with the sum over zones, I in the middle x 2 pi (cos g1 - cos g2), IES zonal method', () => {
  const web = webOf((v) => 200 + 100 * Math.cos(3 * v * RADIANS), steps(180, 5));
  let sum = 0;
  for (let g = 0; g < 180; g += 0.5) {
    sum += intensityOf(web, g + 0.25, 0) * 2 * Math.PI * (Math.cos(g * RADIANS) - Math.cos((g + 0.5) * RADIANS));
  }
  // Zones of half a degree against the exact integral: their own error is (0.5 deg)2 / 24.
  expect(Math.abs(webFlux(web) / sum - 1)).toBeLessThan(1e-5);
});

it('takes the mean of two quadrant planes: light is linear in the horizontal angle between them', () => {
  const vertical = steps(90, 5);
  const wide = webOf(cosine, vertical);
  const narrow = webOf((v) => cosine(v) ** 3, vertical);
  const both = webOf((v, h) => (h === 0 ? cosine(v) : cosine(v) ** 3), vertical, [0, 90]);
  expect(webFlux(both)).toBeCloseTo((webFlux(wide) + webFlux(narrow)) / 2, 10);
});

it('folds by the last horizontal angle: the same lamp said by quadrant, half and whole is the same everywhere', () => {
  const law = (v: number, h: number): number => 50 + 40 * cosine(v) * Math.cos(2 * h * RADIANS);
  const vertical = steps(180, 15);
  const [quadrant, half, whole] = [90, 180, 360].map((end) => webOf(law, vertical, steps(end, 15))) as [
    PhotometricWeb,
    PhotometricWeb,
    PhotometricWeb,
  ];
  // Rounding only.
  expect(webFlux(half)).toBeCloseTo(webFlux(whole), 8);
  expect(webFlux(quadrant)).toBeCloseTo(webFlux(whole), 8);
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 180, noNaN: true }),
      fc.double({ min: -720, max: 720, noNaN: true }),
      (v, h) => {
        const expected = intensityOf(whole, v, h);
        expect(intensityOf(half, v, h)).toBeCloseTo(expected, 9);
        expect(intensityOf(quadrant, v, h)).toBeCloseTo(expected, 9);
      },
    ),
  );
});

it('reads between uneven angles by straight lines, and nothing beyond the last', () => {
  const web = webOf((v, h) => v + 10 * h, [0, 1, 3, 60, 90], [0, 10, 100, 360]);
  for (const [v, h] of [
    [0, 0],
    [0.5, 5],
    [2, 355],
    [31, 99],
    [90, 10],
  ] as const) {
    expect(intensityOf(web, v, h)).toBeCloseTo(v + 10 * h, 9);
  }
  expect(intensityOf(web, 90.1, 0)).toBe(0);
  expect(intensityOf(web, Number.NaN, 0)).toBe(0);
});

it('shares out front and back also where no angle stands at 90 degrees', () => {
  const web = webOf(() => 1, steps(180, 20));
  expect(frontShare(web)).toBeCloseTo(0.5, 12);
  expect(frontShare(webOf(() => 0, [0, 90]))).toBe(0);
});

it('a beam angle is the full angle at half the peak: 120 degrees is Lambert, 60 is cos^4.8188, 36 is cos^13.813', () => {
  expect(cosineExponent(120)).toBeCloseTo(1, 12);
  // ln 0.5 / ln cos 30 deg and ln 0.5 / ln cos 18 deg.
  expect(cosineExponent(60)).toBeCloseTo(4.8188, 4);
  expect(cosineExponent(36)).toBeCloseTo(13.8127, 4);
  for (const angle of [0, -10, 180, Number.NaN]) expect(() => cosineExponent(angle)).toThrow(RangeError);
});

it('one lumen to the front gives an integral of one over the front hemisphere, whatever the beam', () => {
  const web = webOf(
    (v, h) => 100 * cosine(v) ** 2 * (1 + 0.8 * Math.cos(h * RADIANS)) + 20,
    steps(180, 10),
    steps(360, 30),
  );
  for (const beam of [
    { kind: 'cosine-power', exponent: 20 },
    { kind: 'cosine-power', exponent: 0.3 },
    { kind: 'web', web, turn_deg: 25 },
  ] as const) {
    const ready = readyBeam(beam)!;
    const rings = 400;
    const sectors = 96;
    let sum = 0;
    for (let i = 0; i < rings; i++) {
      const dn = (i + 0.5) / rings;
      const across = Math.sqrt(1 - dn * dn);
      for (let j = 0; j < sectors; j++) {
        const turn = (2 * Math.PI * (j + 0.5)) / sectors;
        sum += relativeIntensity(ready, across * Math.cos(turn), across * Math.sin(turn), dn);
      }
    }
    // Midpoints in cos g: second-order error, worst for the narrow beam.
    expect(Math.abs((2 * Math.PI * sum) / (rings * sectors) - 1)).toBeLessThan(5e-4);
    expect(relativeIntensity(ready, 0.6, 0, -0.8)).toBe(0);
  }
});
