import type { LaidFinish } from '../../engine/finish/types';
import { failure, type Result } from '../../engine/result';
import type { Project } from '../../model/project';
import { layFinish } from './lay-finish';
import { libraryOf } from './scheme';

/** A finish of a project's library as a sample, as it is: without a joint. An unknown one is refused with those there are. */
export function laidSample(project: Pick<Project, 'library'>, id: string): Result<LaidFinish> {
  const ids = project.library.map((finish) => finish.id);
  if (ids.includes(id))
    return layFinish(libraryOf(project), { finish: id, state: 'open', laying: { layout: 'plain' } });
  return failure({
    code: 'unknown-finish',
    text: `There is no finish "${id}" in the library.`,
    at: { path: 'library' },
    remedy: `Name one of: ${someOf(ids)}.`,
  });
}

/** A library has some fifty finishes, a line shows a few. */
const MOST_NAMED = 8;

const someOf = (ids: readonly string[]): string => {
  const more = ids.length - MOST_NAMED;
  return more > 0 ? `${ids.slice(0, MOST_NAMED).join(', ')} and ${more} more` : ids.join(', ');
};
