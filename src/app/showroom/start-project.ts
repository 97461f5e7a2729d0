import { NO_FINISH } from '../../model/empty-surface';
import type { Project } from '../../model/project';
import type { Showroom } from './showroom-state';

/**
 * The project a customer starts from: without the notes, the log, the frozen copies and the orders of staff, and with no more finishes of
 * its own than lie there where customers choose from libraries only.
 */
export function startProject({ start, range }: Showroom): Project {
  const { log: _, revisions: _frozen, job: _job, samples: _samples, quantities: _own, ...rest } = start;
  // The very same options where nobody ordered anything: caches rest on it.
  const hasOrders = start.options.some(({ items, extras }) => items !== undefined || extras !== undefined);
  const options = hasOrders
    ? start.options.map(({ items: _items, extras: _extras, ...option }) => option)
    : start.options;
  const bare = { ...rest, note: '', options };
  if (range.project) return bare;
  const laid = new Set(
    start.options.flatMap(({ scheme }) =>
      Object.values(scheme).flatMap(({ finish, laying }) => [finish, laying.grout ?? finish]),
    ),
  );
  return { ...bare, library: start.library.filter(({ id }) => laid.has(id) || id === NO_FINISH.id) };
}
