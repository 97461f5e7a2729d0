import { differenceCiede2000 } from '../../engine/color/difference';
import { averageComponent } from '../../engine/finish/average';
import type { Warning, WarningCode } from '../../engine/judge/assessment';
import type { JudgeInput } from '../../engine/judge/input';
import { judge } from '../../engine/judge/judge';
import { brokenIn, checkRelations } from '../../engine/judge/relations/check-relations';
import { placesOf } from '../../engine/judge/relations/places';
import { replacedSurfaces, type SeenScheme, seenScheme } from '../../engine/judge/relations/seen-scheme';
import type { Relation, RelationCheck } from '../../engine/judge/relations/types';
import { compareFindings } from '../../engine/judge/repairs/compare-findings';
import { joined, sentenceCase, surfacesPhrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { optionById } from '../../model/commands';
import { figureSizeMm } from '../../model/figure-size';
import { candidatesFor, isTooFlatFor } from '../../model/finish-candidates';
import { laidAlike, withFinishOn } from '../../model/lay-alike';
import { layingFor } from '../../model/laying';
import type { Finish, Option, Project } from '../../model/project';
import { judgeTried } from '../study/judge-tried';
import { layFinish } from '../study/lay-finish';
import type { RoomStudy } from '../study/room-study';
import { libraryOf } from '../study/scheme';
import type { SettingLight } from '../study/setting-light';
import { relationScheme } from './relation-scheme';

/** How many are run as installed, of one change at each place and of two, and how many are offered: enough to choose from. Our judgment. */
const RUN_SINGLES = 10;
const RUN_PAIRS = 8;
const SEEDS_OF_PAIRS = 6;
const OFFERED_SINGLES = 3;

export interface RelationChange {
  readonly surfaces: readonly SurfaceId[];
  readonly from: string;
  readonly finish: string;
  readonly label: string;
}

/** One or two changes that mend broken relations; run as samples and as installed before it is offered. */
export interface RelationRepair {
  readonly changes: readonly RelationChange[];
  /** Relations that hold again, by id. */
  readonly mends: readonly string[];
  /** Relations that held and no longer do: the price. */
  readonly costs: readonly string[];
  readonly clears: readonly WarningCode[];
  readonly text: string;
}

interface Given {
  readonly project: Project;
  readonly option: string;
  readonly input: JudgeInput;
  readonly checks: readonly RelationCheck[];
  readonly warnings: readonly Warning[];
  readonly study: RoomStudy;
  readonly setting: SettingLight;
}

interface Tried {
  readonly changes: readonly (RelationChange & { readonly seen: SeenScheme['surfaces']; readonly de00: number })[];
  readonly mends: readonly Relation[];
  readonly costs: readonly Relation[];
}

/** The one or two changes from the library, not of what is fixed or ordered, that mend most; most telling first. Yields between runs. */
export function* repairRelations(given: Given): Generator<undefined, readonly RelationRepair[]> {
  const { checks } = given;
  const broken = checks.filter(({ stands }) => stands === 'breaks').map(({ relation }) => relation);
  const held = checks.filter(({ stands }) => stands === 'holds').map(({ relation }) => relation);
  const scheme = seenScheme(relationScheme(given.project, given.input));
  const option = optionById(given.project, given.option)!;
  const attempt = (changes: Tried['changes']): Tried => {
    const after = replacedSurfaces(
      scheme,
      changes.flatMap(({ seen }) => seen),
    );
    const left = brokenIn(broken, after);
    return { changes, mends: broken.filter((one) => !left.includes(one)), costs: brokenIn(held, after) };
  };
  const singles = changesOf(given.project, option, scheme).map((change) => attempt([change]));
  const worth = singles.filter(({ mends }) => mends.length > 0).sort(byWorth);
  // The best of each place: to change the island or the backsplash is a choice, two paints alike for one place are none.
  const sites = [...new Set(worth.map(siteOf))];
  const good: Run[] = [];
  for (const site of sites) {
    const here = worth.filter((tried) => siteOf(tried) === site).slice(0, RUN_SINGLES);
    good.push(...(yield* firstThatRuns(here, given, option)));
  }
  good.sort((a, b) => byWorth(a.tried, b.tried));
  const best = good[0]?.tried;
  const pairs = worth
    .slice(0, SEEDS_OF_PAIRS)
    .flatMap((first) =>
      worth
        .filter((second) => !overlaps(first, second))
        .map((second) => attempt([...first.changes, ...second.changes])),
    )
    .filter((pair) => !best || byWorth(pair, best) < 0)
    .sort(byWorth);
  const two = yield* firstThatRuns(pairs.slice(0, RUN_PAIRS), given, option);
  return [...good.slice(0, OFFERED_SINGLES), ...two].map(({ repair }) => repair);
}

interface Run {
  readonly tried: Tried;
  readonly repair: RelationRepair;
}

function* firstThatRuns(list: readonly Tried[], given: Given, option: Option): Generator<undefined, readonly Run[]> {
  for (const tried of list) {
    const found = run(tried, given, option);
    if (found) return [found];
    yield;
  }
  return [];
}

const overlaps = (a: Tried, b: Tried): boolean =>
  a.changes.some(({ surfaces }) => b.changes.some((other) => other.surfaces.some((s) => surfaces.includes(s))));

/**
 * Lexical, never one score: what mends the balance of the whole first, then what mends more than it costs by most, then what
 * costs least, then the smaller change. Our judgment.
 */
function byWorth(a: Tried, b: Tried): number {
  const whole = (tried: Tried) =>
    (tried.mends.some(({ kind }) => kind === 'balance') ? 1 : 0) -
    (tried.costs.some(({ kind }) => kind === 'balance') ? 1 : 0);
  const net = (tried: Tried) => tried.mends.length - tried.costs.length;
  const size = (tried: Tried) => tried.changes.reduce((sum, { de00 }) => sum + de00, 0);
  return (
    whole(b) - whole(a) ||
    net(b) - net(a) ||
    a.costs.length - b.costs.length ||
    a.changes.length - b.changes.length ||
    size(a) - size(b) ||
    (nameOf(a) < nameOf(b) ? -1 : 1)
  );
}

const siteOf = ({ changes }: Tried): string => changes.map(({ surfaces }) => surfaces.join()).join('|');

const nameOf = ({ changes }: Tried): string => changes.map(({ surfaces, finish }) => `${surfaces[0]}=${finish}`).join();

/** Every usual finish of the library on every place that may change; an island's fronts also by themselves. */
function changesOf(project: Project, option: Option, scheme: SeenScheme): Tried['changes'][number][] {
  const library = libraryOf(project);
  const places = placesOf(scheme).filter(({ isLarge }) => isLarge);
  const seeds = places.flatMap(({ surfaces }) => {
    const open = surfaces.filter((s) => option.scheme[s].state === 'open' || option.scheme[s].state === 'decided');
    const [first] = open;
    if (!first) return [];
    const whole = laidAlike(option, first);
    return whole.includes('island-fronts') && whole.length > 1 && open.includes('island-fronts')
      ? [whole, ['island-fronts'] as const]
      : [whole];
  });
  return seeds.flatMap((surfaces) => {
    const [first] = surfaces;
    const before = option.scheme[first!];
    return candidatesFor(project.library, first!).flatMap((finish) => {
      if (finish.id === before.finish || isTooFlatFor(finish, first!)) return [];
      const change = changeTo(finish, surfaces, option, project, library, scheme);
      return change ? [change] : [];
    });
  });
}

function changeTo(
  finish: Finish,
  surfaces: readonly SurfaceId[],
  option: Option,
  project: Project,
  library: ReadonlyMap<string, Finish>,
  scheme: SeenScheme,
): Tried['changes'][number] | null {
  const [first] = surfaces;
  const before = option.scheme[first!];
  const placement = { ...before, finish: finish.id, laying: layingFor(finish, first!, project.library, before.laying) };
  const laid = layFinish(library, placement);
  const was = layFinish(library, before);
  if (!laid.ok || !was.ok) return null;
  const pattern = { kind: finish.pattern.kind, scale_mm: figureSizeMm(finish) };
  const judged = surfaces
    .filter((surface) => scheme.views.has(surface))
    .map((surface) => ({ surface, finish: laid.value, state: before.state, installed: [] }));
  const patterns = new Map(surfaces.map((surface) => [surface, pattern]));
  const de00 = differenceCiede2000(
    averageComponent(laid.value.components).labD65,
    averageComponent(was.value.components).labD65,
  );
  const seen = seenScheme({ input: { ...NO_INPUT, surfaces: judged }, patterns }).surfaces;
  return { surfaces, from: before.finish, finish: finish.id, label: finish.label, seen, de00 };
}

const NO_INPUT: Omit<JudgeInput, 'surfaces'> = {
  project: '',
  option: '',
  setting: { id: '', cct_k: null, duv: null },
  lights: 'one',
  burning: { daylight: true, lamps: false },
  overviews: [],
};

/** Runs it as installed: nothing grave or visible may come, and what it mends must be mended under errors of the colors, too. */
function run(tried: Tried, { project, checks, warnings, study, setting }: Given, option: Option): Run | null {
  let changed = project;
  for (const { surfaces, finish } of tried.changes) {
    const laid = withFinishOn(changed, optionById(changed, option.id)!, surfaces, finish);
    if (!laid.ok) return null;
    changed = laid.value;
  }
  const input = judgeTried(changed, option.id, study, setting);
  if (!input.ok) return null;
  const { added, cleared } = compareFindings(warnings, judge(input.value).warnings);
  if (added.length > 0) return null;
  const relations = checks.filter(({ stands }) => stands !== 'cannot-tell').map(({ relation }) => relation);
  const now = new Map(
    checkRelations(relations, relationScheme(changed, input.value)).map((c) => [c.relation.id, c.stands]),
  );
  const mends = checks.filter(({ stands, relation }) => stands === 'breaks' && now.get(relation.id) === 'holds');
  if (mends.length === 0) return null;
  const costs = checks.filter(({ stands, relation }) => stands === 'holds' && now.get(relation.id) === 'breaks');
  const clears = [...new Set(cleared.map(({ code }) => code))];
  const changes = tried.changes.map(({ surfaces, from, finish, label }) => ({ surfaces, from, finish, label }));
  const ids = (list: readonly RelationCheck[]) => list.map(({ relation }) => relation.id);
  const repair = { changes, mends: ids(mends), costs: ids(costs), clears, text: repairText(changes, mends, costs) };
  return { tried, repair };
}

function repairText(
  changes: readonly RelationChange[],
  mends: readonly RelationCheck[],
  costs: readonly RelationCheck[],
): string {
  const what = joined(changes.map(({ surfaces, label }) => `${label} on ${surfacesPhrase(surfaces).text}`));
  const count = (n: number) => `${n} ${n === 1 ? 'relation' : 'relations'}`;
  const price = costs.length === 0 ? 'It breaks none.' : `It breaks ${count(costs.length)} that held.`;
  return `${sentenceCase(what)}: mends ${count(mends.length)}. ${price} Nothing new is asked for.`;
}
