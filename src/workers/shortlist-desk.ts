import type { InPlace } from '../engine/judge/shortlist/in-place';
import {
  acceptedRow,
  codeOf,
  headOf,
  inOrder,
  type Ordered,
  type Ranking,
  rejectedRow,
  wishing,
} from '../engine/judge/shortlist/shortlist';
import type { ShortlistOutline, ShortlistRow } from '../engine/judge/shortlist/types';
import { type WhyPoint, whyPoints } from '../engine/judge/shortlist/why';
import type { SurfaceId } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import { meetingsOf } from '../kitchen/study/meetings';
import { bestOf, judgeInPlace } from '../kitchen/study/shortlist-in-place';
import { rankInSteps } from '../kitchen/study/shortlist-samples';
import { changesWith } from '../model/changes-with';
import type { Finish, Option, Project } from '../model/project';
import type { InSlices, Job } from './job';
import type { ShortlistAnswer, ShortlistAsked } from './questions';
import { inShortSlices } from './short-slices';
import { underSky } from './under-sky';

/** A surface's candidates, and what was seen of the best so far. */
interface Begun {
  /** All there was to judge. */
  readonly from: readonly Finish[];
  /** What was judged of it. */
  readonly library: readonly Finish[];
  /** Without wishes: they only put it in another order. */
  readonly ranking: Ranking;
  /** By setting, then by finish, of all wishes there were; null for what could not be laid. */
  readonly seen: Map<string, ReadonlyMap<string, InPlace | null>>;
  /** The list under the wishes that were asked for last. */
  list: { readonly key: string; readonly answer: Omit<ShortlistAnswer, 'rows'>; readonly ordered: Ordered } | null;
}

/** What a shortlist is asked of, and for what. */
export interface ShortlistSource {
  readonly project: Project;
  /** All that may be laid: the project's own finishes, and those that libraries offer. */
  readonly library: readonly Finish[];
  /** Null before the first light. */
  readonly job: Job | null;
}
type Wanted = Omit<ShortlistAsked, 'setting'>;
type RowsWanted = Omit<Wanted, 'isWhole'>;

/** What was begun, the latest last, by all it depends on but the library. */
const begun = new Map<string, Begun>();
/** Drawers one goes back and forth between. */
const MOST_BEGUN = 6;

/** So long the first answer may take, ms: what was not judged by then comes with the next. */
const FIRST_MS = 100;

/** Somebody waits for it before an open drawer: it comes before the light, ms. */
const FIRST_SLICE_MS = 40;

/** The surface that was asked for last: of the others the rest is not worked out any more. */
let newest = '';

/**
 * The finishes for a surface, as samples; and in place in those of the settings that were seen to already. Of a large library what is not
 * prepared yet is left out at first, the project's own never; with `isWhole` it is there, which may take a while. Null: something newer is
 * wanted.
 */
export function* shortlistNow(from: ShortlistSource, wanted: Wanted): InSlices<ShortlistAnswer | null> {
  const mine = `${wanted.option}|${wanted.surface}`;
  newest = mine;
  const begunAt = performance.now();
  const isOver = wanted.isWhole ? () => newest !== mine : () => performance.now() - begunAt > FIRST_MS;
  const found = yield* begin(from, wanted, isOver, wanted.isWhole ? undefined : FIRST_SLICE_MS);
  if (!found || (wanted.isWhole && pendingOf(found) > 0)) return null;
  return answerOf(found, wanted);
}

const pendingOf = ({ from, library }: Begun): number => from.length - library.length;

/** The same once the best are judged in a setting, which takes a while; null as soon as something newer is wanted. */
export function* shortlistInPlace(
  from: ShortlistSource & { readonly job: Job },
  wanted: Wanted,
  setting: string,
): InSlices<ShortlistAnswer | null> {
  const { project, job } = from;
  const found = yield* begin(from, wanted, never);
  if (!found) return null;
  const known = found.seen.get(setting);
  const ranking = wishing(found.ranking, wanted.wishes);
  const best = bestOf(ranking).map(({ candidate }) => candidate.finish.id);
  if (!known || best.some((finish) => !known.has(finish))) {
    const studied = yield* underSky(job, setting);
    if (!studied) return null;
    const steps = judgeInPlace(withFinishes(project, from.library, best), ranking, studied, known);
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
  return answerOf(found, wanted);
}

/** What is said of some finishes of a shortlist. */
export function* rowsNow(
  from: ShortlistSource,
  wanted: RowsWanted,
  finishes: readonly string[],
): InSlices<readonly ShortlistRow[] | null> {
  const found = begunFor(from, wanted) ?? (yield* begin(from, wanted, never));
  return found && rowsOf(listOf(found, wanted).ordered, new Set(finishes));
}

/** All there is to say for and against one finish; null where it is not among those judged. */
export function* whyNow(
  from: ShortlistSource,
  wanted: Pick<Wanted, 'option' | 'surface'>,
  finish: string,
): InSlices<readonly WhyPoint[] | null> {
  const found = begunFor(from, wanted) ?? (yield* begin(from, wanted, never));
  return found && whyPoints(found.ranking, finish, placesOf(found, finish));
}

const never = () => false;

/** What a list depends on, where the option is there. */
function placeFor({ project, job }: ShortlistSource, { option: id, surface }: Pick<Wanted, 'option' | 'surface'>) {
  const option = project.options.find((one) => one.id === id);
  if (!option) return null;
  const room = job && JSON.stringify(job.show.project.kitchen) === JSON.stringify(project.kitchen) ? job.room : null;
  return { option, room, key: keyOf(project, option, surface, room?.hasStudy ?? false) };
}

/** A list of the same finishes that was begun already, be it of some of them. */
function begunFor(source: ShortlistSource, wanted: Pick<Wanted, 'option' | 'surface'>): Begun | null {
  const place = placeFor(source, wanted);
  const before = place && begun.get(place.key);
  return before && isSame(before.from, source.library) ? before : null;
}

/** @param isOver once true, no more finishes are judged, but for those of the project */
function* begin(
  source: ShortlistSource,
  wanted: Pick<Wanted, 'option' | 'surface'>,
  isOver: () => boolean,
  sliceMs?: number,
): InSlices<Begun | null> {
  const { project, library } = source;
  const place = placeFor(source, wanted);
  if (!place) return null;
  const { option, room, key } = place;
  const before = begun.get(key);
  if (before && isSame(before.from, library) && (pendingOf(before) === 0 || isOver())) {
    keep(key, before);
    return withLaid(before, option.scheme[wanted.surface].finish);
  }
  const known = new Map(before?.ranking.standings.map((one) => [one.candidate, one]));
  const judged: Finish[] = [];
  const sorted = ownFirst(project, library);
  const options = {
    library: untilOver(sorted, judged, isOver),
    ...(sorted.others.length > 0 && { own: new Set(sorted.own.map(({ id }) => id)) }),
    ...(room && { present: presentSurfaces(room.basis.room) }),
    ...(room?.hasStudy && { meetings: meetingsOf(room.study) }),
  };
  const ranking = yield* inShortSlices(rankInSteps(project, wanted.option, wanted.surface, options, known), sliceMs);
  if (!ranking.ok) return null;
  const made: Begun = {
    from: library,
    library: judged,
    ranking: ranking.value,
    seen: seenStill(before, library),
    list: null,
  };
  keep(key, made);
  return made;
}

function ownFirst(project: Project, library: readonly Finish[]) {
  const own = new Set(project.library.map(({ id }) => id));
  return { own: library.filter(({ id }) => own.has(id)), others: library.filter(({ id }) => !own.has(id)) };
}

/** All of the project's own, and of the others as many as there is time for; `judged` is told which. */
function* untilOver(
  { own, others }: ReturnType<typeof ownFirst>,
  judged: Finish[],
  isOver: () => boolean,
): Generator<Finish, void> {
  for (const finish of own) {
    judged.push(finish);
    yield finish;
  }
  for (const finish of others) {
    if (isOver()) return;
    judged.push(finish);
    yield finish;
  }
}

function keep(key: string, made: Begun): void {
  begun.delete(key);
  begun.set(key, made);
  if (begun.size > MOST_BEGUN) begun.delete(begun.keys().next().value!);
}

/** What lies on the surface is only marked in the list. */
function withLaid(found: Begun, laid: string): Begun {
  const { ranking, list } = found;
  if (ranking.asked.laid === laid) return found;
  return Object.assign(found, {
    ranking: { ...ranking, asked: { ...ranking.asked, laid } },
    list: list && { ...list, ordered: { ...list.ordered, asked: { ...list.ordered.asked, laid } } },
  });
}

/** What was seen of finishes that are still the same. */
function seenStill(before: Begun | undefined, library: readonly Finish[]): Begun['seen'] {
  const there = new Set(library);
  const same = new Set(before?.library.filter((finish) => there.has(finish)).map(({ id }) => id));
  return new Map(
    [...(before?.seen ?? [])].map(([setting, places]) => [
      setting,
      new Map([...places].filter(([id]) => same.has(id))),
    ]),
  );
}

/** All that a surface's shortlist depends on but the library: what lies on it is not among that. */
function keyOf(
  { kitchen, settings, lamps, beams, users, library }: Project,
  option: Option,
  surface: SurfaceId,
  isSeen: boolean,
) {
  const changing = changesWith(option, surface);
  const around = Object.entries(option.scheme).filter(([one]) => !changing.includes(one as SurfaceId));
  const names = new Set(around.flatMap(([, { finish, laying }]) => [finish, laying.grout]));
  const laid = library.filter(({ id }) => names.has(id));
  return JSON.stringify([option.id, surface, changing, around, laid, kitchen, settings, lamps, beams, users, isSeen]);
}

/** Finishes are kept by the worker, so that the same one is the same object. */
const isSame = (a: readonly Finish[], b: readonly Finish[]): boolean =>
  a === b || (a.length === b.length && a.every((finish, i) => finish === b[i]));

/** The project as if it had taken in some of the finishes offered. */
function withFinishes(project: Project, library: readonly Finish[], ids: readonly string[]): Project {
  const has = new Set(project.library.map(({ id }) => id));
  const missing = new Set(ids.filter((id) => !has.has(id)));
  if (missing.size === 0) return project;
  return { ...project, library: [...project.library, ...library.filter(({ id }) => missing.has(id))] };
}

let lists = 0;

/** What is said of a finish rests on these wishes alone: what was seen for others, and is not among the best now, counts as a sample. */
function listOf(found: Begun, { wishes }: Pick<Wanted, 'wishes'>): NonNullable<Begun['list']> {
  const key = JSON.stringify([wishes, [...found.seen].map(([setting, places]) => [setting, places.size])]);
  if (found.list?.key === key) return found.list;
  const ranking = wishing(found.ranking, wishes);
  const best = bestOf(ranking).map(({ candidate }) => candidate.finish.id);
  const ordered = inOrder(ranking, new Map(best.map((finish) => [finish, placesOf(found, finish)])));
  found.list = { key, ordered, answer: { list: ++lists, outline: outlineOf(ordered), pending: pendingOf(found) } };
  return found.list;
}

function outlineOf(ordered: Ordered): ShortlistOutline {
  const { accepted, rejected } = ordered;
  return {
    ...headOf(ordered),
    accepted: accepted.map(({ candidate }) => candidate.finish.id),
    groups: accepted.map(({ group }) => group),
    rejected: rejected.map(({ candidate }) => candidate.finish.id),
    codes: rejected.map(codeOf),
  };
}

const placesOf = ({ seen }: Begun, finish: string): InPlace[] =>
  [...seen.values()].flatMap((places) => places.get(finish) ?? []);

/** Of so many all is said at once, the best first; of the others when it is asked for. */
const SAID_AT_ONCE = 150;

function answerOf(found: Begun, wanted: Wanted): ShortlistAnswer {
  const { answer, ordered } = listOf(found, wanted);
  if (answer.list === wanted.known) return { ...answer, outline: null, rows: [] };
  const { accepted, rejected } = ordered;
  const first = [...accepted, ...rejected].slice(0, SAID_AT_ONCE);
  return { ...answer, rows: rowsOf(ordered, new Set(first.map(({ candidate }) => candidate.finish.id))) };
}

const rowsOf = (ordered: Ordered, ids: ReadonlySet<string>): ShortlistRow[] => [
  ...ordered.accepted.flatMap(({ candidate }, i) => (ids.has(candidate.finish.id) ? acceptedRow(ordered, i) : [])),
  ...ordered.rejected.flatMap(({ candidate }, i) => (ids.has(candidate.finish.id) ? rejectedRow(ordered, i) : [])),
];
