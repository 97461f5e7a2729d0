import { describe, expect, it } from 'vitest';
import { settingsSentence } from '../../src/engine/judge/balance-settings';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { carryOver } from '../../src/kitchen/carry/carry-over';
import { compareOptions } from '../../src/kitchen/carry/compare-options';
import { lookOfOption } from '../../src/kitchen/carry/look-of-option';
import { balanceIn } from '../../src/kitchen/study/balance-in-setting';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import { libraryChanges } from '../../src/kitchen/study/repairs/library-changes';
import { studyRoomNow } from '../../src/kitchen/study/room-study';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { presentIn, shortlistSamples } from '../../src/kitchen/study/shortlist-samples';
import { EMPTY } from '../../src/model/empty-surface';
import type { Option, Project } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

const whole = smallProject.options.find(({ id }) => id === 'our-floor')!;

const without = (id: string, empty: readonly SurfaceId[]): Option => ({
  ...whole,
  id,
  name: id,
  scheme: { ...whole.scheme, ...Object.fromEntries(empty.map((surface) => [surface, EMPTY])) },
});

const SEVERAL: readonly SurfaceId[] = ['counter', 'base-fronts', 'wall', 'tap'];
const one = without('one', ['floor']);
const several = without('several', SEVERAL);
const all = without('all', SURFACES);
const project: Project = { ...smallProject, options: [whole, one, several, all] };

const made = settingLight(project, project.settings[0]!);
if (!made.ok) throw new Error(made.problem.text);
const light = made.value;
const study = studyRoomNow(project, light.daylight);
const present = presentIn(project);

function judged({ id }: Option) {
  const input = judgeTried(project, id, study, light, true);
  if (!input.ok) throw new Error(input.problem.text);
  return holdsIn(input.value, judge(input.value), { draws: 20 });
}

function shortlisted({ id }: Option, surface: SurfaceId) {
  const list = shortlistSamples(project, id, surface);
  if (!list.ok) throw new Error(list.problem.text);
  return list.value;
}

/** Every number there is, however deep. */
const numbers = (value: unknown): readonly number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbers)
      : [];

describe.each<[string, Option, readonly SurfaceId[]]>([
  ['one', one, ['floor']],
  ['several', several, SEVERAL],
])('an option with %s of its surfaces empty', (_, option, empty) => {
  const { surfaces, pairs, warnings, balance } = judged(option);

  it('is judged by the others alone', () => {
    const named = [
      ...surfaces.map(({ surface }) => surface),
      ...pairs.flatMap(({ a, b }) => [a.surface, b.surface]),
      ...warnings.flatMap((warning) => warning.surfaces),
      ...surfaces.flatMap(({ installed }) => installed.flatMap(({ tint_from }) => tint_from.map((s) => s.surface))),
    ];
    expect(surfaces.map(({ surface }) => surface)).toEqual(
      SURFACES.filter((surface) => present.includes(surface) && !empty.includes(surface)),
    );
    for (const surface of empty) expect(named).not.toContain(surface);
  });
  it('has a balance of what is chosen, and says so', () => {
    const { warm_share, leaning_share, cool_share, neutral_share } = balance;
    expect(warm_share + leaning_share + cool_share + neutral_share).toBeCloseTo(1, 9);
    expect(balance.sentence).toMatch(/^So far: .* Nothing is chosen yet for the /);
    for (const { code, severity } of warnings) if (code.startsWith('lacks')) expect(severity).toBe('note');
  });
  it('is no part of what a shortlist holds against, and none is filled by a repair', () => {
    const list = shortlisted(option, 'backsplash');
    expect(list.held_against.length).toBeGreaterThan(0);
    for (const { surface } of list.held_against) expect(empty).not.toContain(surface);
    for (const change of libraryChanges(project, option, present)) {
      for (const surface of change.surfaces) expect(empty).not.toContain(surface);
    }
  });
});

describe('an option with nothing chosen', () => {
  it('gets an answer without surfaces that says so', () => {
    const assessment = judged(all);
    expect(assessment).toMatchObject({ surfaces: [], pairs: [], warnings: [] });
    expect(assessment.balance).toMatchObject({
      verdict: 'nothing-chosen',
      sentence: 'Nothing is chosen yet, so there is no warm or cool to weigh.',
    });
    expect(assessment.setting.cct_k).toBeGreaterThan(0);
    for (const value of numbers(assessment)) expect(value).toSatisfy(Number.isFinite);
    const balance = balanceIn(project, all.id, { name: 'Day', study, light });
    expect(balance.ok && settingsSentence([balance.value])).toBe('Nothing is chosen yet that could be weighed.');
  });
  it('has shortlists with nothing to hold against', () => {
    const { held_against, accepted, rejected } = shortlisted(all, 'floor');
    expect(held_against).toEqual([]);
    expect(accepted.length).toBeGreaterThan(0);
    expect(new Set(rejected.map(({ code }) => code))).toEqual(new Set(['not-made-for-it']));
    expect(libraryChanges(project, all, present)).toEqual([]);
  });
});

describe('a look', () => {
  const lookOf = ({ id }: Option) => {
    const look = lookOfOption(project, id);
    if (!look.ok) throw new Error(look.problem.text);
    return look.value;
  };
  const carried = (from: Option, to: Option) => {
    const found = carryOver({ look: lookOf(from), option: from }, project, to.id, study, light, {
      asIs: from === whole,
    });
    if (!found.ok) throw new Error(found.problem.text);
    return found.value;
  };

  it('is taken from what is chosen alone', () => {
    const named = lookOf(several).surfaces.map(({ surface }) => surface);
    expect(named).toEqual(SURFACES.filter((surface) => !SEVERAL.includes(surface)));
    expect(lookOf(all).surfaces).toEqual([]);
  });
  it('of nothing changes nothing and claims nothing', () => {
    const { laid, commands, holds, breaks } = carried(all, whole);
    expect([laid, commands, holds, breaks]).toEqual([[], [], [], []]);
  });
  it('neither holds nor breaks where nothing is chosen', () => {
    const { holds, breaks, repairs } = carried(whole, all);
    expect([holds, breaks, repairs]).toEqual([[], [], []]);
  });
});

it('compares options by what both have', () => {
  const found = compareOptions(project, one.id, several.id, 'evening');
  expect(found.ok && found.value.changed).toEqual([]);
});
