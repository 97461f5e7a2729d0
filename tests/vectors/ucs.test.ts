import { expect, it } from 'vitest';
import { cam16FromXyz } from '../../src/engine/appearance/cam16';
import { ciecam02FromXyz } from '../../src/engine/appearance/ciecam02';
import { ucsDifference, ucsFromCam } from '../../src/engine/appearance/ucs';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import { A_2, D65_2 } from '../../src/engine/color/whites';

it('has the CAM02-UCS of two colors (examples in the documentation of colour-science 0.4.7)', () => {
  const gray = viewingConditions({ white: { x: 95.05, y: 100, z: 108.88 }, la_cd_m2: 318.31, yb: 20 });
  const first = ucsFromCam(ciecam02FromXyz({ x: 19.01, y: 20, z: 21.78 }, gray));
  // Printed with seven decimals, the last cut off.
  expect(Math.abs(first.j - 54.9043313)).toBeLessThan(2e-7);
  expect(Math.abs(first.a + 0.0844236)).toBeLessThan(2e-7);
  expect(Math.abs(first.b + 0.0684831)).toBeLessThan(2e-7);

  // A screen after IEC 61966-2-1: 64 lx around it, a fifth of that as luminance; the white of x 0.3127, y 0.3290.
  const screen = viewingConditions({
    white: { x: (0.3127 / 0.329) * 100, y: 100, z: (0.3583 / 0.329) * 100 },
    la_cd_m2: (64 / Math.PI) * 0.2,
    yb: 20,
  });
  const color = { x: 20.654008, y: 12.197225, z: 5.136952 };
  const second = ucsFromCam(ciecam02FromXyz(color, screen));
  expect(Math.abs(second.j - 46.6138615)).toBeLessThan(2e-6);
  expect(Math.abs(second.a - 29.8831001)).toBeLessThan(2e-6);
  expect(Math.abs(second.b - 12.1235168)).toBeLessThan(2e-6);
});

it('is the printed formula at plain numbers', () => {
  // Luo, Cui and Li 2006: J' = 1.7 J / (1 + 0.007 J), M' = ln(1 + 0.0228 M) / 0.0228.
  expect(ucsFromCam({ j: 100, m: 0, h_deg: 0 }).j).toBeCloseTo(100, 12);
  expect(ucsFromCam({ j: 50, m: 0, h_deg: 0 }).j).toBeCloseTo(85 / 1.35, 12);
  const green = ucsFromCam({ j: 50, m: (Math.E - 1) / 0.0228, h_deg: 180 });
  expect(green.a).toBeCloseTo(-1 / 0.0228, 10);
  expect(green.b).toBeCloseTo(0, 10);
});

it('measures differences as plain distances', () => {
  expect(ucsDifference({ j: 50, a: 0, b: 0 }, { j: 52, a: 3, b: 6 })).toBe(7);
});

it('puts both spaces near each other for a surface, and apart by the light for a lamp', () => {
  const color = { x: 40, y: 40, z: 30 };
  const conditions = viewingConditions({ white: D65_2, la_cd_m2: 100, yb: 20, degree: 1 });
  const first = ucsFromCam(ciecam02FromXyz(color, conditions));
  const second = ucsFromCam(cam16FromXyz(color, conditions));
  // Li et al. 2017: the models agree to a few units on surfaces under daylight.
  expect(ucsDifference(first, second)).toBeLessThan(3);
  const lampLit = viewingConditions({ white: A_2, la_cd_m2: 10, yb: 20 });
  expect(ucsDifference(ucsFromCam(cam16FromXyz(A_2, lampLit)), { j: 100, a: 0, b: 0 })).toBeGreaterThan(4);
});
