import { failure, type Result, success } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import { checkPlacement, libraryOf, unknownFinish } from './check-project';
import type { LayFinish } from './commands';
import { isEmpty, NO_FINISH } from './empty-surface';
import { layingFor } from './laying';
import type { Option, Placement, Project, Scheme } from './project';

/** What is usually made of the same material as another surface, and follows it as long as both are the same. */
const FOLLOWERS: Partial<Record<SurfaceId, SurfaceId>> = { 'base-fronts': 'plinth', counter: 'upstand' };

/** The surface that follows another one, if any does. */
export const followerOf = (surface: SurfaceId): SurfaceId | undefined => FOLLOWERS[surface];

/**
 * Lays a finish on a surface of an option. The plinth follows the base fronts and the upstand the counter if they had
 * the same finish and are still open or decided; what is fixed or ordered stays as it is, and what is empty stays empty.
 * The stand-in for nothing empties an open surface, and what follows it if that is open, too.
 */
export function layFinishOn(project: Project, option: Option, command: LayFinish): Result<Option> {
  const { surface } = command;
  const library = libraryOf(project);
  const finish = isEmpty(command) ? NO_FINISH : library.get(command.finish);
  if (!finish) return failure(unknownFinish(command.finish, 'finish'));

  const before = option.scheme[surface];
  const laying = command.laying ?? layingFor(finish, surface, project.library, before.laying);
  const placement: Placement = { ...before, finish: finish.id, laying };
  const [problem, ...more] = checkPlacement(placement, library, `scheme.${surface}`);
  if (problem) return failure(problem, more);

  const scheme: { -readonly [S in SurfaceId]: Placement } = { ...option.scheme, [surface]: placement };
  const follower = followerOf(surface);
  if (follower && follows(option.scheme, follower, before.finish, isEmpty(command))) {
    const its = option.scheme[follower];
    scheme[follower] = { ...its, finish: finish.id, laying: layingFor(finish, follower, project.library, its.laying) };
  }
  return success({ ...option, scheme });
}

function follows(scheme: Scheme, follower: SurfaceId, finish: string, isEmptied: boolean): boolean {
  const { finish: its, state } = scheme[follower];
  const isLoose = state === 'open' || (state === 'decided' && !isEmptied);
  return its === finish && !isEmpty(scheme[follower]) && isLoose;
}
