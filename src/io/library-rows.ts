import { wholeCurve } from '../engine/finish/component';
import type { Problem } from '../engine/result';
import { givenComponents } from '../model/given-components';
import type { Library } from '../model/library';
import type { Finish } from '../model/project';
import type { ImportOutcome, RefusedRow } from './sheet/types';

/** Which finishes of a library can be kept, and which have a color that no surface can have. */
export type LibraryRows = Pick<ImportOutcome, 'kept' | 'refused'>;

/** Looks at every color of a library, finish by finish; yields after each how many are done. `at`: where finish `i` stands. */
export function* checkingLibrary(
  { finishes }: Pick<Library, 'finishes'>,
  at: (i: number) => Problem['at'],
): Generator<number, LibraryRows> {
  const kept: LibraryRows['kept'][number][] = [];
  const refused: RefusedRow[] = [];
  for (const [i, finish] of finishes.entries()) {
    const problem = colorProblem(finish);
    const row = i + 1;
    if (!problem) kept.push({ row, finish, notices: [] });
    else refused.push({ row, code: finish.id, name: finish.label, problem: { ...problem, at: at(i) ?? {} } });
    yield row;
  }
  return { kept, refused };
}

/** The first problem of the colors of a finish; null where it has none. */
function colorProblem(finish: Finish): Problem | null {
  for (const given of givenComponents(finish)) {
    const made = wholeCurve(given);
    if (!made.ok) return made.problem;
  }
  return null;
}

/** The same in one go. */
export function libraryRows(library: Pick<Library, 'finishes'>, at: (i: number) => Problem['at']): LibraryRows {
  const steps = checkingLibrary(library, at);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
