import { beforeAll, describe, expect, it } from 'vitest';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { compareFindings } from '../../src/engine/judge/repairs/compare-findings';
import { isRepairable } from '../../src/engine/judge/repairs/repairable';
import type { DecisionState, SurfaceId } from '../../src/engine/surface';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import { findRepairs } from '../../src/kitchen/study/repairs/find-repairs';
import { type RoomStudy, studyRoomNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { type SettingLight, settingLight } from '../../src/kitchen/study/setting-light';
import { solveBurning } from '../../src/kitchen/study/solve-burning';
import { familyOf } from '../../src/model/families';
import { laidAlike, withFinishOn } from '../../src/model/lay-alike';
import type { Placement, Project } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

// A repair does what it says: found in a small room by day, then made and judged anew as any change is. Which changes are
// found rests on the rules of the judge, tested elsewhere; expectations here are of the search alone.

const OPTION = 'our-floor';

type Laid = Partial<Record<SurfaceId, string>>;

/** Half of the demo's library, and all that is laid here: enough to choose from, and quick. */
const NEEDED = /^(GR|MT)|^(PT-0[1-7]|PT-1[24]|EN-0[136]|TL-0[124]|ST-01|WD-0[13]|LM-0[1-3])$/;
const library = smallProject.library.filter(({ id }, i) => NEEDED.test(id) || i % 3 === 0);

/** The copied look on the slate, with other finishes laid on some families; what is not named stays. */
function withLaid(laid: Laid, states: Partial<Record<SurfaceId, DecisionState>> = {}): Project {
  let project: Project = { ...smallProject, library };
  for (const [surface, finish] of Object.entries(laid) as [SurfaceId, string][]) {
    const option = project.options.find(({ id }) => id === OPTION)!;
    const next = withFinishOn(project, option, laidAlike(option, surface), finish);
    if (!next.ok) throw new Error(next.problem.text);
    project = next.value;
  }
  const stated = Object.entries(states).flatMap(([surface, state]) =>
    familyOf(surface as SurfaceId).map((one) => [one, state] as const),
  );
  return {
    ...project,
    options: project.options.map((option) => ({
      ...option,
      scheme: {
        ...option.scheme,
        ...Object.fromEntries(
          stated.map(([surface, state]): [SurfaceId, Placement] => [surface, { ...option.scheme[surface], state }]),
        ),
      },
    })),
  };
}

let study: RoomStudy;
let setting: SettingLight;
beforeAll(() => {
  const light = settingLight(smallProject, smallProject.settings[0]!);
  if (!light.ok) throw new Error(light.problem.text);
  setting = light.value;
  study = studyRoomNow(smallProject, setting.daylight);
});

function heldOf(project: Project) {
  const input = judgeTried(project, OPTION, study, setting, true);
  const scheme = layScheme(project, OPTION, study.room.surfaces);
  if (!input.ok || !scheme.ok) throw new Error('cannot be laid');
  const solved = solveBurning(study, scheme.value, setting);
  return { input: input.value, solved, held: holdsIn(input.value, judge(input.value)) };
}

function search(project: Project) {
  const option = project.options.find(({ id }) => id === OPTION)!;
  const steps = findRepairs({ project, option, study, setting, ...heldOf(project) }, []);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** A fault of each kind that a finish may clear, in three families of material or more. */
const FAULTS: readonly (readonly [name: string, laid: Laid])[] = [
  ['a yellowish glazed tile beside the cool counter', { backsplash: 'TL-02' }],
  ['a bluish laminate counter', { counter: 'LM-01' }],
  ['yellowish white paint on the wall', { wall: 'PT-07' }],
  ['green-gray painted fronts', { 'base-fronts': 'PT-14' }],
  ['olive-gray laminate fronts', { 'base-fronts': 'LM-02' }],
  ['a pinkish terrazzo counter', { counter: 'EN-06' }],
  ['walnut all around, nothing cool', { 'base-fronts': 'WD-03', counter: 'LM-03', wall: 'PT-12', backsplash: 'TL-04' }],
];

describe.each(FAULTS)('%s', (_, laid) => {
  it('has repairs that do what they say, or a reason why not', () => {
    const project = withLaid(laid);
    const option = project.options.find(({ id }) => id === OPTION)!;
    const before = heldOf(project).held;
    const { repairs, unrepaired, status, warnings } = search(project);
    expect(status).toBe('done');
    const wanted = warnings.filter(isRepairable);
    expect(wanted.length).toBeGreaterThan(0);
    for (const { code, surfaces } of wanted) {
      const isIt = (ref: { code: string; surfaces: readonly string[] }) =>
        ref.code === code && String(ref.surfaces) === String(surfaces);
      const isHelped = repairs.some(({ cleared, softened }) => [...cleared, ...softened].some(isIt));
      expect(isHelped).not.toBe(unrepaired.some(isIt));
    }
    for (const repair of repairs) {
      const [change] = repair.changes;
      for (const surface of change!.surfaces) expect(['open', 'decided']).toContain(option.scheme[surface].state);
      const made = withFinishOn(project, option, laidAlike(option, repair.surface), repair.finish);
      if (!made.ok) throw new Error(made.problem.text);
      const after = heldOf(made.value).held;
      const { cleared, softened, added, addedNotes } = compareFindings(before.warnings, after.warnings);
      const refs = (list: typeof cleared) => list.map(({ code, surfaces }) => ({ code, surfaces }));
      expect(refs(cleared)).toEqual(expect.arrayContaining([...repair.cleared]));
      expect(refs(softened)).toEqual(repair.softened);
      expect(added).toEqual([]);
      expect(addedNotes.map(({ text }) => text)).toEqual(repair.added.map(({ text }) => text));
      expect(repair.changes_decided).toBe(change!.surfaces.some((s) => option.scheme[s].state === 'decided'));
    }
  });
});

describe('what a repair may change', () => {
  it('is never what is fixed or ordered', () => {
    const project = withLaid({ backsplash: 'TL-02' }, { backsplash: 'ordered', counter: 'fixed', upstand: 'fixed' });
    const { repairs, unrepaired } = search(project);
    const changed = repairs.flatMap(({ changes }) => changes.flatMap(({ surfaces }) => surfaces));
    for (const surface of ['backsplash', 'counter', 'island-counter', 'upstand', 'floor']) {
      expect(changed).not.toContain(surface);
    }
    expect(unrepaired.length).toBeGreaterThan(0);
  });

  it('is something decided only where nothing open will do, and then it is said', () => {
    const { repairs } = search(withLaid({ backsplash: 'TL-02' }, { backsplash: 'decided' }));
    const ofTile = repairs.filter(({ changes }) => changes[0]!.surfaces.includes('backsplash'));
    for (const { changes_decided, text } of ofTile) {
      expect(changes_decided).toBe(true);
      expect(text).toContain('changes what is decided');
    }
  });
});

const laidOn = (project: Project, surface: SurfaceId): string =>
  project.options.find(({ id }) => id === OPTION)!.scheme[surface].finish;
const classOf = (finish: string) => library.find(({ id }) => id === finish)!.class;
const isHere = (project: Project, finish: string): boolean =>
  Object.values(project.options.find(({ id }) => id === OPTION)!.scheme).some((placed) => placed.finish === finish);

describe('the search', () => {
  it('offers a white that is here already before one that brings another finish', () => {
    const { repairs } = search(withLaid({ wall: 'PT-07' }));
    expect(repairs[0]!.changes[0]!.surfaces).toContain('wall');
    expect(isHere(withLaid({ wall: 'PT-07' }), repairs[0]!.finish)).toBe(true);
  });

  it('finds the same whatever the order of the library and the names in it, the smallest change first', () => {
    const project = withLaid({ backsplash: 'TL-02' });
    const renamed = {
      ...project,
      library: [...project.library].reverse().map((finish) => ({ ...finish, label: `A finish, ${finish.id}` })),
    };
    const bare = (of: Project) =>
      search(of).repairs.map(({ changes, cleared, softened, adds }) => ({
        changes: changes.map(({ surfaces, finish, moved_de00 }) => ({ surfaces, finish, moved_de00 })),
        cleared,
        softened,
        adds,
      }));
    const found = bare(project);
    expect(found.length).toBeGreaterThan(0);
    expect(bare(renamed)).toEqual(found);
    // What clears everything comes before what leaves a note or holds from some places only; of either, what lies here already, then the smallest.
    const order = search(project).repairs.map(({ softened, otherwise_from, changes, surface, finish }) => [
      softened.length + otherwise_from.length > 0 ? 1 : 0,
      isHere(project, finish) && classOf(finish) === classOf(laidOn(project, surface)) ? 0 : 1,
      changes[0]!.moved_de00,
    ]);
    expect(order).toEqual([...order].sort((x, y) => x[0]! - y[0]! || x[1]! - y[1]! || x[2]! - y[2]!));
  });
});
