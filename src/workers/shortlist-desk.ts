import type { InPlace } from '../engine/judge/shortlist/in-place';
import { type Ranking, shortlist, wishing } from '../engine/judge/shortlist/shortlist';
import type { Shortlist } from '../engine/judge/shortlist/types';
import { type WhyPoint, whyPoints } from '../engine/judge/shortlist/why';
import type { SurfaceId } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import { meetingsOf } from '../kitchen/study/meetings';
import { bestOf, judgeInPlace } from '../kitchen/study/shortlist-in-place';
import { rankSamples } from '../kitchen/study/shortlist-samples';
import { changesWith } from '../model/changes-with';
import type { Finish, Option, Project } from '../model/project';
import type { InSlices, Job } from './job';
import type { ShortlistAsked } from './questions';
import { underSky } from './under-sky';

/** A surface's candidates, and what was seen of the best so far. */
interface Begun {
  readonly library: readonly Finish[];
  /** Without wishes: they only put it in another order. */
  readonly ranking: Ranking;
  /** By setting, then by finish, of all wishes there were; null for what could not be laid. */
  readonly seen: Map<string, ReadonlyMap<string, InPlace | null>>;
}

/** What a shortlist is asked for, apart from the setting. */
type Wanted = Omit<ShortlistAsked, 'setting'>;

/** What was begun, the latest last, by all it depends on but the library. */
const begun = new Map<string, Begun>();
/** Drawers one goes back and forth between. */
const MOST_BEGUN = 6;

/** Everything of the library for a surface, as samples; and in place in those of the settings that were seen to already. */
export function shortlistNow(project: Project, job: Job | null, { option, surface, wishes }: Wanted): Shortlist | null {
  const found = begin(project, job, option, surface);
  return found && listOf(found, wishing(found.ranking, wishes));
}

/** The same once the best are judged in a setting, which takes a while; null as soon as something newer is wanted. */
export function* shortlistInPlace(
  job: Job,
  { option, surface, wishes }: Wanted,
  setting: string,
): InSlices<Shortlist | null> {
  const { project } = job.show;
  const found = begin(project, job, option, surface);
  if (!found) return null;
  const ranking = wishing(found.ranking, wishes);
  const known = found.seen.get(setting);
  const best = bestOf(ranking).map(({ candidate }) => candidate.finish.id);
  if (!known || best.some((finish) => !known.has(finish))) {
    const studied = yield* underSky(job, setting);
    if (!studied) return null;
    const steps = judgeInPlace(project, ranking, studied, known);
    for (let step = steps.next(); ; step = steps.next()) {
      if (job.stale()) return null;
      if (step.done) {
        const looked = best.map((finish) => [finish, step.value.get(finish) ?? null] as const);
        found.seen.set(setting, new Map([...(known ?? []), ...looked]));
        break;
      }
      yield null;
    }
  }
  return listOf(found, ranking);
}

/** All there is to say for and against one finish; null where it is not among those judged. */
export function whyNow(
  project: Project,
  job: Job | null,
  option: string,
  surface: SurfaceId,
  finish: string,
): readonly WhyPoint[] | null {
  const found = begin(project, job, option, surface);
  return found && whyPoints(found.ranking, finish, placesOf(found, finish));
}

function begin(project: Project, job: Job | null, optionId: string, surface: SurfaceId): Begun | null {
  const option = project.options.find(({ id }) => id === optionId);
  if (!option) return null;
  const room = job && JSON.stringify(job.show.project.kitchen) === JSON.stringify(project.kitchen) ? job.room : null;
  const key = keyOf(project, option, surface, room?.hasStudy ?? false);
  const before = begun.get(key);
  const laid = option.scheme[surface].finish;
  if (before && isSame(before.library, project.library)) {
    begun.delete(key);
    const now = { ...before, ranking: { ...before.ranking, asked: { ...before.ranking.asked, laid } } };
    begun.set(key, now);
    return now;
  }
  const ranking = rankSamples(project, optionId, surface, {
    ...(room && { present: presentSurfaces(room.basis.room) }),
    ...(room?.hasStudy && { meetings: meetingsOf(room.study) }),
  });
  if (!ranking.ok) return null;
  const made: Begun = { library: project.library, ranking: ranking.value, seen: new Map() };
  begun.delete(key);
  begun.set(key, made);
  if (begun.size > MOST_BEGUN) begun.delete(begun.keys().next().value!);
  return made;
}

/** All that a surface's shortlist depends on but the library: what lies on it is not among that. */
function keyOf(
  { kitchen, settings, lamps, beams, users }: Project,
  option: Option,
  surface: SurfaceId,
  isSeen: boolean,
) {
  const changing = changesWith(option, surface);
  const around = Object.entries(option.scheme).filter(([one]) => !changing.includes(one as SurfaceId));
  return JSON.stringify([option.id, surface, changing, around, kitchen, settings, lamps, beams, users, isSeen]);
}

/** Finishes are kept by the worker, so that the same one is the same object. */
const isSame = (a: readonly Finish[], b: readonly Finish[]): boolean =>
  a.length === b.length && a.every((finish, i) => finish === b[i]);

/** What is said of a finish rests on these wishes alone: what was seen for others, and is not among the best now, counts as a sample. */
function listOf(found: Begun, ranking: Ranking): Shortlist {
  const best = bestOf(ranking).map(({ candidate }) => candidate.finish.id);
  return shortlist(ranking, new Map(best.map((finish) => [finish, placesOf(found, finish)])));
}

const placesOf = ({ seen }: Begun, finish: string): InPlace[] =>
  [...seen.values()].flatMap((places) => places.get(finish) ?? []);
