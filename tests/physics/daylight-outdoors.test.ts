import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { inRoom } from '../../src/engine/daylight/in-room';
import { outdoorReflectance } from '../../src/engine/daylight/outdoor-reflectance';
import { type OutdoorSetting, outdoorsAt } from '../../src/engine/daylight/outdoors';
import { skyHorizontalLx, skyLx } from '../../src/engine/daylight/sky-illuminance';
import { skyLuminance } from '../../src/engine/daylight/sky-kinds';
import { luminanceOfSky } from '../../src/engine/daylight/sky-luminance';
import { sunPosition } from '../../src/engine/daylight/sun-position';
import { facingLuminance, uprightLx } from '../../src/engine/daylight/upright-lx';
import type { Vec3 } from '../../src/engine/light/types';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { EmissionSpd } from '../../src/engine/spectrum/types';

const BACK: Vec3 = [0, 1, 0];
const LEFT: Vec3 = [-1, 0, 0];
const BERLIN = { latitude_deg: 52.5, longitude_deg: 13.4, utc_offset_h: 1 };

const setting = (change: Partial<OutdoorSetting>): OutdoorSetting => ({
  site: BERLIN,
  moment: { month: 3, day: 20, hour: 12 },
  sky: 'clear',
  bearing_deg: 0,
  ground: 'paving',
  facing: 'brick',
  windowNormals: [BACK],
  ...change,
});

const anyMoment = fc.record({
  month: fc.integer({ min: 1, max: 12 }),
  day: fc.integer({ min: 1, max: 31 }),
  hour: fc.double({ min: 0, max: 24, noNaN: true }),
});
const anySite = fc.record({
  latitude_deg: fc.oneof(fc.double({ min: -90, max: 90, noNaN: true }), fc.constantFrom(-90, 0, 90)),
  longitude_deg: fc.double({ min: -180, max: 180, noNaN: true }),
  utc_offset_h: fc.double({ min: -12, max: 14, noNaN: true }),
});
const anySetting: fc.Arbitrary<OutdoorSetting> = fc.record({
  site: anySite,
  moment: anyMoment,
  sky: fc.constantFrom('clear' as const, 'overcast' as const),
  bearing_deg: fc.double({ min: -360, max: 720, noNaN: true }),
  ground: fc.constantFrom('paving', 'greenery', 'brick', 'snow', 'soil', 'light-render'),
  facing: fc.constantFrom('paving', 'greenery', 'brick', 'snow', 'soil', 'light-render'),
  windowNormals: fc.subarray<Vec3>([BACK, LEFT, [1, 0, 0], [0, 0, 1], [0, 0.6, 0.8]]),
});

describe('the course of the sun', () => {
  it('reaches 90 - latitude + declination at noon, and the tropics at the solstices', () => {
    // Declination at the solstices of the 2020s: the obliquity, 23.44 degrees (Meeus, equation 22.2); to 0.02 for the hour.
    for (const [month, declination] of [
      [6, 23.436],
      [12, -23.436],
    ] as const) {
      for (const latitude_deg of [-33.9, 0, 40, 66]) {
        let highest = -90;
        for (let minute = 0; minute < 1440; minute++) {
          const site = { latitude_deg, longitude_deg: 0, utc_offset_h: 0 };
          highest = Math.max(highest, sunPosition(site, { month, day: 21, hour: minute / 60 }).elevation_deg);
        }
        expect(Math.abs(highest - (90 - Math.abs(latitude_deg - declination)))).toBeLessThan(0.02);
      }
    }
  });

  it('rises in the east at the equinox, wherever one stands', () => {
    for (const latitude_deg of [-50, -20, 0, 30, 60]) {
      const site = { latitude_deg, longitude_deg: 0, utc_offset_h: 0 };
      let rise: number | null = null;
      for (let hour = 4; hour < 8 && rise === null; hour += 1 / 240) {
        const sun = sunPosition(site, { month: 3, day: 20, hour });
        if (sun.elevation_deg >= 0) rise = sun.azimuth_deg;
      }
      // The declination is within 0.1 degree of 0 that morning; at 60 degrees that turns the sunrise by twice as much.
      expect(Math.abs(rise! - 90)).toBeLessThan(0.3);
    }
  });

  it('is even about solar noon', () => {
    fc.assert(
      fc.property(anySite, anyMoment, fc.double({ min: 0, max: 6, noNaN: true }), (site, { month, day }, away) => {
        // Solar noon by the declination's middle: halfway between equal azimuth offsets would be circular, so by the hour angle.
        const noon = 12 - site.longitude_deg / 15 + site.utc_offset_h - equationOfTime_h(site, month, day);
        const before = sunPosition(site, { month, day, hour: noon - away }).elevation_deg;
        const after = sunPosition(site, { month, day, hour: noon + away }).elevation_deg;
        // The declination moves by up to 0.4 degree a day, 0.2 in twice six hours; the equation of time adds a little.
        expect(Math.abs(before - after)).toBeLessThan(0.25);
      }),
      { numRuns: 200 },
    );
  });
});

/** Equation of time from where the sun culminates at the equator of the same meridian, hours. */
function equationOfTime_h(site: OutdoorSetting['site'], month: number, day: number): number {
  const clock = 12 - site.longitude_deg / 15 + site.utc_offset_h;
  const east = (hour: number) => {
    const sun = sunPosition({ ...site, latitude_deg: 0 }, { month, day, hour });
    return inRoom(sun.azimuth_deg, sun.elevation_deg, 0)[0];
  };
  let [low, high] = [clock - 1, clock + 1];
  for (let k = 0; k < 40; k++) {
    const middle = (low + high) / 2;
    if (east(middle) > 0) low = middle;
    else high = middle;
  }
  return clock - low;
}

describe('light on planes under a sky', () => {
  it('has the closed forms of a uniform sky', () => {
    const sky = skyLuminance('uniform', BACK, 1000);
    expect(skyHorizontalLx(sky)).toBeCloseTo(Math.PI * 1000, 6);
    for (const tilt of [0, 30, 60, 90, 120, 150]) {
      const angle = (tilt * Math.PI) / 180;
      const normal: Vec3 = [Math.sin(angle), 0, Math.cos(angle)];
      // A tilted plane sees (1 + cos tilt) / 2 of a half space of sky.
      expect(skyLx(sky, normal)).toBeCloseTo((Math.PI * 1000 * (1 + Math.cos(angle))) / 2, 3);
    }
  });

  it('has the closed form of an overcast sky', () => {
    // The integral of 2 pi mu (1 + a exp(b / mu)) is pi (1 + 2 a E3(-b)); E3 by its series (Abramowitz, Stegun 5.1.12).
    const b = 0.7;
    const e1 = -0.5772156649015329 - Math.log(b) + seriesE1(b);
    const e3 = (Math.exp(-b) * (1 - b) + b * b * e1) / 2;
    const expected = (Math.PI * (1 + 8 * e3)) / (1 + 4 * Math.exp(-b));
    // The quadrature's own error.
    expect(Math.abs(skyHorizontalLx(skyLuminance('overcast', BACK, 1)) / expected - 1)).toBeLessThan(1e-6);
  });

  it('does not change when bearing and azimuth turn together', () => {
    const still = skyLuminance('clear', inRoom(200, 33, 0), 1000);
    for (const turn of [17, 90, 233]) {
      const turned = skyLuminance('clear', inRoom(200, 33, turn), 1000);
      for (const azimuth of [0, 140, 200]) {
        const [before, after] = [inRoom(azimuth, 0, 0), inRoom(azimuth, 0, turn)];
        expect(skyLx(turned, after) / skyLx(still, before)).toBeCloseTo(1, 9);
      }
    }
  });
});

/** The alternating series of E1 beyond its logarithm. */
function seriesE1(x: number): number {
  let [sum, term] = [0, 1];
  for (let n = 1; n < 40; n++) {
    term *= -x / n;
    sum -= term / n;
  }
  return sum;
}

/** Upright over horizontal illuminance of ISO type 1; no azimuth is left in it. */
describe('the outdoors of a room', () => {
  it('is finite and never negative, wherever and whenever', () => {
    fc.assert(
      fc.property(anySetting, (any) => {
        const { outdoors, spectra, sky_lx, sun_lx } = outdoorsAt(any);
        for (const spd of Object.values(spectra)) {
          expect(spd.every((power: number) => power >= 0 && Number.isFinite(power))).toBe(true);
          // Per lux.
          expect(xyzFromEmission(spd as EmissionSpd, observer2).y).toBeCloseTo(1, 9);
        }
        for (const normal of [BACK, LEFT, [0, 0, 1] as Vec3, [0, -0.6, -0.8] as Vec3]) {
          for (const amount of [
            uprightLx(outdoors, normal),
            facingLuminance(outdoors, normal),
            luminanceOfSky(outdoors.sky, normal),
          ]) {
            expect(amount).toBeGreaterThanOrEqual(0);
            expect(amount).toBeLessThan(1e6);
          }
        }
        expect(Math.abs(skyHorizontalLx(outdoors.sky) - sky_lx)).toBeLessThan(1e-9 * (1 + sky_lx));
        const horizontal = outdoors.sun ? outdoors.sun.normal_lx * outdoors.sun.towards[2] : 0;
        expect(horizontal).toBeCloseTo(sun_lx, 6);
        expect(outdoors.ground_cdm2).toBeGreaterThanOrEqual(0);
        expect(outdoors.facing_reflectance).toBeGreaterThan(0);
        expect(outdoors.facing_reflectance).toBeLessThan(1);
      }),
      { numRuns: 150 },
    );
  });

  it('is dark at night, with spectra that can still be used', () => {
    const night = outdoorsAt(setting({ moment: { month: 1, day: 5, hour: 1 } }));
    expect([night.sky_lx, night.sun_lx, night.outdoors.ground_cdm2, night.outdoors.sun]).toEqual([0, 0, 0, null]);
    expect(uprightLx(night.outdoors, BACK)).toBe(0);
    expect(facingLuminance(night.outdoors, BACK)).toBe(0);
  });

  it('turns with the house: a window that faces the same way sees the same', () => {
    const north = outdoorsAt(setting({ bearing_deg: 0, windowNormals: [BACK] }));
    // The back wall faces east, so the left side faces north.
    const turned = outdoorsAt(setting({ bearing_deg: 90, windowNormals: [LEFT] }));
    // The quadrature of the horizontal is cut elsewhere then, which shows in the eighth digit.
    expect(uprightLx(turned.outdoors, LEFT) / uprightLx(north.outdoors, BACK)).toBeCloseTo(1, 6);
    expect(facingLuminance(turned.outdoors, LEFT) / facingLuminance(north.outdoors, BACK)).toBeCloseTo(1, 6);
    for (const [i, power] of turned.spectra.sky.entries()) expect(power / north.spectra.sky[i]!).toBeCloseTo(1, 6);
  });

  it('keeps the ground as bright as its reflectance says', () => {
    // Under an overcast sky alone the ground's luminance is rho E / pi with rho under D65.
    const dull = outdoorsAt(setting({ sky: 'overcast', sky_lx: 10_000, ground: 'snow' }));
    expect(dull.sky_lx).toBe(10_000);
    expect(dull.outdoors.sun).toBeNull();
    expect(dull.outdoors.ground_cdm2).toBeCloseTo((0.78 * 10_000) / Math.PI, 6);
    // The ground's spectrum is that of the sky times the reflectance, up to the scale.
    const rho = outdoorReflectance('snow');
    const scale = dull.spectra.ground[36]! / (dull.spectra.sky[36]! * rho[36]!);
    for (const [i, power] of dull.spectra.ground.entries()) {
      expect(power).toBeCloseTo(scale * dull.spectra.sky[i]! * rho[i]!, 12);
    }
    // Upright, without what the ground sends up: 0.396177 of the horizontal (Moon and Spencer's sky, (1 + 2 sin) / 3; closed
    // form 3/7 (1/2 + 4 / (3 pi)), A. Moon and D. Spencer, 1942).
    const share = (uprightLx(dull.outdoors, BACK) - (Math.PI * dull.outdoors.ground_cdm2) / 2) / 10_000;
    expect(share).toBeCloseTo((3 / 7) * (1 / 2 + 4 / (3 * Math.PI)), 5);
    // A given level counts for the overcast sky only.
    expect(outdoorsAt(setting({ sky_lx: 10 })).sky_lx).toBeGreaterThan(10_000);
  });

  it('lights the wall across from the window by what that wall faces', () => {
    // At noon the wall across from a north window faces south, into the sun.
    const { outdoors } = outdoorsAt(setting({ facing: 'light-render' }));
    const south = uprightLx(outdoors, [0, -1, 0]);
    expect(facingLuminance(outdoors, BACK)).toBeCloseTo((outdoors.facing_reflectance * south) / Math.PI, 9);
    expect(south).toBeGreaterThan(3 * uprightLx(outdoors, BACK));
    // A roof window has no wall across; a leaning one has that of its upright facing.
    expect(facingLuminance(outdoors, [0, 0, 1])).toBe(0);
    expect(facingLuminance(outdoors, [0, 0.6, 0.8])).toBeCloseTo(facingLuminance(outdoors, BACK), 9);
  });
});
