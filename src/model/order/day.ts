import type { Problem } from '../../engine/result';

/** A day by the Gregorian calendar, ISO 8601: 2026-05-04. Without hour and place: a delivery is due on a day. */
export type Day = string;

const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;

/** Days before each month of a year that begins in March, so that the leap day comes last. */
const BEFORE_MONTH = [0, 31, 61, 92, 122, 153, 184, 214, 245, 275, 306, 337];
const DAYS_OF_YEAR = 365;
const MARCH = 3;
const MONTHS = 12;

/** Days from 1 March of year 0 to 1 March of a year: every fourth year is a leap year, but for centuries that 400 does not divide. */
const daysBefore = (year: number): number =>
  DAYS_OF_YEAR * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400);

function dayNumber(year: number, month: number, date: number): number {
  const fromMarch = (month + MONTHS - MARCH) % MONTHS;
  return daysBefore(month < MARCH ? year - 1 : year) + BEFORE_MONTH[fromMarch]! + date - 1;
}

/** Days that four digits of a year can tell; what lies beyond is told as the first or the last of them. */
const LAST = dayNumber(9999, 12, 31);

function dayOf(any: number): Day {
  const number = Math.min(Math.max(any, 0), LAST);
  let year = Math.floor(number / 365.2425);
  while (daysBefore(year + 1) <= number) year += 1;
  while (daysBefore(year) > number) year -= 1;
  const rest = number - daysBefore(year);
  const fromMarch = BEFORE_MONTH.findLastIndex((before) => before <= rest);
  const month = ((fromMarch + MARCH - 1) % MONTHS) + 1;
  return [
    String(month < MARCH ? year + 1 : year).padStart(4, '0'),
    String(month).padStart(2, '0'),
    String(rest - BEFORE_MONTH[fromMarch]! + 1).padStart(2, '0'),
  ].join('-');
}

/** Null where the text is no day. */
function numberOf(day: Day): number | null {
  const [, year, month, date] = DAY.exec(day) ?? [];
  if (year === undefined || Number(month) < 1 || Number(month) > MONTHS) return null;
  const number = dayNumber(Number(year), Number(month), Number(date));
  return dayOf(number) === day ? number : null;
}

export const isDay = (text: string): boolean => numberOf(text) !== null;

/** The day so many days later (earlier: negative); parts of a day are counted towards the earlier. Never beyond the years 0 and 9999. Throws where `day` is none. */
export function addDays(day: Day, days: number): Day {
  const from = numberOf(day);
  if (from === null) throw new Error(`${day} is no day`);
  return dayOf(from + Math.floor(days));
}

/** A problem where a text is no day. */
export const checkDay = (day: Day | undefined, path: string): readonly Problem[] =>
  day === undefined || isDay(day)
    ? []
    : [
        {
          code: 'no-such-day',
          text: `${path} is "${day}", which is no day.`,
          at: { path },
          remedy: 'Write it like 2026-05-04.',
        },
      ];
