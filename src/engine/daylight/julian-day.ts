/** The year that stands for all when a moment names only month and day: within half a degree of any other's sun. */
export const REFERENCE_YEAR = 2025;

/**
 * Julian day of a date of the Gregorian calendar (J. Meeus, Astronomical Algorithms, 2nd ed. 1998, equation 7.1).
 * `hour` is in universal time, decimal, and may leave 0-24; so may `day` leave its month.
 */
export function julianDay(year: number, month: number, day: number, hour: number): number {
  // Meeus counts January and February as months 13 and 14 of the year before.
  const y = month > 2 ? year : year - 1;
  const m = month > 2 ? month : month + 12;
  const century = Math.floor(y / 100);
  const leap = 2 - century + Math.floor(century / 4);
  return Math.floor(365.25 * (y + 4716)) + Math.floor(30.6001 * (m + 1)) + day + leap - 1524.5 + hour / 24;
}

/** Day of the reference year, 1-365. */
export const dayOfYear = (month: number, day: number): number =>
  julianDay(REFERENCE_YEAR, month, day, 0) - julianDay(REFERENCE_YEAR, 1, 0, 0);
