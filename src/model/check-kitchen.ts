import type { Problem } from '../engine/result';
import { checkSite } from './check-daylight';
import { checkFixtures } from './check-fixtures';
import { checkNumber } from './check-number';
import { checkOpenings, checkWhole } from './check-openings';
import { checkRuns } from './check-runs';
import type { Kitchen } from './kitchen';
import { KITCHEN_BOUNDS } from './kitchen-bounds';
import { kitchenMisfits } from './kitchen-misfits';

/** What is wrong with the sizes of a kitchen: each value alone, then what must fit into the room. */
export function checkKitchen(kitchen: Kitchen, path: string): readonly Problem[] {
  const problems = [
    ...KITCHEN_BOUNDS.flatMap(([name, read, bounds]) => {
      const value = read(kitchen);
      return value === undefined ? [] : checkNumber(value, bounds, `${path}.${name}`);
    }),
    ...checkRuns(kitchen.runs, `${path}.runs`),
    ...(kitchen.island ? checkWhole(kitchen.island.stools, [0, 8, 'stools'], `${path}.island.stools`) : []),
    ...checkSite(kitchen.site, `${path}.site`),
    ...checkOpenings(kitchen.openings, `${path}.openings`),
    ...checkFixtures(kitchen.fixtures, `${path}.fixtures`),
  ];
  if (problems.length > 0) return problems;
  return kitchenMisfits(kitchen).map(({ text, at, remedy }) => misfit(`${path}.${at?.path}`, text, remedy));
}

const misfit = (path: string, text: string, remedy: string): Problem => ({
  code: 'does-not-fit',
  text: `${path}: ${text}`,
  at: { path },
  remedy,
});
