import type { SkyKind } from './types';

const RADIANS = Math.PI / 180;

/** Illuminance outside the atmosphere, lx, and its yearly swing with the distance of the sun (IES, see below). */
const SOLAR_ILLUMINANCE_LX = 127_500;
const YEARLY_SWING = 0.034;

/** Atmospheric extinction of a clear sky per air mass (IES, see below). */
const CLEAR_EXTINCTION = 0.21;

/** Radius of the earth in scale heights of the atmosphere (Circular 171, see below). */
const SCALE_HEIGHTS = 753.66156;

/** Below, the sky counts as dark: by then it gives less than 0.01 lx. Our judgment. */
const DARK_DEG = -12;

/**
 * Illuminance of the open horizontal by the sky alone, lx, for a sun at `elevation_deg`. Above the horizon: IES
 * Calculation Procedures Committee, Recommended practice for the calculation of daylight availability, J. IES 13 (1984)
 * 381: overcast 300 + 21000 sin h, clear 800 + 15500 sqrt(sin h); means, of which single days differ by a factor of two.
 * Below: the value at the horizon, falling as twilight falls (P. Janiczek, J. DeYoung, US Naval Observatory Circular
 * 171, 1987); 0 from 12 degrees below. That an overcast twilight falls like a clear one is our judgment.
 */
export function skyLevelLx(kind: SkyKind, elevation_deg: number): number {
  if (elevation_deg < 0) return skyLevelLx(kind, 0) * twilightShare(elevation_deg);
  const sine = Math.sin(elevation_deg * RADIANS);
  return kind === 'overcast' ? 300 + 21_000 * sine : 800 + 15_500 * Math.sqrt(sine);
}

/**
 * Illuminance by the sun alone of a plane that faces it under a clear sky, lx; 0 with the sun at or below the horizon.
 * Same source: 127.5 klx (1 + 0.034 cos(2 pi (J - 2) / 365)) exp(-0.21 / sin h), J the day of the year from 1.
 */
export function sunNormalLx(elevation_deg: number, dayOfYear: number): number {
  const sine = Math.sin(elevation_deg * RADIANS);
  if (!(sine > 0)) return 0;
  const outside = SOLAR_ILLUMINANCE_LX * (1 + YEARLY_SWING * Math.cos((2 * Math.PI * (dayOfYear - 2)) / 365));
  return outside * Math.exp(-CLEAR_EXTINCTION / sine);
}

/** Horizontal illuminance of twilight against that at sunset, 0-1; `elevation_deg` at most 0. */
function twilightShare(elevation_deg: number): number {
  return elevation_deg < DARK_DEG ? 0 : relativeTwilight(elevation_deg) / relativeTwilight(0);
}

/** Subroutine ATMOS of Circular 171, the part of the sky: scattered light over a path through a round atmosphere. */
function relativeTwilight(elevation_deg: number): number {
  const sine = Math.sin(elevation_deg * RADIANS);
  const slant = (SCALE_HEIGHTS * Math.cos(elevation_deg * RADIANS)) / (SCALE_HEIGHTS + 1);
  const cosine = Math.sqrt(1 - slant * slant);
  const path = SCALE_HEIGHTS * (cosine - sine) + cosine;
  return Math.exp(-0.042 * path) * (1 + (elevation_deg + 90) * RADIANS * sine);
}
