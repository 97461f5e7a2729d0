import type { Problem } from '../engine/result';
import { type Bounds, checkNumber } from './check-number';

/** Years a house may have been built in; the oldest that people live in are older, and old enough by then. */
const YEAR_BOUNDS: Bounds = [1500, 2100, ''];

/** What is wrong with the year of a house. */
export function checkYear(year: number, path: string): readonly Problem[] {
  const [problem] = checkNumber(year, YEAR_BOUNDS, path);
  if (problem) return [problem];
  if (Number.isInteger(year)) return [];
  return [
    {
      code: 'not-whole',
      text: `${path} is ${year}, which is no year.`,
      at: { path },
      remedy: 'Give a whole number, or leave it out.',
    },
  ];
}
