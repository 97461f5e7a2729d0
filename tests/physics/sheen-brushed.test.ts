import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Vec3 } from '../../src/engine/light/types';
import { metalWhite } from '../../src/engine/sheen/albedo';
import { brushTaps } from '../../src/engine/sheen/brush-taps';
import { schlickWeight } from '../../src/engine/sheen/fresnel';
import { facetDensity, mirroredDensity, seenByBoth, unit, type Widths } from '../../src/engine/sheen/ggx';
import { glossMeterReading } from '../../src/engine/sheen/gloss-meter';
import { lobeRays } from '../../src/engine/sheen/lobe';
import { BRUSH_RATIO, sheenOfFinish } from '../../src/engine/sheen/sheen';
import { brushLine } from '../../src/kitchen/study/brush-line';

const BRUSHED: Widths = [0.065, 0.26];
const towards = (cosine: number, turn: number): Vec3 => {
  const sine = Math.sqrt(1 - cosine * cosine);
  return [sine * Math.cos(turn), sine * Math.sin(turn), cosine];
};
/** Reflected radiance per irradiance of perfectly mirroring facets: D G2 / (4 cos cos). */
const brdf = (widths: Widths, a: Vec3, b: Vec3): number =>
  (facetDensity(widths, unit([a[0] + b[0], a[1] + b[1], a[2] + b[2]])) * seenByBoth(widths, a, b)) / (4 * a[2] * b[2]);

const sides = fc.record({
  a: fc.double({ min: 0.02, max: 1, noNaN: true }),
  b: fc.double({ min: 0.02, max: 1, noNaN: true }),
  turnA: fc.double({ min: 0, max: 6.28, noNaN: true }),
  turnB: fc.double({ min: 0, max: 6.28, noNaN: true }),
  along: fc.double({ min: 0.005, max: 0.5, noNaN: true }),
  across: fc.double({ min: 0.005, max: 0.5, noNaN: true }),
});

it('is reciprocal: eye and light change places without a change', () => {
  fc.assert(
    fc.property(sides, ({ a, b, turnA, turnB, along, across }) => {
      const [eye, light] = [towards(a, turnA), towards(b, turnB)];
      const there = brdf([along, across], eye, light);
      expect(Math.abs(brdf([along, across], light, eye) / there - 1)).toBeLessThan(1e-9);
    }),
  );
});

it('is the even lobe where both widths are the same, whatever the turn', () => {
  fc.assert(
    fc.property(sides, ({ a, b, turnA, turnB, along }) => {
      const even = brdf([along, along], towards(a, turnA), towards(b, turnB));
      // Walter et al. 2007, equations 33 and 34 with the correlated G2 of Heitz 2014, by the cosines alone.
      const [eye, light] = [towards(a, 0), towards(b, turnB - turnA)];
      const h = unit([eye[0] + light[0], eye[1] + light[1], eye[2] + light[2]]);
      const tan2 = (c: number) => 1 / (c * c) - 1;
      const density = along ** 2 / (Math.PI * h[2] ** 4 * (along ** 2 + tan2(h[2])) ** 2);
      const lambda = (c: number) => (Math.sqrt(1 + along ** 2 * tan2(c)) - 1) / 2;
      const expected = density / (1 + lambda(a) + lambda(b)) / (4 * a * b);
      expect(Math.abs(even / expected - 1)).toBeLessThan(1e-6);
    }),
  );
});

it('has as much facet area over the hemisphere as the surface it is made of, and wider slopes across the brush', () => {
  // Heitz 2014: the integral of D cos over the normals is 1. Even steps in the share of slopes below and in their turn.
  let area = 0;
  const steps = 400;
  for (let i = 0; i < steps; i++) {
    const u = (i + 0.5) / steps;
    const r = Math.sqrt(u / (1 - u));
    for (let j = 0; j < 32; j++) {
      const turn = (2 * Math.PI * (j + 0.5)) / 32;
      const [x, y] = [BRUSHED[0] * r * Math.cos(turn), BRUSHED[1] * r * Math.sin(turn)];
      const cosine = 1 / Math.hypot(x, y, 1);
      // Slopes: d(solid angle) = cos^3 dx dy, and dx dy = ax ay r dr d(turn) = ax ay / (2 (1 - u)^2) du d(turn).
      const width = ((BRUSHED[0] * BRUSHED[1]) / (2 * (1 - u) ** 2)) * ((2 * Math.PI) / 32 / steps);
      area += facetDensity(BRUSHED, [x * cosine, y * cosine, cosine]) * cosine ** 4 * width;
    }
  }
  expect(area).toBeCloseTo(1, 9);
  expect(facetDensity(BRUSHED, towards(0.97, Math.PI / 2))).toBeGreaterThan(
    50 * facetDensity(BRUSHED, towards(0.97, 0)),
  );
});

it('sends back no more than it gets from any side (white furnace), and what facets catch is given back to a metal', () => {
  for (const [cosine, turn] of [
    [0.9, 0.4],
    [0.4, 0],
    [0.4, 1.57],
    [0.15, 0.8],
  ] as const) {
    const eye = towards(cosine, turn);
    // By even directions over the hemisphere, the upper bound of which is 1: one bounce alone.
    let once = 0;
    const [rings, sectors] = [300, 300];
    for (let i = 0; i < rings; i++) {
      const z = (i + 0.5) / rings;
      for (let j = 0; j < sectors; j++) {
        const light = towards(z, (2 * Math.PI * (j + 0.5)) / sectors);
        once += (brdf([0.2, 0.4], eye, light) * z * 2 * Math.PI) / (rings * sectors);
      }
    }
    const rays = lobeRays([0.2, 0.4], eye, 4096);
    const sampled = rays.reduce((sum, { reached }) => sum + reached, 0) / 4096;
    expect(once).toBeLessThan(1);
    expect(Math.abs(sampled / once - 1)).toBeLessThan(0.005);
    // The taps are a mean: a room of one brightness shows as bright as it is.
    expect(brushTaps(BRUSHED, eye).reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  }
});

it('knows how thickly its rays fall', () => {
  const eye = towards(0.6, 0.7);
  const rays = lobeRays(BRUSHED, eye, 32768);
  const middle = unit([-eye[0], -eye[1] + 0.15, eye[2]]);
  const inCap = rays.filter(({ direction }) => direction.reduce((s, x, k) => s + x * middle[k]!, 0) > Math.cos(0.03));
  // A cap of 0.03 rad, over which the density hardly bends.
  const expected = mirroredDensity(BRUSHED, eye, middle) * 2 * Math.PI * (1 - Math.cos(0.03));
  expect(Math.abs(inCap.length / 32768 / expected - 1)).toBeLessThan(0.03);
});

it('has the white of an even lobe of the mean width, averaged over all sides one may look from', () => {
  const sheen = sheenOfFinish(50, 0.47, true, true)!;
  for (const [cosine, limit] of [
    [0.1, 0.02],
    [0.3, 0.008],
    [0.7, 0.004],
  ] as const) {
    let mean = 0;
    for (let k = 0; k < 8; k++) {
      let white = 0;
      let all = 0;
      for (const ray of lobeRays(sheen.widths!, towards(cosine, ((k + 0.5) * Math.PI) / 16), 1024, k)) {
        white += ray.reached * schlickWeight(ray.cosine);
        all += ray.reached;
      }
      mean += white / all / 8;
    }
    expect(Math.abs(metalWhite(sheen.alpha, cosine) - mean)).toBeLessThan(limit);
  }
});

it('reads the gloss it was given, as the mean of readings along the brush and across', () => {
  for (const gloss of [20, 50, 100, 300, 700]) {
    const [along, across] = sheenOfFinish(gloss, 0.9, true, true)!.widths!;
    expect(across / along).toBeCloseTo(BRUSH_RATIO, 9);
    const mean = (glossMeterReading([along, across], 1.567) + glossMeterReading([across, along], 1.567)) / 2;
    // Units of a mirror of all light over those of black glass (ISO 2813): as of any metal.
    const smooth = 0.9 + 0.1 * schlickWeight(0.5);
    expect(Math.abs((mean * smooth * 9.99) / gloss - 1)).toBeLessThan(0.015);
  }
  expect(sheenOfFinish(50, 0.5, false, true)!.widths).toBeUndefined();
});

it('shows in eight lookups what very many rays show of a room that changes softly', () => {
  // A room that grows brighter to one side, of brightness 1 in the mean.
  const soft = ([x, y, z]: Vec3) => 1 + 0.5 * x + 0.8 * y + 0.3 * z * y;
  for (const [cosine, turn] of [
    [0.98, 0.3],
    [0.7, 0.1],
    [0.7, 1.5],
    [0.35, 1.2],
  ] as const) {
    const eye = towards(cosine, turn);
    const rays = lobeRays(BRUSHED, eye, 8192);
    const all = rays.reduce((sum, { reached }) => sum + reached, 0);
    const whole = rays.reduce((sum, { reached, direction }) => sum + reached * soft(direction), 0) / all;
    const taps = brushTaps(BRUSHED, eye).reduce((sum, { weight, direction }) => sum + weight * soft(direction), 0);
    // Slopes along the brush stand for their middle: 0.001 straight on, 0.03 at a slant across the brush.
    expect(Math.abs(taps - whole)).toBeLessThan(cosine > 0.9 ? 0.003 : 0.035);
  }
});

it('runs along the pattern, turned with it', () => {
  const upright = {
    edges: [
      [0.5, 0, 0],
      [0, 0, 2],
    ],
    onPattern: [
      [0, 0.5],
      [2, 0],
    ],
  } as const;
  const front: Vec3 = [0, -1, 0];
  const same = (line: Vec3, expected: Vec3) =>
    expect(Math.abs(line.reduce((sum, x, k) => sum + x * expected[k]!, 0))).toBeCloseTo(1, 9);
  same(brushLine(upright, front, 0), [0, 0, 1]);
  same(brushLine(upright, front, 90), [1, 0, 0]);
  // A face with no place on a pattern is brushed upright.
  same(
    brushLine(
      {
        ...upright,
        onPattern: [
          [0, 0],
          [0, 0],
        ],
      },
      front,
      0,
    ),
    [0, 0, 1],
  );
});
