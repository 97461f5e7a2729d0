import type { Problem } from '../engine/result';
import { type Bounds, checkNumber, checkText, checkUnique } from './check-number';
import type { Opening } from './kitchen';

const mm = (least: number, most: number): Bounds => [least, most, 'mm'];

/** Widest values of a window or glazed door, each alone: common sizes with ample margin (no source). */
export const OPENING_BOUNDS = {
  center: mm(0, 12000),
  width: mm(200, 6000),
  sill: mm(0, 2500),
  height: mm(200, 3500),
  reveal: mm(0, 800),
} as const satisfies Record<string, Bounds>;

/** More windows than a kitchen has (our judgment). */
const MOST_OPENINGS = 12;

/** What is wrong with the values of windows and glazed doors, each alone. */
export const checkOpenings = (openings: readonly Opening[], path: string): readonly Problem[] => [
  ...checkNumber(openings.length, [0, MOST_OPENINGS, 'windows'], path),
  ...checkUnique(
    openings.map(({ id }) => id),
    path,
  ),
  ...openings.flatMap((opening, i) => checkOpening(opening, `${path}[${i}]`)),
];

const checkOpening = (opening: Opening, path: string): readonly Problem[] => [
  ...checkText(opening.id, `${path}.id`),
  ...checkNumber(opening.center, OPENING_BOUNDS.center, `${path}.center`),
  ...checkNumber(opening.width, OPENING_BOUNDS.width, `${path}.width`),
  ...checkNumber(opening.sill, OPENING_BOUNDS.sill, `${path}.sill`),
  ...checkNumber(opening.height, OPENING_BOUNDS.height, `${path}.height`),
  ...checkNumber(opening.reveal, OPENING_BOUNDS.reveal, `${path}.reveal`),
  ...checkWhole(opening.leaves, [1, 6, 'leaves'], `${path}.leaves`),
  ...checkWhole(opening.panes, [1, 3, 'panes'], `${path}.panes`),
  ...checkNumber(opening.facing_deg, [0, 80, 'degrees'], `${path}.facing_deg`),
];

/** A number that must be whole, within bounds. */
export function checkWhole(value: number, bounds: Bounds, path: string): readonly Problem[] {
  const problems = checkNumber(value, bounds, path);
  if (problems.length > 0 || Number.isInteger(value)) return problems;
  return [
    {
      code: 'not-whole',
      text: `${path} is ${value}, not a whole number.`,
      at: { path },
      remedy: 'Give a whole number.',
    },
  ];
}
