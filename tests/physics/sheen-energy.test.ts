import fc from 'fast-check';
import { expect, it } from 'vitest';
import { albedoRow, coatAlbedo, integrateLobe, meanCoatAlbedo, metalWhite } from '../../src/engine/sheen/albedo';
import { fresnelUnpolarized } from '../../src/engine/sheen/fresnel';
import { facetDensity, seenByBoth, unit } from '../../src/engine/sheen/ggx';
import { lobeRays } from '../../src/engine/sheen/lobe';
import { bodyOf, mirrorOf, sheenOfFinish, splitSheen } from '../../src/engine/sheen/sheen';

const AT_8 = Math.cos((8 * Math.PI) / 180);

it('has as much facet area over the hemisphere as the surface it is made of', () => {
  // Walter et al. 2007, equation 4: the integral of D cos over the normals is 1.
  for (const alpha of [0.05, 0.3, 1]) {
    let sum = 0;
    const steps = 20000;
    for (let i = 0; i < steps; i++) {
      // Even steps in the share of slopes below: tan^2 = alpha^2 u / (1 - u).
      const u = (i + 0.5) / steps;
      const tan2 = (alpha * alpha * u) / (1 - u);
      const cosine = 1 / Math.sqrt(1 + tan2);
      // d(solid angle) = 2 pi sin d(theta) = pi cos^4 d(tan^2) / cos
      const width = (alpha * alpha) / (1 - u) ** 2 / steps;
      sum +=
        facetDensity([alpha, alpha], [Math.sqrt(1 - cosine * cosine), 0, cosine]) *
        cosine *
        Math.PI *
        cosine ** 3 *
        width;
    }
    expect(sum).toBeCloseTo(1, 9);
  }
});

it('samples what the formula says: the same albedo by even directions over the hemisphere', () => {
  for (const [alpha, cosine] of [
    [0.3, 0.9],
    [0.3, 0.3],
    [0.15, 0.6],
  ] as const) {
    const eye = [Math.sqrt(1 - cosine * cosine), 0, cosine] as const;
    let sum = 0;
    const rings = 600;
    const sectors = 600;
    for (let i = 0; i < rings; i++) {
      const z = (i + 0.5) / rings;
      for (let j = 0; j < sectors; j++) {
        const turn = (Math.PI * (j + 0.5)) / sectors;
        const r = Math.sqrt(1 - z * z);
        const out = [r * Math.cos(turn), r * Math.sin(turn), z] as const;
        const half = [eye[0] + out[0], out[1], eye[2] + z] as const;
        const widths = [alpha, alpha] as const;
        sum +=
          (fresnelUnpolarized(1.5, Math.hypot(...half) / 2) *
            facetDensity(widths, unit(half)) *
            seenByBoth(widths, eye, out)) /
          (4 * cosine);
      }
    }
    const even = (2 * Math.PI * sum) / (rings * sectors);
    // Midpoints against 4096 sampled rays: half a per cent of the albedo.
    expect(Math.abs(integrateLobe(alpha, cosine, 4096).coat / even - 1)).toBeLessThan(0.005);
  }
});

it('tabulates the albedo', () => {
  for (const [alpha, cosine] of [
    [0, 1],
    [0.01, 0.3],
    [0.0225, 0.14],
    [0.05, 0.45],
    [0.11, 0.8],
    [0.2, 0.2],
    [0.31, 0.55],
  ] as const) {
    const exact = integrateLobe(alpha, cosine, 8192);
    // Straight lines between the table's points, largest towards grazing.
    const limit = 0.004 + 0.01 * (1 - cosine);
    expect(Math.abs(coatAlbedo(alpha, cosine) - exact.coat)).toBeLessThan(limit);
    expect(Math.abs(metalWhite(alpha, cosine) - exact.metalWhite)).toBeLessThan(limit);
  }
  // A smooth coat is Fresnel's; at the table's own cosines to its last figure.
  for (const i of [1, 6, 12, 16]) {
    expect(coatAlbedo(0, (i / 16) ** 2)).toBeCloseTo(fresnelUnpolarized(1.5, (i / 16) ** 2), 4);
  }
  const row = albedoRow(0.07, false);
  expect(row[9]).toBeCloseTo(coatAlbedo(0.07, (9 / 16) ** 2), 6);
});

it('mirrors 9.2 % of light from all sides where it is smooth', () => {
  // Duntley's value for an index of 1.5 (S. Q. Duntley, The optical properties of diffusing materials, 1942; from memory).
  expect(Math.abs(meanCoatAlbedo(0) - 0.092)).toBeLessThan(0.001);
});

const finishes = fc.record({
  gloss: fc.double({ min: 0, max: 100, noNaN: true }),
  rho: fc.double({ min: 0, max: 1, noNaN: true }),
  cosine: fc.double({ min: 0, max: 1, noNaN: true }),
  metal: fc.boolean(),
});

it('sends back no more than it gets from any side, and a perfect white exactly all of it (white furnace)', () => {
  fc.assert(
    fc.property(finishes, ({ gloss, rho, cosine, metal }) => {
      const sheen = sheenOfFinish(gloss, rho, metal);
      if (!sheen) return;
      const split = splitSheen(sheen, cosine);
      expect(bodyOf(split, rho) + mirrorOf(split, rho)).toBeLessThanOrEqual(1 + 1e-12);
      expect(bodyOf(split, rho)).toBeGreaterThanOrEqual(0);
      expect(bodyOf(split, 1) + mirrorOf(split, 1)).toBeCloseTo(1, 12);
    }),
  );
});

it('keeps the reflectance as measured: body and mirror sum to it at 8 degrees under light from all sides', () => {
  fc.assert(
    fc.property(finishes, ({ gloss, rho, metal }) => {
      const sheen = sheenOfFinish(gloss, rho, metal);
      // Blacker than its own mirror is no finish: the body stops at nothing.
      if (!sheen || rho < 0.041) return;
      const split = splitSheen(sheen, AT_8);
      expect(bodyOf(split, rho) + mirrorOf(split, rho)).toBeCloseTo(rho, 12);
    }),
  );
});

it('leaves a finish that is hardly glossy its reflectance, without a step where the sheen begins', () => {
  for (const metal of [false, true]) {
    for (const cosine of [0.05, 0.3, 1]) {
      const split = splitSheen(sheenOfFinish(5.0001, 0.4, metal)!, cosine);
      expect(bodyOf(split, 0.4)).toBeCloseTo(0.4, 4);
      expect(mirrorOf(split, 0.4)).toBeLessThan(1e-4);
    }
  }
});

it('is reciprocal taken direction by direction: eye and light change places without a change', () => {
  const alpha = 0.1;
  const mean = meanCoatAlbedo(alpha);
  const reflected = (a: number, b: number, turn: number) => {
    const [ra, rb] = [Math.sqrt(1 - a * a), Math.sqrt(1 - b * b)];
    const eye = [ra, 0, a] as const;
    const light = [rb * Math.cos(turn), rb * Math.sin(turn), b] as const;
    const half = [ra + light[0], light[1], a + b] as const;
    const widths = [alpha, alpha] as const;
    const lobe =
      (fresnelUnpolarized(1.5, Math.hypot(...half) / 2) *
        facetDensity(widths, unit(half)) *
        seenByBoth(widths, eye, light)) /
      4;
    const body = (0.6 * (1 - coatAlbedo(alpha, a)) * (1 - coatAlbedo(alpha, b))) / (Math.PI * (1 - mean));
    return { lobe: lobe / (a * b), body };
  };
  for (const [a, b, turn] of [
    [0.9, 0.2, 0.4],
    [0.5, 0.55, 3.1],
  ] as const) {
    expect(reflected(a, b, turn).lobe).toBeCloseTo(reflected(b, a, turn).lobe, 12);
    expect(reflected(a, b, turn).body).toBeCloseTo(reflected(b, a, turn).body, 12);
  }
  // Summed over light from all sides, that body is the one in use: body (1 - R(out)).
  let sum = 0;
  for (let i = 0; i < 400; i++) {
    const z = (i + 0.5) / 400;
    sum += (2 * Math.PI * z * reflected(0.5, z, 0).body) / 400;
  }
  expect(sum).toBeCloseTo(0.6 * (1 - coatAlbedo(alpha, 0.5)), 4);
});

it('mirrors to one side only where it is smooth, and the same way each time', () => {
  const eye = [0.6, 0, 0.8] as const;
  for (const { direction, reached } of lobeRays([0, 0], eye, 16)) {
    expect(direction[0]).toBeCloseTo(-0.6, 12);
    expect(direction[2]).toBeCloseTo(0.8, 12);
    expect(reached).toBe(1);
  }
  expect(lobeRays([0.2, 0.2], eye, 64, 3)).toEqual(lobeRays([0.2, 0.2], eye, 64, 3));
  expect(lobeRays([0.2, 0.2], eye, 64, 3)).not.toEqual(lobeRays([0.2, 0.2], eye, 64, 4));
});
