import { julianDay, REFERENCE_YEAR } from './julian-day';
import type { Moment, Site, SunPosition } from './types';

const RADIANS = Math.PI / 180;

/** Terrestrial time runs ahead of universal time: 69 s in the 2020s; a minute moves the sun by less than 1e-3 degree. */
const DELTA_T_DAYS = 69 / 86_400;

/** Mean equatorial parallax of the sun, degrees: 8.794 arc seconds (J. Meeus, chapter 40). */
const PARALLAX_DEG = 8.794 / 3600;

/** Where the sun's centre stands among the stars, apparent, of date. */
export interface SunOnSphere {
  readonly rightAscension_deg: number;
  readonly declination_deg: number;
}

/** The sun over a site at a moment of its clock, in the reference year 2025. Any latitude, any day, any hour. */
export function sunPosition(site: Site, moment: Moment): SunPosition {
  const universal_h = moment.hour - site.utc_offset_h;
  return sunPositionAt(julianDay(REFERENCE_YEAR, moment.month, moment.day, universal_h), site);
}

/**
 * The sun over a place at an exact time; `julianDay` in universal time. Elevation is that of the centre seen from the
 * surface (parallax counted), without refraction. Low-accuracy solar coordinates and sidereal time of J. Meeus,
 * Astronomical Algorithms, 2nd ed. 1998, chapters 12, 13, 25: 0.01 degree over 1800-2200. At the zenith or a pole the
 * azimuth has no meaning and is some finite number.
 */
export function sunPositionAt(
  julianDay: number,
  place: { readonly latitude_deg: number; readonly longitude_deg: number },
): SunPosition {
  const { rightAscension_deg, declination_deg } = sunOnSphere(julianDay + DELTA_T_DAYS);
  const hourAngle = (apparentSiderealTime_deg(julianDay) + place.longitude_deg - rightAscension_deg) * RADIANS;
  const latitude = place.latitude_deg * RADIANS;
  const declination = declination_deg * RADIANS;
  const east = -Math.cos(declination) * Math.sin(hourAngle);
  const north =
    Math.cos(latitude) * Math.sin(declination) - Math.sin(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const up =
    Math.sin(latitude) * Math.sin(declination) + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  const geocentric_deg = Math.atan2(up, Math.hypot(east, north)) / RADIANS;
  return {
    azimuth_deg: wrap360(Math.atan2(east, north) / RADIANS),
    elevation_deg: geocentric_deg - PARALLAX_DEG * Math.cos(geocentric_deg * RADIANS),
  };
}

/** Apparent geocentric place of the sun; `julianEphemerisDay` in terrestrial time (Meeus, chapter 25, low accuracy). */
export function sunOnSphere(julianEphemerisDay: number): SunOnSphere {
  const t = centuriesSince2000(julianEphemerisDay);
  const meanLongitude_deg = 280.46646 + t * (36_000.76983 + t * 0.0003032);
  const anomaly = (357.52911 + t * (35_999.05029 - t * 0.0001537)) * RADIANS;
  const centre_deg =
    (1.914602 - t * (0.004817 + t * 0.000014)) * Math.sin(anomaly) +
    (0.019993 - t * 0.000101) * Math.sin(2 * anomaly) +
    0.000289 * Math.sin(3 * anomaly);
  const node = moonNode(t);
  const longitude = (meanLongitude_deg + centre_deg - 0.00569 - 0.00478 * Math.sin(node)) * RADIANS;
  const obliquity = (meanObliquity_deg(t) + 0.00256 * Math.cos(node)) * RADIANS;
  return {
    rightAscension_deg: wrap360(Math.atan2(Math.cos(obliquity) * Math.sin(longitude), Math.cos(longitude)) / RADIANS),
    declination_deg: Math.asin(Math.sin(obliquity) * Math.sin(longitude)) / RADIANS,
  };
}

/** Meeus, equation 12.4, with the greatest term of nutation, which the sun's apparent place contains as well. */
function apparentSiderealTime_deg(julianDay: number): number {
  const t = centuriesSince2000(julianDay);
  const mean_deg = 280.46061837 + 360.98564736629 * (julianDay - 2_451_545) + t * t * (0.000387933 - t / 38_710_000);
  return mean_deg - 0.00478 * Math.sin(moonNode(t)) * Math.cos(meanObliquity_deg(t) * RADIANS);
}

const centuriesSince2000 = (day: number): number => (day - 2_451_545) / 36_525;

/** Longitude of the moon's ascending node, radians (Meeus, chapter 25). */
const moonNode = (t: number): number => (125.04 - 1934.136 * t) * RADIANS;

/** Meeus, equation 22.2. */
const meanObliquity_deg = (t: number): number =>
  23 + (26 + 21.448 / 60) / 60 - (t * (46.815 + t * (0.00059 - t * 0.001813))) / 3600;

const wrap360 = (angle_deg: number): number => ((angle_deg % 360) + 360) % 360;
