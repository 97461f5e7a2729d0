import type { Problem } from '../engine/result';
import { doorChecks } from './door-misfits';
import { fixtureChecks } from './fixture-misfits';
import { floorChecks } from './floor-misfits';
import type { Kitchen } from './kitchen';
import { tryRows, wholeRows } from './layout/plan-rows';
import type { Check } from './misfit';
import { openingChecks } from './opening-misfits';
import { fillChecks, runChecks } from './run-misfits';
import { unitChecks } from './unit-misfits';

/** What in a kitchen's measures cannot be built: empty when everything fits its room. */
export function kitchenMisfits(kitchen: Kitchen): readonly Problem<'does-not-fit'>[] {
  const placed = problemsOf([...runChecks(kitchen), ...unitChecks(kitchen)]);
  // Runs that are not where runs can be have no rows to ask.
  if (placed.some(({ at }) => /^(runs|sink|cooktop)/.test(at?.path ?? ''))) return placed;
  const tried = tryRows(kitchen);
  const rows = wholeRows(kitchen, tried);
  return [
    ...placed,
    ...problemsOf([
      ...fillChecks(kitchen, tried),
      ...(rows ? floorChecks(kitchen, rows) : []),
      ...doorChecks(kitchen, rows),
      ...openingChecks(kitchen, rows),
      ...(rows ? fixtureChecks(kitchen, rows) : []),
    ]),
  ];
}

const problemsOf = (checks: readonly Check[]): readonly Problem<'does-not-fit'>[] =>
  checks
    .filter(([, holds]) => !holds)
    .map(([path, , text, remedy]) => ({ code: 'does-not-fit', text, at: { path }, remedy }));
