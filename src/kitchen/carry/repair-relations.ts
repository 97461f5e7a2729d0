import type { Warning } from '../../engine/judge/assessment';
import { judge } from '../../engine/judge/judge';
import { checkInSteps } from '../../engine/judge/relations/check-relations';
import { drawnSchemes } from '../../engine/judge/relations/draw-schemes';
import { byWorth, counted, isWorse, isWorthIt, type Outcome } from '../../engine/judge/relations/follows';
import { readClaim } from '../../engine/judge/relations/rules';
import { replacedSurfaces, type SeenScheme } from '../../engine/judge/relations/seen-scheme';
import type { Relation, RelationCheck } from '../../engine/judge/relations/types';
import { compareFindings } from '../../engine/judge/repairs/compare-findings';
import { optionById } from '../../model/commands';
import { withFinishOn } from '../../model/lay-alike';
import type { Project } from '../../model/project';
import { presentSurfaces } from '../present-surfaces';
import { judgeTried } from '../study/judge-tried';
import type { RoomStudy } from '../study/room-study';
import type { SettingLight } from '../study/setting-light';
import { relationChanges, type SeenChange } from './relation-changes';
import { type RelationRepair, relationRepair } from './relation-repair';

/**
 * How many are run as installed, of one change at each place and of two; how many seeds each place gives for two; how many
 * single ones are offered: enough to choose from. Our judgment.
 */
const RUN_SINGLES = 6;
const RUN_PAIRS = 6;
const SEEDS_OF_PAIRS = 8;
const SEEDS_OF_PLACE = 2;
const OFFERED_SINGLES = 3;
/** Changes tried as samples between two pauses. */
const SLICE = 24;

interface Given {
  readonly project: Project;
  readonly option: string;
  /** The scheme as it is laid, with plausible errors of its colors. */
  readonly scheme: SeenScheme;
  readonly drawn: readonly SeenScheme[];
  readonly checks: readonly RelationCheck[];
  readonly warnings: readonly Warning[];
  readonly study: RoomStudy;
  readonly setting: SettingLight;
}

interface Tried {
  readonly changes: readonly SeenChange[];
  readonly outcome: Outcome;
}

/**
 * The one or two changes from the library, not of what is fixed or ordered, that mend most, net of what they break; none breaks more
 * than it mends. Ranked as `byWorth`, then what is open before what is decided, then fewer changes, then smaller ones. Yields
 * every few milliseconds.
 */
export function* repairRelations(given: Given): Generator<undefined, readonly RelationRepair[]> {
  const { project, study } = given;
  const option = optionById(project, given.option)!;
  const singles: Tried[] = [];
  for (const change of yield* relationChanges(project, option, presentSurfaces(study.room))) {
    singles.push(attempt([change], given));
    if (singles.length % SLICE === 0) yield;
  }
  const mending = singles.filter(({ outcome }) => outcome.mends.length > 0).sort(inOrder);
  // The best of each place: to change the island or the backsplash is a choice, two paints alike for one place are none.
  const sites = [...new Set(mending.map(siteOf))].map((site) => mending.filter((tried) => siteOf(tried) === site));
  const good: Run[] = [];
  for (const site of sites) {
    const worth = site.filter(({ outcome }) => isWorthIt(outcome));
    good.push(...(yield* firstThatRuns(worth.slice(0, RUN_SINGLES), given)));
  }
  good.sort(inOrder);
  const seeds = sites
    .flatMap((site) => site.slice(0, SEEDS_OF_PLACE))
    .sort(inOrder)
    .slice(0, SEEDS_OF_PAIRS);
  const best = good[0];
  const pairs: Tried[] = [];
  for (const first of seeds) {
    let count = 0;
    for (const second of singles) {
      if (overlaps(first, second)) continue;
      const pair = attempt([...first.changes, ...second.changes], given);
      if (isWorthIt(pair.outcome) && (!best || byWorth(pair.outcome, best.outcome) < 0)) pairs.push(pair);
      if (++count % SLICE === 0) yield;
    }
    yield;
  }
  const two = yield* firstThatRuns(pairs.sort(inOrder).slice(0, RUN_PAIRS), given);
  const better = two.filter((run) => !best || byWorth(run.outcome, best.outcome) < 0);
  return [...good.slice(0, OFFERED_SINGLES), ...better].sort(inOrder).map(({ repair }) => repair);
}

/** What changes make of the relations, by the colors as given: only those are read again that a change can have touched. */
function attempt(changes: readonly SeenChange[], { scheme, checks }: Given): Tried {
  const seen = changes.flatMap((one) => one.seen.surfaces);
  const after = replacedSurfaces(scheme, seen);
  const isTouched = ({ kind, surfaces }: Relation) =>
    kind === 'balance' || kind === 'pattern' || seen.some(({ surface }) => surfaces.includes(surface));
  const outcome = { mends: [] as Relation[], costs: [] as Relation[], worsens: [] as Relation[], opens: [] };
  for (const { relation, stands, by } of checks) {
    if (stands === 'cannot-tell' || !isTouched(relation)) continue;
    const reading = readClaim(relation.claim, after, relation.numbers);
    if (!reading) continue;
    if (stands === 'holds' && !reading.holds) outcome.costs.push(relation);
    if (stands === 'breaks' && reading.holds) outcome.mends.push(relation);
    if (stands === 'breaks' && !reading.holds && by && isWorse(by, reading.words().by)) outcome.worsens.push(relation);
  }
  return { changes, outcome: countedOnly(outcome) };
}

const countedOnly = (all: Outcome): Outcome => ({
  mends: countedOnes(all.mends),
  costs: countedOnes(all.costs),
  worsens: countedOnes(all.worsens),
  opens: countedOnes(all.opens),
});

const countedOnes = (relations: readonly Relation[]): readonly Relation[] => counted(relations, (one) => one);

interface Run extends Tried {
  readonly repair: RelationRepair;
}

function* firstThatRuns(list: readonly Tried[], given: Given): Generator<undefined, readonly Run[]> {
  for (const tried of list) {
    yield;
    const found = yield* run(tried, given);
    if (found) return [found];
  }
  return [];
}

const overlaps = (a: Tried, b: Tried): boolean =>
  a.changes.some(({ change }) =>
    b.changes.some((other) => other.change.surfaces.some((s) => change.surfaces.includes(s))),
  );

function inOrder(a: Tried, b: Tried): number {
  const decided = ({ changes }: Tried) => Number(changes.some(({ change }) => change.isDecided));
  const size = ({ changes }: Tried) => changes.reduce((sum, { change }) => sum + change.moved_de00, 0);
  return (
    byWorth(a.outcome, b.outcome) ||
    decided(a) - decided(b) ||
    a.changes.length - b.changes.length ||
    size(a) - size(b) ||
    (nameOf(a) < nameOf(b) ? -1 : 1)
  );
}

const siteOf = ({ changes }: Tried): string => changes.map(({ change }) => change.surfaces.join()).join('|');

const nameOf = ({ changes }: Tried): string =>
  changes.map(({ change }) => `${change.surfaces[0]}=${change.finish.id}`).join();

/** Runs it: what it mends must be mended under errors of the colors, too, and as installed nothing grave or visible may come. */
function* run({ changes }: Tried, given: Given): Generator<undefined, Run | null> {
  const { checks, warnings, study, setting, option } = given;
  const seen = changes.flatMap((one) => one.seen.surfaces);
  const after = replacedSurfaces(given.scheme, seen);
  const errors = drawnSchemes({ ...after, surfaces: seen, placed: changes.flatMap((one) => one.seen.placed) });
  const drawn = given.drawn.map((scheme, i) => replacedSurfaces(scheme, errors[i]!.surfaces));
  const now = yield* checkInSteps(
    checks.map(({ relation }) => relation),
    after,
    drawn,
  );
  const went = (from: readonly RelationCheck['stands'][], to: RelationCheck['stands']) =>
    checks.flatMap(({ relation, stands }, i) => (from.includes(stands) && now[i]!.stands === to ? [relation] : []));
  const all: Outcome = {
    mends: went(['breaks'], 'holds'),
    costs: went(['holds', 'cannot-tell'], 'breaks'),
    worsens: checks.flatMap(({ relation, by }, i) => (by && now[i]!.by && isWorse(by, now[i]!.by) ? [relation] : [])),
    opens: went(['holds'], 'cannot-tell'),
  };
  const outcome = countedOnly(all);
  if (!isWorthIt(outcome)) return null;
  yield;
  const laid = projectWith(changes, option);
  const input = laid && judgeTried(laid, option, study, setting);
  if (!input?.ok) return null;
  yield;
  const { added, cleared } = compareFindings(warnings, judge(input.value).warnings);
  if (added.length > 0) return null;
  const { scheme } = optionById(given.project, option)!;
  const clears = [...new Set(cleared.map(({ code }) => code))];
  const made = changes.map(({ change }) => change);
  return { changes, outcome, repair: relationRepair(made, (surface) => scheme[surface], all, outcome, clears) };
}

/** The project with the changes, one after the other. */
function projectWith(changes: readonly SeenChange[], option: string): Project | null {
  const [first, ...rest] = changes;
  let { project } = first!.change;
  for (const { change } of rest) {
    const laid = withFinishOn(project, optionById(project, option)!, change.surfaces, change.finish.id);
    if (!laid.ok) return null;
    project = laid.value;
  }
  return project;
}
