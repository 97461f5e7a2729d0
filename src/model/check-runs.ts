import type { Problem } from '../engine/result';
import { type Bounds, checkNumber } from './check-number';
import type { Run, RunWall } from './kitchen';

const ORDER: readonly RunWall[] = ['left', 'back', 'right'];
/** Where a run may begin or end along its wall at all. */
export const RUN_BOUNDS: Bounds = [0, 12000, 'mm'];
/** More tall units at one end than a kitchen has (our judgment). */
const MOST_TALL: Bounds = [0, 4, 'tall units'];

/** What is wrong with the values of runs, each alone, and with their order: at least one, at most one a wall. */
export const checkRuns = (runs: readonly Run[], path: string): readonly Problem[] => [
  ...checkNumber(runs.length, [1, ORDER.length, 'runs'], path),
  ...runs.flatMap((run, i) => [
    ...checkNumber(run.from, RUN_BOUNDS, `${path}[${i}].from`),
    ...checkNumber(run.to, RUN_BOUNDS, `${path}[${i}].to`),
    ...checkNumber(run.tall_from.length, MOST_TALL, `${path}[${i}].tall_from`),
    ...checkNumber(run.tall_to.length, MOST_TALL, `${path}[${i}].tall_to`),
    ...checkOrder(runs, i, `${path}[${i}].wall`),
  ]),
];

function checkOrder(runs: readonly Run[], i: number, path: string): readonly Problem[] {
  const before = runs[i - 1];
  if (!before || ORDER.indexOf(before.wall) < ORDER.indexOf(runs[i]!.wall)) return [];
  return [
    {
      code: 'run-order',
      text: `${path}: runs stand at most once on each wall, in the order left, back, right.`,
      at: { path },
      remedy: 'Put them in that order, one for each wall.',
    },
  ];
}
