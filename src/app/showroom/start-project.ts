import { NO_FINISH } from '../../model/empty-surface';
import type { Project } from '../../model/project';
import type { Showroom } from './showroom-state';

/** The project a customer starts from: with no more finishes of its own than lie there, where customers choose from libraries only. */
export function startProject({ start, range }: Showroom): Project {
  if (range.project) return start;
  const laid = new Set(
    start.options.flatMap(({ scheme }) =>
      Object.values(scheme).flatMap(({ finish, laying }) => [finish, laying.grout ?? finish]),
    ),
  );
  return { ...start, library: start.library.filter(({ id }) => laid.has(id) || id === NO_FINISH.id) };
}
