import type { Assessment } from '../../engine/judge/assessment';
import type { Finish, Project } from '../../model/project';
import type { Showroom } from './showroom-state';

/**
 * Whether customers of a showroom may choose a finish: one of its libraries, one they typed in, and one of the project where that belongs
 * to the range. What only lies there from the start is none of them.
 */
export function isInRange(
  { id, origin }: Pick<Finish, 'id' | 'origin'>,
  { range, start }: Pick<Showroom, 'range' | 'start'>,
): boolean {
  if (origin && range.libraries.includes(origin.library)) return true;
  return range.project || !start.library.some((finish) => finish.id === id);
}

/** An assessment whose proposals lay nothing that customers may not choose. */
export function withinRange(
  assessment: Assessment,
  { library }: Pick<Project, 'library'>,
  showroom: Pick<Showroom, 'range' | 'start'>,
): Assessment {
  const choices = new Set(library.filter((finish) => isInRange(finish, showroom)).map(({ id }) => id));
  const repairs = assessment.repairs.filter(({ changes }) => changes.every(({ finish }) => choices.has(finish)));
  return repairs.length === assessment.repairs.length ? assessment : { ...assessment, repairs };
}
