import type { LaidFinish } from '../../engine/finish/types';
import { failure, type Result } from '../../engine/result';
import type { Project } from '../../model/project';
import { layFinish } from './lay-finish';
import { libraryOf } from './scheme';

/** A finish of a project's library as a sample, as it is: without a joint. An unknown one is refused with those there are. */
export function laidSample(project: Pick<Project, 'library'>, id: string): Result<LaidFinish> {
  const library = libraryOf(project);
  if (library.has(id)) return layFinish(library, { finish: id, state: 'open', laying: { layout: 'plain' } });
  return failure({
    code: 'unknown-finish',
    text: `There is no finish "${id}" in the library.`,
    at: { path: 'library' },
    remedy: `Name one of: ${someOf([...library.keys()])}.`,
  });
}

/** A library has some fifty finishes, a line shows a few. */
const MOST_NAMED = 8;

const someOf = (ids: readonly string[]): string => {
  const more = ids.length - MOST_NAMED;
  return more > 0 ? `${ids.slice(0, MOST_NAMED).join(', ')} and ${more} more` : ids.join(', ');
};
