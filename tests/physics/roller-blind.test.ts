import fc from 'fast-check';
import { expect, it } from 'vitest';
import { outdoorsAt } from '../../src/engine/daylight/outdoors';
import { paneLx } from '../../src/engine/daylight/pane-lx';
import { loweredBlind } from '../../src/engine/daylight/roller-blind';
import { skyLx } from '../../src/engine/daylight/sky-illuminance';
import type { Outdoors } from '../../src/engine/daylight/types';
import { groundLx, sunLx } from '../../src/engine/daylight/upright-lx';
import { paneTransmittance } from '../../src/engine/light/glass';
import type { Vec3 } from '../../src/engine/light/types';

it('is let down so far that open window and cloth let through the share of the setting', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
      const { covered, transmittance } = loweredBlind(share);
      expect(covered).toBeGreaterThanOrEqual(0);
      expect(covered).toBeLessThanOrEqual(1);
      expect(1 - covered + covered * transmittance).toBeCloseTo(share, 12);
    }),
  );
  expect(loweredBlind(1).covered).toBe(0);
  expect(loweredBlind(0)).toEqual({ covered: 1, transmittance: 0 });
});

const SOUTH_WEST: Vec3 = [-0.6, -0.8, 0];

it('has behind an open hole the light of an upright plane, by sky, sun and ground', () => {
  for (const sky of ['overcast', 'clear'] as const) {
    const { outdoors } = outdoorsAt({
      site: { latitude_deg: 50, longitude_deg: 10, utc_offset_h: 1 },
      moment: { month: 5, day: 10, hour: 15.5 },
      sky,
      bearing_deg: 0,
      ground: 'paving',
      facing: 'brick',
      windowNormals: [SOUTH_WEST],
    });
    const lx = paneLx(outdoors, SOUTH_WEST, 0, 0);
    expect(Math.abs(lx.sky / skyLx(outdoors.sky, SOUTH_WEST) - 1)).toBeLessThan(1e-6);
    expect(lx.sun).toBeCloseTo(sunLx(outdoors, SOUTH_WEST), 6);
    expect(Math.abs(lx.ground / groundLx(outdoors, SOUTH_WEST) - 1)).toBeLessThan(1e-3);
    expect(lx.facing).toBe(0);
    // Glass takes away more than its loss straight on, and not much more of light from all sides.
    const glazed = paneLx(outdoors, SOUTH_WEST, 2, 0);
    const share = glazed.sky / lx.sky / paneTransmittance(1, 2);
    expect(share).toBeLessThan(1);
    expect(share).toBeGreaterThan(0.8);
  }
});

it('parts an even sky at the top of a wall across the way by the sine of its elevation', () => {
  // Form factor of a strip without end seen from an upright plane (J. R. Howell, A Catalog of Radiation Heat Transfer Configuration
  // Factors): half the sine of its upper edge's elevation.
  const outdoors: Outdoors = {
    sky: { zenith_cdm2: 1000, a: 0, b: 0, c: 0, d: 0, e: 0, towardsSun: [0, 0, 1] },
    sun: null,
    ground_cdm2: 0,
    facing_reflectance: 1,
  };
  for (const degrees of [15, 40]) {
    const lx = paneLx(outdoors, SOUTH_WEST, 0, degrees);
    const sine = Math.sin((degrees * Math.PI) / 180);
    // The edge falls between nodes of the quadrature: 3 %.
    expect(Math.abs(lx.sky / ((Math.PI * 1000 * (1 - sine)) / 2) - 1)).toBeLessThan(0.03);
    // A white wall under half that sky is half as bright.
    expect(Math.abs(lx.facing / ((Math.PI * 500 * sine) / 2) - 1)).toBeLessThan(1e-3);
  }
});
