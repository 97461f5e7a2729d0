import { beforeAll, describe, expect, it } from 'vitest';
import { judge } from '../../src/engine/judge/judge';
import { checkRelations } from '../../src/engine/judge/relations/check-relations';
import { relationsOf } from '../../src/engine/judge/relations/relations-of';
import { compareFindings } from '../../src/engine/judge/repairs/compare-findings';
import { type CarriedLook, carryOver, type GivenLook } from '../../src/kitchen/carry/carry-over';
import { lookOfOption } from '../../src/kitchen/carry/look-of-option';
import { lookScheme } from '../../src/kitchen/carry/look-scheme';
import { relationScheme } from '../../src/kitchen/carry/relation-scheme';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import { type RoomStudy, studyRoomNow } from '../../src/kitchen/study/room-study';
import { type SettingLight, settingLight } from '../../src/kitchen/study/setting-light';
import { applyCommand } from '../../src/model/apply-command';
import { optionById } from '../../src/model/commands';
import { withFinishOn } from '../../src/model/lay-alike';
import type { CopiedLook, LookSurface } from '../../src/model/look';
import type { Project } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

// The demo's story: finishes are invented; what is expected of them follows from their colors by the rules, not from a list.
const project: Project = smallProject;
let study: RoomStudy;
let setting: SettingLight;
beforeAll(() => {
  const light = settingLight(project, project.settings[0]!);
  if (!light.ok) throw new Error(light.problem.text);
  setting = light.value;
  study = studyRoomNow(project, setting.daylight);
});

const got = <T>(result: { ok: true; value: T } | { ok: false; problem: { text: string } }): T => {
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
};
const tried = (of: Project, option: string) => got(judgeTried(of, option, study, setting));
const carried = (given: GivenLook, asIs = false): CarriedLook =>
  got(carryOver(given, project, 'our-floor', study, setting, { asIs }));
const ofOption = (id: string): GivenLook => ({
  look: got(lookOfOption(project, id)),
  seen: relationScheme(project, tried(project, id)),
  option: optionById(project, id)!,
});

const byEye = (hex: string): LookSurface['colors'] => [
  { role: 'base', share: 1, color: { kind: 'hex', hex }, provenance: 'by-eye' },
];
const look = (surfaces: readonly LookSurface[], source: CopiedLook['source'] = 'scheme'): CopiedLook => ({
  id: 'given',
  name: 'Given',
  source,
  surfaces,
});

describe('a look copied from over birch, carried to the slate that stays', () => {
  let found: CarriedLook;
  beforeAll(() => {
    found = carried(ofOption('copied-look'));
  });

  it('fails for the floor, and says so in plain words', () => {
    const [first] = found.breaks;
    expect(first!.relation.kind).toBe('balance');
    expect(first!.here).toMatch(
      /^There, the floor brought the warmth .* Here the floor is cool and stays, so nothing warm is left\.$/,
    );
    for (const { relation, kept } of found.breaks) {
      expect(relation.surfaces, relation.id).toContain('floor');
      expect(kept, relation.id).toContain('floor');
    }
  });
  it('keeps what is fixed and lays the rest as it was', () => {
    expect(found.kept).toEqual([expect.objectContaining({ surface: 'floor', why: 'fixed' })]);
    expect(found.laid.length).toBeGreaterThan(5);
    for (const { how, de00 } of found.laid) expect([how, de00]).toEqual(['same', 0]);
  });
  it('has nothing to lay where all that may change is as the look has it already', () => {
    expect(found.commands).toEqual([]);
  });
  it('is the same as the option as it stands, where the rest is the same already', () => {
    const asIs = carried(ofOption('copied-look'), true);
    expect(asIs.breaks).toEqual(found.breaks);
    expect(asIs.holds).toEqual(found.holds);
    expect(asIs.laid).toEqual([]);
  });

  it('offers repairs that do what they say, and ask for nothing new', () => {
    expect(found.repairs.length).toBeGreaterThan(0);
    const before = judge(tried(project, 'our-floor')).warnings.filter(({ severity }) => severity !== 'note');
    const given = ofOption('copied-look');
    const { relations } = relationsOf(given.seen!);
    for (const { changes, mends, costs } of found.repairs) {
      expect(changes.length).toBeLessThanOrEqual(2);
      let changed = project;
      for (const { surfaces, finish } of changes) {
        expect(surfaces).not.toContain('floor');
        changed = got(withFinishOn(changed, optionById(changed, 'our-floor')!, surfaces, finish));
      }
      const input = tried(changed, 'our-floor');
      const checks = checkRelations(relations, relationScheme(changed, input));
      const stands = (id: string) => checks.find(({ relation }) => relation.id === id)!.stands;
      for (const id of mends) expect(stands(id), id).toBe('holds');
      for (const id of costs) expect(stands(id), id).toBe('breaks');
      const after = judge(input).warnings.filter(({ severity }) => severity !== 'note');
      for (const one of after) {
        const known = before.find(({ code, basis }) => code === one.code && basis === one.basis);
        expect(known, `${one.code} on ${one.surfaces}`).toBeDefined();
      }
    }
  });
});

/** A look of declared colors, CIELAB D65, invented. */
const declared = (lab: readonly [number, number, number]): LookSurface['colors'] => [
  { role: 'base', share: 1, color: { kind: 'lab', lab, illuminant: 'D65', observer_deg: 2 }, provenance: 'declared' },
];
const inLab = (colors: Partial<Record<LookSurface['surface'], readonly [number, number, number]>>): CopiedLook =>
  look(
    Object.entries(colors).map(([surface, lab]) => ({
      surface: surface as LookSurface['surface'],
      colors: declared(lab),
    })),
  );

// Looks over floors they were not made for: what is offered is applied as the page does it, and read again.
it.each<[string, CopiedLook, string]>([
  [
    'white over oak, over slate',
    inLab({
      counter: [93, 0, 2],
      floor: [70, 6, 22],
      'base-fronts': [94, -1, 3],
      backsplash: [95, 0, 1],
      wall: [92, 0, 4],
      hardware: [35, 0, 1],
    }),
    'ST-01',
  ],
  [
    'sage over terracotta, over birch',
    inLab({
      counter: [80, 1, 6],
      floor: [50, 25, 28],
      'base-fronts': [62, -9, 8],
      backsplash: [90, 1, 8],
      wall: [90, 1, 8],
    }),
    'WD-01',
  ],
  [
    'all dark, over limestone',
    inLab({
      counter: [20, 0, 0],
      floor: [25, 1, 2],
      'base-fronts': [22, 0, -1],
      backsplash: [28, 0, 1],
      wall: [30, 0, 0],
    }),
    'ST-02',
  ],
  [
    'colors that no finish is near',
    inLab({
      counter: [90, 0, 1],
      floor: [70, 6, 22],
      'base-fronts': [75, 30, 5],
      backsplash: [60, 50, -20],
      wall: [85, 15, 5],
    }),
    'TL-07',
  ],
])('every repair of %s does what it says, and loses no more than it mends', (_, given, floor) => {
  const target = got(
    applyCommand(project, { kind: 'lay-finish', option: 'our-floor', surface: 'floor', finish: floor }),
  );
  const found = got(carryOver({ look: given }, target, 'our-floor', study, setting));
  const told = found.causes.flatMap((cause) => cause.relations);
  expect([...told].sort()).toEqual(found.breaks.map(({ relation }) => relation.id).sort());
  for (const one of found.laid) {
    if (one.how === 'none') expect(optionById(target, 'our-floor')!.scheme[one.surface].finish).toBe(one.finish);
    else expect(one.de00).toBeLessThanOrEqual(10);
  }
  const laid = got(applyCommand(target, { kind: 'together', label: '', commands: found.commands }));
  const { relations } = relationsOf(got(lookScheme(given)));
  const before = judge(tried(laid, 'our-floor')).warnings;
  for (const { changes, mends, costs, opens, counts, text } of found.repairs) {
    let changed = laid;
    for (const { surfaces, finish } of changes) {
      changed = got(withFinishOn(changed, optionById(changed, 'our-floor')!, surfaces, finish));
    }
    const input = tried(changed, 'our-floor');
    const checks = checkRelations(relations, relationScheme(changed, input));
    const stands = (id: string) => checks.find(({ relation }) => relation.id === id)!.stands;
    expect(mends.map(stands), text).toEqual(mends.map(() => 'holds'));
    expect(costs.map(stands), text).toEqual(costs.map(() => 'breaks'));
    expect(opens.map(stands), text).toEqual(opens.map(() => 'cannot-tell'));
    const others = [...found.holds.map(({ relation }) => relation.id)].filter(
      (id) => ![...costs, ...opens].includes(id),
    );
    expect(others.map(stands), text).toEqual(others.map(() => 'holds'));
    expect(counts.mends, text).toBeGreaterThanOrEqual(counts.costs + counts.worsens + counts.opens);
    expect(compareFindings(before, judge(input).warnings).added, text).toEqual([]);
  }
});

describe('looks that say little', () => {
  it('by eye only: far fewer relations, none of them on whites', () => {
    const given = look([
      { surface: 'counter', colors: byEye('#dedede') },
      { surface: 'floor', colors: byEye('#cdb188') },
      { surface: 'base-fronts', colors: byEye('#145454') },
      { surface: 'backsplash', colors: byEye('#ecebe7') },
    ]);
    const found = carried({ look: given });
    expect(found.views).toBe('typical');
    const ids = [...found.holds, ...found.breaks, ...found.cannot_tell].map(({ relation }) => relation.id);
    expect(ids).toContain('step:floor+base-fronts');
    expect(ids).not.toContain('echo:counter+backsplash');
    expect(found.left_out.length).toBeGreaterThan(0);
    expect(found.kept.find(({ surface }) => surface === 'wall')).toMatchObject({ why: 'not-in-look' });
  });
  it('from a picture: the nearest finish within ten, said with how far; else what lay there stays', () => {
    const given = look(
      [
        { surface: 'base-fronts', colors: byEye('#145454') },
        // A pink that no finish of the library comes near.
        { surface: 'wall', colors: byEye('#ff4fa0') },
      ],
      'picture',
    );
    const found = carried({ look: given });
    const laidOn = (surface: string) => found.laid.find((one) => one.surface === surface)!;
    expect(laidOn('base-fronts')).toMatchObject({ how: 'nearest' });
    expect(laidOn('base-fronts').de00).toBeLessThan(10);
    // One point stands for all the fronts.
    expect(laidOn('island-fronts').finish).toBe(laidOn('base-fronts').finish);
    expect(laidOn('wall')).toMatchObject({ how: 'none', finish: 'PT-02' });
  });
  it('one finish everywhere: a small, true answer', () => {
    const everywhere = (['counter', 'floor', 'base-fronts', 'backsplash', 'wall'] as const).map(
      (surface): LookSurface => ({ surface, colors: byEye('#9a9a9a') }),
    );
    const found = carried({ look: look(everywhere) }, true);
    const kinds = new Set([...found.holds, ...found.breaks].map(({ relation }) => relation.kind));
    expect(kinds.has('opposition')).toBe(false);
    expect(kinds.has('order')).toBe(false);
  });
});

it('an option that holds the look has nothing to repair', () => {
  const own = got(carryOver(ofOption('copied-look'), project, 'copied-look', study, setting));
  expect(own.breaks).toEqual([]);
  expect(own.cannot_tell).toEqual([]);
  expect(own.repairs).toEqual([]);
});

it('the commands lay what was judged', () => {
  const given = ofOption('copied-look');
  const other = got(
    applyCommand(project, { kind: 'lay-finish', option: 'our-floor', surface: 'backsplash', finish: 'TL-04' }),
  );
  const found = got(carryOver(given, other, 'our-floor', study, setting));
  const laid = got(applyCommand(other, { kind: 'together', label: '', commands: found.commands }));
  const { floor, ...rest } = optionById(laid, 'our-floor')!.scheme;
  expect(floor.finish).toBe('ST-01');
  const { floor: _, ...wanted } = optionById(project, 'copied-look')!.scheme;
  for (const [surface, { finish }] of Object.entries(wanted)) {
    expect(rest[surface as keyof typeof rest].finish, surface).toBe(finish);
  }
});

it('names and unused finishes change nothing of what holds and breaks', () => {
  const renamed: Project = {
    ...project,
    library: project.library
      .filter(({ id }) => id !== 'WD-09')
      .map((finish) => ({ ...finish, label: `Called otherwise ${finish.id}` })),
  };
  const given = ofOption('copied-look');
  const [one, other] = [project, renamed].map((of) =>
    got(carryOver(given, of, 'our-floor', study, setting, { asIs: true })),
  );
  expect(other!.breaks).toEqual(one!.breaks);
  expect(other!.holds).toEqual(one!.holds);
});
