import { describe, expect, it } from 'vitest';
import { julianDay } from '../../src/engine/daylight/julian-day';
import { sunOnSphere, sunPosition, sunPositionAt } from '../../src/engine/daylight/sun-position';

/** Refraction lifts the sun; Saemundsson's formula as SPA uses it (I. Reda, A. Andreas, NREL/TP-560-34302, eq. 42). */
function refraction_deg(elevation_deg: number, pressure_mbar: number, temperature_c: number): number {
  const angle = ((elevation_deg + 10.3 / (elevation_deg + 5.11)) * Math.PI) / 180;
  return (pressure_mbar / 1010) * (283 / (273 + temperature_c)) * (1.02 / (60 * Math.tan(angle)));
}

describe('where the sun stands', () => {
  it('counts days as Meeus, Astronomical Algorithms, chapter 7', () => {
    // Sputnik 1; 1 January 2000 noon; examples of the chapter's list. Exact in doubles to 1e-6.
    expect(julianDay(1957, 10, 4.81, 0)).toBeCloseTo(2436116.31, 6);
    expect(julianDay(2000, 1, 1, 12)).toBe(2451545);
    expect(julianDay(1988, 1, 27, 0)).toBe(2447187.5);
    expect(julianDay(1900, 1, 1, 0)).toBe(2415020.5);
  });

  it('meets example 25.a of Meeus, 13 October 1992 0 h TD', () => {
    const sun = sunOnSphere(2448908.5);
    // Printed to five decimals.
    expect(sun.rightAscension_deg).toBeCloseTo(198.38083, 4);
    expect(sun.declination_deg).toBeCloseTo(-7.78507, 4);
  });

  it.each([
    // I. Reda, A. Andreas, Solar position algorithm for solar radiation applications, NREL/TP-560-34302, appendix A.5.
    {
      place: 'Golden, Colorado',
      jd: julianDay(2003, 10, 17, 19 + 30.5 / 60),
      lat: 39.742476,
      lon: -105.1786,
      mbar: 820,
      c: 11,
      azimuth: 194.34024,
      zenith: 50.11162,
    },
    // Computed by NREL's SPA program: reference values in the tests of the library solarpositioning (MIT).
    {
      place: '41 degrees south',
      jd: julianDay(2012, 12, 22, 12),
      lat: -41,
      lon: 0,
      mbar: 1000,
      c: 20,
      azimuth: 359.08592,
      zenith: 17.5658,
    },
    {
      place: '3 degrees south',
      jd: julianDay(2012, 12, 22, 12),
      lat: -3,
      lon: 0,
      mbar: 1000,
      c: 20,
      azimuth: 180.790356,
      zenith: 20.4285,
    },
    {
      place: 'Manaus',
      jd: julianDay(2015, 6, 12, 13 + 34 / 60 + 11 / 3600),
      lat: -3.107,
      lon: -60.025,
      mbar: 1000,
      c: 20,
      azimuth: 51.608,
      zenith: 44.1425,
    },
    {
      place: 'Berlin',
      jd: julianDay(2015, 6, 28, 17 + 45 / 60 + 12 / 3600),
      lat: 52.509663,
      lon: 13.376481,
      mbar: 1000,
      c: 20,
      azimuth: 291.232854,
      zenith: 76.799924,
    },
    // NREL SOLPOS, test program: Atlanta, 22 July 1999, 9:45:37 EST.
    {
      place: 'Atlanta',
      jd: julianDay(1999, 7, 22, 14 + 45 / 60 + 37 / 3600),
      lat: 33.65,
      lon: -84.43,
      mbar: 1006,
      c: 27,
      azimuth: 97.032875,
      zenith: 41.590069,
    },
  ])('meets the published position at $place', ({ jd, lat, lon, mbar, c, azimuth, zenith }) => {
    const sun = sunPositionAt(jd, { latitude_deg: lat, longitude_deg: lon });
    const seen_deg = sun.elevation_deg + refraction_deg(sun.elevation_deg, mbar, c);
    // The low-accuracy place of the sun is good to 0.01 degree; near the zenith an azimuth magnifies that.
    expect(Math.abs(seen_deg - (90 - zenith))).toBeLessThan(0.015);
    expect(Math.abs(sun.azimuth_deg - azimuth)).toBeLessThan(0.05);
  });

  it('takes the clock of the site and the reference year', () => {
    const site = { latitude_deg: 52.5, longitude_deg: 13.4, utc_offset_h: 1 };
    expect(sunPosition(site, { month: 6, day: 21, hour: 12 })).toEqual(
      sunPositionAt(julianDay(2025, 6, 21, 11), { latitude_deg: 52.5, longitude_deg: 13.4 }),
    );
    // 0:30 on 1 March in Auckland is still the day before in universal time.
    expect(
      sunPosition({ latitude_deg: -37, longitude_deg: 175, utc_offset_h: 13 }, { month: 3, day: 1, hour: 0.5 }),
    ).toEqual(sunPositionAt(julianDay(2025, 2, 28, 11.5), { latitude_deg: -37, longitude_deg: 175 }));
  });

  it('changes with the year by less than half a degree', () => {
    const site = { latitude_deg: 47, longitude_deg: 8 };
    for (let year = 2000; year <= 2050; year++) {
      for (const [month, day] of [
        [3, 20],
        [6, 21],
        [9, 22],
        [12, 21],
      ] as const) {
        const here = sunPositionAt(julianDay(year, month, day, 12), site);
        const reference = sunPositionAt(julianDay(2025, month, day, 12), site);
        expect(Math.abs(here.elevation_deg - reference.elevation_deg)).toBeLessThan(0.5);
        expect(Math.abs(here.azimuth_deg - reference.azimuth_deg)).toBeLessThan(0.5);
      }
    }
  });
});
