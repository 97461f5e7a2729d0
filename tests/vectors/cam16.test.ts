import { environment, fromCam16, toCam16 } from 'colorjs.io/src/spaces/cam16.js';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cam16FromXyz, xyzFromCam16 } from '../../src/engine/appearance/cam16';
import { ciecam02FromXyz, xyzFromCiecam02 } from '../../src/engine/appearance/ciecam02';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import type { White, Xyz } from '../../src/engine/color/types';
import { A_2, C_2, D50_2, D65_2 } from '../../src/engine/color/whites';
import { mulberry32 } from '../../src/engine/random';

type Triple = [number, number, number];
const xyz = ([x, y, z]: Triple): Xyz<'setting-2'> => ({ x, y, z });
const D65: Triple = [95.05, 100, 108.88];
const A: Triple = [109.85, 100, 35.58];

// J, C, h, s, Q, M, H with colour-science 0.4.6 (equations of Li et al. 2017), average surround, Yb 20. Where the hue lies
// between blue and red its quadrature is left out: that code splits this quarter at 360 degrees.
it.each<[string, Triple, Triple, number, number[]]>([
  [
    'a near-neutral gray',
    [19.01, 20, 21.78],
    D65,
    318.31,
    [41.7312079, 0.1033557, 217.0679598, 2.3450151, 195.371709, 0.1074368, 275.5949861],
  ],
  [
    'a pink',
    [57.06, 43.06, 31.96],
    D65,
    31.83,
    [65.4282807, 49.6795642, 17.4865924, 52.9430887, 152.0698527, 42.6247332],
  ],
  [
    'a dark green under A',
    [3.53, 6.56, 2.14],
    A,
    318.31,
    [21.3605289, 50.993819, 178.8672427, 61.5795309, 139.7858277, 53.0073258, 223.0182381],
  ],
  [
    'a bluish gray under A',
    [19.01, 20, 21.78],
    A,
    31.83,
    [41.0656179, 49.0859941, 259.0337034, 59.0864604, 120.6328364, 42.115454],
  ],
])('has the correlates of %s', (_name, color, white, la_cd_m2, expected) => {
  const cam = cam16FromXyz(xyz(color), viewingConditions({ white: xyz(white), la_cd_m2, yb: 20 }));
  const ours = [cam.j, cam.c, cam.h_deg, cam.s, cam.q, cam.m, cam.hueQuadrature];
  expected.forEach((value, i) => {
    // Seven printed decimals.
    expect(Math.abs(ours[i]! - value)).toBeLessThan(1e-6);
  });
});

it('agrees with colorjs.io over 2000 colors in as many conditions, near-neutrals among them', () => {
  const random = mulberry32(16);
  const whites: Xyz<White>[] = [D65_2, D50_2, A_2, C_2];
  const surrounds = ['average', 'dim', 'dark'] as const;
  for (let i = 0; i < 2000; i++) {
    const white = whites[i % 4]!;
    const surround = surrounds[i % 3]!;
    const la_cd_m2 = 10 ** (3.5 * random());
    const yb = 5 + 60 * random();
    const spread = i % 2 ? 0.05 : 0.7;
    const y = 0.5 + 99 * random();
    const share = () => (y / 100) * (1 + spread * (random() - 0.5));
    const color = { x: white.x * share(), y, z: white.z * share() };
    const discounted = i % 5 === 0;

    const conditions = viewingConditions({ white, la_cd_m2, yb, surround, ...(discounted && { degree: 1 }) });
    const cam = cam16FromXyz(color, conditions);
    const theirConditions = environment(
      [white.x / 100, white.y / 100, white.z / 100],
      la_cd_m2,
      yb,
      surround,
      discounted,
    );
    const theirs = toCam16([color.x / 100, color.y / 100, color.z / 100], theirConditions);
    // Both compute in doubles; what differs is the order of the steps and the digits of the inverse matrix.
    expect(Math.abs(cam.j - theirs.J)).toBeLessThan(1e-6);
    expect(Math.abs(cam.c - theirs.C)).toBeLessThan(1e-6);
    expect(Math.abs(cam.m - theirs.M)).toBeLessThan(1e-6);
    expect(Math.abs(cam.q - theirs.Q)).toBeLessThan(1e-6);
    expect(Math.abs(cam.s - theirs.s)).toBeLessThan(1e-6);
    expect(Math.abs(cam.h_deg - theirs.h)).toBeLessThan(1e-6);
    expect(Math.abs(cam.hueQuadrature - theirs.H)).toBeLessThan(1e-6);
    const back = fromCam16({ J: cam.j, M: cam.m, h: cam.h_deg }, theirConditions);
    const ours = xyzFromCam16(cam, conditions);
    expect(Math.abs(ours.x - 100 * back[0])).toBeLessThan(1e-6);
    expect(Math.abs(ours.y - 100 * back[1])).toBeLessThan(1e-6);
    expect(Math.abs(ours.z - 100 * back[2])).toBeLessThan(1e-6);
  }
});

it('comes back from any pair of lightness or brightness and chroma, colorfulness or saturation', () => {
  const coordinate = (most: number) => fc.double({ min: 0.5, max: most, noNaN: true });
  const models = [
    [cam16FromXyz, xyzFromCam16],
    [ciecam02FromXyz, xyzFromCiecam02],
  ] as const;
  fc.assert(
    fc.property(
      fc.constantFrom(...models),
      fc.constantFrom('average', 'dim', 'dark'),
      coordinate(1000),
      coordinate(100),
      fc.tuple(fc.double({ min: 0.7, max: 1.4, noNaN: true }), fc.double({ min: 0.7, max: 1.4, noNaN: true })),
      ([forward, backward], surround, la_cd_m2, y, [redder, bluer]) => {
        const conditions = viewingConditions({ white: D65_2, la_cd_m2, yb: 20, surround });
        const color = { x: (y / 100) * redder * D65_2.x, y, z: (y / 100) * bluer * D65_2.z };
        const { j, q, m, c, s, h_deg } = forward(color, conditions);
        for (const given of [
          { j, m, h_deg },
          { j, c, h_deg },
          { j, s, h_deg },
          { q, m, h_deg },
          { q, c, h_deg },
          { q, s, h_deg },
        ]) {
          const back = backward(given, conditions);
          // Rounding of doubles; the saturation's square and the powers 1/0.9 and 1/0.42 multiply it.
          expect(Math.abs(back.x - color.x)).toBeLessThan(1e-9);
          expect(Math.abs(back.y - color.y)).toBeLessThan(1e-9);
          expect(Math.abs(back.z - color.z)).toBeLessThan(1e-9);
        }
      },
    ),
  );
});

it('makes a perfect white neutral and J 100 at full adaptation, and black black', () => {
  const conditions = viewingConditions({ white: A_2, la_cd_m2: 60, yb: 20, degree: 1 });
  const white = cam16FromXyz(A_2, conditions);
  expect(white.j).toBeCloseTo(100, 10);
  // All three adapted responses equal Yw: what is left is rounding, to the power 0.9.
  expect(white.m).toBeLessThan(1e-9);
  expect(cam16FromXyz({ x: 0, y: 0, z: 0 }, conditions)).toMatchObject({ j: 0, c: 0, q: 0, m: 0, s: 0 });
  expect(xyzFromCam16({ j: 0, m: 0, h_deg: 0 }, conditions)).toEqual({ x: 0, y: 0, z: 0 });
});

it('leaves some of the light in an incompletely adapted white', () => {
  const seen = (la_cd_m2: number) => cam16FromXyz(A_2, viewingConditions({ white: A_2, la_cd_m2, yb: 20 }));
  // The yellow of lamp light is seen, and less of it in more light.
  expect(seen(5).m).toBeGreaterThan(seen(60).m);
  expect(seen(60).m).toBeGreaterThan(2);
  expect(seen(5).h_deg).toBeGreaterThan(40);
  expect(seen(5).h_deg).toBeLessThan(110);
});
