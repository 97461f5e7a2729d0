import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cam16FromXyz, xyzFromCam16 } from '../../src/engine/appearance/cam16';
import { ciecam02FromXyz, xyzFromCiecam02 } from '../../src/engine/appearance/ciecam02';
import type { Cam } from '../../src/engine/appearance/correlates';
import { ucsFromCam } from '../../src/engine/appearance/ucs';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import { whiteOf, xyzFromReflectance } from '../../src/engine/color/xyz';
import { GRID_COUNT } from '../../src/engine/spectrum/grid';
import { LIGHT_IDS, lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';

// Reflectances that are 0 or 1 with two steps are the surface of the object-colour solid (Schrodinger 1920); mixed with a
// gray they fill it. One sample wide and faint they come as near to light of one wavelength as any surface does.
const reflectances = fc
  .record({
    from: fc.nat({ max: GRID_COUNT - 1 }),
    width: fc.integer({ min: 0, max: GRID_COUNT }),
    inside: fc.double({ min: 0, max: 1, noNaN: true }),
    outside: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1, noNaN: true })),
  })
  .map(({ from, width, inside, outside }) => {
    const rho = new Float64Array(GRID_COUNT).fill(outside);
    for (let i = 0; i < width; i++) rho[(from + i) % GRID_COUNT] = inside;
    return rho as ReflectanceSpd;
  });

const seen = fc
  .record({
    rho: reflectances,
    light: fc.constantFrom(...LIGHT_IDS),
    la_cd_m2: fc.double({ min: 0.1, max: 5000, noNaN: true }),
    yb: fc.double({ min: 1, max: 100, noNaN: true }),
    surround: fc.constantFrom('average' as const, 'dim' as const, 'dark' as const),
    degree: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ rho, light, ...under }) => {
    const spd = lightById(light)!;
    return {
      color: xyzFromReflectance(rho, spd, observer2),
      conditions: viewingConditions({ white: whiteOf(spd, observer2), ...under }),
    };
  });

const isSound = (cam: Cam) =>
  [cam.j, cam.c, cam.q, cam.m, cam.s].every((value) => value >= 0 && value < 1e4) &&
  cam.h_deg >= 0 &&
  cam.h_deg < 360 &&
  cam.hueQuadrature >= 0 &&
  cam.hueQuadrature <= 400 &&
  Object.values(ucsFromCam(cam)).every(Number.isFinite);

it('says something of every color a surface can have under any CIE light', () => {
  fc.assert(
    fc.property(seen, ({ color, conditions }) => {
      expect(isSound(cam16FromXyz(color, conditions))).toBe(true);
      expect(isSound(ciecam02FromXyz(color, conditions))).toBe(true);
    }),
    { numRuns: 2000 },
  );
});

it('never finds a surface blacker than black in CAM16, nor one lighter than its white', () => {
  fc.assert(
    fc.property(seen, ({ color, conditions }) => {
      const { j } = cam16FromXyz(color, conditions);
      // Rounding at the white itself.
      expect(j).toBeLessThan(100 + 1e-9);
      if (color.y > 1e-9) expect(j).toBeGreaterThan(0);
    }),
    { numRuns: 1000 },
  );
});

it('finds every such color again from its correlates, but for what CIECAM02 takes below black', () => {
  fc.assert(
    fc.property(seen, ({ color, conditions }) => {
      const again = [xyzFromCam16(cam16FromXyz(color, conditions), conditions)];
      const older = ciecam02FromXyz(color, conditions);
      if (older.j > 0) again.push(xyzFromCiecam02(older, conditions));
      for (const back of again) {
        // Rounding of doubles, larger the fainter the color is in its weakest response.
        expect(Math.abs(back.x - color.x)).toBeLessThan(1e-8);
        expect(Math.abs(back.y - color.y)).toBeLessThan(1e-8);
        expect(Math.abs(back.z - color.z)).toBeLessThan(1e-8);
      }
    }),
    { numRuns: 1000 },
  );
});

it('stays a number even where CIECAM02 itself ends: faint violet of one wavelength, and colors no surface has', () => {
  const spd = lightById('D75')!;
  const conditions = viewingConditions({ white: whiteOf(spd, observer2), la_cd_m2: 1000, yb: 20, degree: 1 });
  const violet = new Float64Array(GRID_COUNT);
  violet[(420 - 380) / 5] = 1;
  const faint = ciecam02FromXyz(xyzFromReflectance(violet as ReflectanceSpd, spd, observer2), conditions);
  expect(isSound(faint)).toBe(true);
  expect(faint).toMatchObject({ j: 0, c: 0, m: 0, q: 0 });
  for (const color of [
    { x: -5, y: 1, z: 200 },
    { x: 0, y: 0, z: -40 },
    { x: 30, y: -10, z: 0 },
  ]) {
    expect(isSound(ciecam02FromXyz(color, conditions))).toBe(true);
    expect(isSound(cam16FromXyz(color, conditions))).toBe(true);
  }
});
