import { holdInSteps, type Ranking, shortlist } from '../../engine/judge/shortlist/shortlist';
import type { Standing } from '../../engine/judge/shortlist/standing';
import type { Candidate, HeldSurface, Shortlist } from '../../engine/judge/shortlist/types';
import type { Wish } from '../../engine/judge/shortlist/wish';
import { failure, type Result, success } from '../../engine/result';
import type { SurfaceId } from '../../engine/surface';
import { changesWith } from '../../model/changes-with';
import { isEmpty } from '../../model/empty-surface';
import type { Kitchen } from '../../model/kitchen';
import type { Finish, Option, Project, UserNeed } from '../../model/project';
import { buildRoom } from '../build-room';
import { presentSurfaces } from '../present-surfaces';
import { candidateOf, heldSurface } from './candidates';
import { layFinish } from './lay-finish';
import type { Meetings } from './meetings';
import { libraryOf } from './scheme';

export interface ShortlistOptions {
  /** What somebody would like, the most wanted first. */
  readonly wishes?: readonly Wish[];
  /** Finishes to judge; the project's library where absent. */
  readonly library?: readonly Finish[];
  /** Ids of finishes that come first where nothing else tells them from others. */
  readonly own?: ReadonlySet<string>;
  /** Surfaces the room has; worked out from the kitchen where absent. */
  readonly present?: readonly SurfaceId[];
  /** Which surfaces are seen together, where that was worked out: what is never seen beside the place rejects nothing. */
  readonly meetings?: Meetings;
}

/**
 * Every finish of the library for a surface and what is laid like it, as samples, against all that is fixed, decided or ordered in the
 * option: accepted in rank order or rejected with the reason. Open surfaces are left out. Fails where the option, or a finish that is settled,
 * is not there.
 */
export function shortlistSamples(
  project: Project,
  optionId: string,
  surface: SurfaceId,
  options: ShortlistOptions = {},
): Result<Shortlist> {
  const ranking = rankSamples(project, optionId, surface, options);
  return ranking.ok ? success(shortlist(ranking.value)) : ranking;
}

/** The same before it is put in order, for what follows from it. */
export function rankSamples(
  project: Project,
  optionId: string,
  surface: SurfaceId,
  options: ShortlistOptions = {},
): Result<Ranking> {
  const steps = rankInSteps(project, optionId, surface, options);
  let step = steps.next();
  for (; !step.done; step = steps.next());
  return step.value;
}

/**
 * The same in steps, with a yield after each finish: a large library takes a while.
 * @param options finishes are taken from its library one by one, as it goes on
 * @param known standings of candidates held against the very same before
 */
export function* rankInSteps(
  project: Project,
  optionId: string,
  surface: SurfaceId,
  options: Omit<ShortlistOptions, 'library'> & { readonly library?: Iterable<Finish> } = {},
  known?: ReadonlyMap<Candidate, Standing>,
): Generator<null, Result<Ranking>> {
  const option = project.options.find(({ id }) => id === optionId);
  if (!option) return unknownOption(project, optionId);
  const present = options.present ?? presentIn(project);
  const changing = changesWith(option, surface);
  const place = changing.filter((one) => one === surface || present.includes(one));
  const laid = laidAround(project, option, changing, present);
  if (!laid.ok) return laid;
  const around = laid.value.map((one) => ({ ...one, isApart: isApart(one.surface, place, options.meetings) }));
  const asked = {
    project: project.id,
    option: option.id,
    held: around.filter(({ state }) => state !== 'open'),
    around,
    place: {
      surfaces: place,
      wishes: options.wishes ?? [],
      ...(options.own && { own: options.own }),
      contrastFirst: (project.users ?? []).some((need) => EDGE_USERS.includes(need)),
    },
    laid: option.scheme[surface].finish,
  };
  return success(yield* holdInSteps(asked, candidatesOf(options.library ?? project.library, surface), known));
}

function* candidatesOf(library: Iterable<Finish>, surface: SurfaceId): Generator<Candidate, void> {
  for (const finish of library) {
    const candidate = candidateOf(finish, surface);
    if (candidate) yield candidate;
  }
}

/** Seen with none of the surfaces one chooses for; where nobody has looked, all are seen together. */
const isApart = (surface: SurfaceId, place: readonly SurfaceId[], meetings: Meetings | undefined): boolean =>
  meetings !== undefined && place.every((one) => meetings.get(one)?.[surface] === undefined);

/** People for whom edges count more than harmony. Our judgment. */
const EDGE_USERS: readonly UserNeed[] = ['low-vision', 'over-65'];

/** All surfaces of the room that have a finish, but those that change, as they are laid. */
function laidAround(
  project: Project,
  option: Option,
  changing: readonly SurfaceId[],
  present: readonly SurfaceId[],
): Result<readonly HeldSurface[]> {
  const library = libraryOf(project);
  const held: HeldSurface[] = [];
  for (const one of present) {
    if (changing.includes(one)) continue;
    const placement = option.scheme[one];
    if (isEmpty(placement)) continue;
    const laid = layFinish(library, placement);
    if (!laid.ok) return failure({ ...laid.problem, at: { path: `options.${option.id}.scheme.${one}` } });
    held.push(heldSurface(one, placement, laid.value));
  }
  return success(held);
}

const rooms = new WeakMap<Kitchen, readonly SurfaceId[]>();

/** Surfaces of the kitchen's room; building one takes a while, so each kitchen is built once. */
export function presentIn({ kitchen, beams }: Project): readonly SurfaceId[] {
  const before = rooms.get(kitchen);
  if (before) return before;
  const present = presentSurfaces(buildRoom(kitchen, beams));
  rooms.set(kitchen, present);
  return present;
}

const unknownOption = ({ options }: Project, id: string): Result<never> =>
  failure({
    code: 'unknown-option',
    text: `There is no option ${id} in this project.`,
    at: { path: 'options' },
    remedy: `Choose one of: ${options.map((one) => one.id).join(', ')}.`,
  });
