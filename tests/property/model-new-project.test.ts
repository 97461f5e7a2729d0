import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { parseProject, projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import { usualRoom } from '../../src/model/new-kitchen';
import { LAYOUTS } from '../../src/model/new-kitchen/layout-drafts';
import { type Answers, newProject } from '../../src/model/new-project';
import { LAMP_GROUPS, type Project, USERS } from '../../src/model/project';
import { demoProject } from '../io/demo';

const from = demoProject();
const made = (answers: Answers): Project => {
  const result = newProject(answers, from, 'mine');
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
};

const answers: fc.Arbitrary<Answers> = fc.record(
  {
    stays: fc.uniqueArray(
      fc.record({ surface: fc.constantFrom(...SURFACES), finish: fc.constantFrom('EN-01', 'PT-01', null) }),
      { selector: ({ surface }) => surface, maxLength: 4 },
    ),
    room: fc
      .record({
        layout: fc.constantFrom(...LAYOUTS),
        region: fc.constantFrom('eu' as const, 'uk' as const, 'us' as const),
      })
      .map((one) => ({ ...one, ...usualRoom(one.layout, one.region) })),
    bearing_deg: fc.integer({ min: 0, max: 359 }),
    lamps: fc.record({
      white: fc.constantFrom('warm' as const, 'neutral' as const, 'cool' as const, 'unknown' as const),
      kinds: fc.subarray(['downlight', 'panel', 'strip', 'pendant', 'under-cabinet', 'hood'] as const),
    }),
    users: fc.subarray([...USERS]),
    year_built: fc.integer({ min: 1500, max: 2100 }),
    name: fc.constantFrom('', '  ', 'Our kitchen', ' Mill Lane '),
  },
  { requiredKeys: [] },
);

describe('a new project', () => {
  it('is sound whatever was answered or skipped, and survives its file', () => {
    fc.assert(
      fc.property(answers, (given) => {
        const project = made(given);
        expect(checkProject(project)).toEqual([]);
        expect(parseProject(projectText(project))).toEqual({ ok: true, value: project });
        const { scheme } = project.options[0]!;
        for (const surface of SURFACES) {
          const kept = given.stays?.find((one) => one.surface === surface);
          expect(scheme[surface].state).toBe(kept ? 'fixed' : 'open');
          if (kept?.finish) expect(scheme[surface].finish).toBe(kept.finish);
        }
        if (given.room) expect(project.kitchen.region).toBe(given.room.region);
        expect(project.users ?? []).toEqual(given.users ?? []);
        expect(project.year_built).toBe(given.year_built);
        expect(project.name).toBe(given.name?.trim() || 'New kitchen');
        if (!given.lamps) expect(project.settings).toEqual(from.settings);
      }),
      { numRuns: 60 },
    );
  });

  it('turns so that its window faces where it was said to', () => {
    const outward = { left: -90, back: 0, right: 90, front: 180 };
    for (const layout of LAYOUTS) {
      const { kitchen } = made({ room: { layout, region: 'eu', ...usualRoom(layout, 'eu') }, bearing_deg: 200 });
      const [window] = kitchen.openings;
      expect((kitchen.site.bearing_deg + outward[window!.wall] + 360) % 360).toBe(200);
    }
  });

  it('takes CIE white LED illuminants for the lamps: 2733, 4103, 5109 K, and 2998 K where nothing is known', () => {
    // Correlated color temperatures of CIE 015:2018, table of LED illuminants.
    const lights = { warm: 'LED-B1', neutral: 'LED-B3', cool: 'LED-B4', unknown: 'LED-B2' } as const;
    for (const white of ['warm', 'neutral', 'cool', 'unknown'] as const) {
      for (const { lamps } of made({ lamps: { white, kinds: [] } }).settings) {
        for (const group of LAMP_GROUPS) expect(lamps[group].light).toBe(lights[white]);
      }
    }
  });

  it('says of what stays and is like nothing of the library that it is a stand-in', () => {
    const stays = [
      { surface: 'floor', finish: null },
      { surface: 'counter', finish: from.options[0]!.scheme.counter.finish },
    ] as const;
    const result = newProject({ stays }, from, 'mine');
    if (!result.ok) throw new Error(result.problem.text);
    expect(result.notices?.map(({ text }) => text)).toEqual(['Floor: what is shown stands in for yours.']);
  });

  it('says which lamps that are there it has no place for', () => {
    const room = { layout: 'one-wall', region: 'eu', ...usualRoom('one-wall', 'eu') } as const;
    const result = newProject({ room, lamps: { white: 'warm', kinds: ['panel', 'pendant'] } }, from, 'mine');
    if (!result.ok) throw new Error(result.problem.text);
    expect(result.value.kitchen.fixtures.map(({ kind }) => kind)).toEqual(['panel']);
    expect(result.notices?.map(({ text }) => text)).toEqual(['This kitchen has no place for pendants: left out.']);
  });

  it('is refused where the layout does not go into the room, or a finish is unknown', () => {
    const room = { layout: 'l-island', region: 'eu', width: 2400, depth: 2400, height: 2500 } as const;
    expect(newProject({ room }, from, 'mine')).toMatchObject({ ok: false, problem: { code: 'does-not-fit' } });
    const stays = [{ surface: 'floor', finish: 'none such' }] as const;
    expect(newProject({ stays }, from, 'mine')).toMatchObject({ ok: false, problem: { code: 'unknown-finish' } });
  });
});

describe('commands for the kitchen and its users', () => {
  it('set the whole kitchen and keep the finishes', () => {
    const { kitchen } = made({ room: { layout: 'galley', region: 'uk', ...usualRoom('galley', 'uk') } });
    const result = applyCommand(from, { kind: 'set-kitchen', kitchen });
    expect(result).toEqual({ ok: true, value: { ...from, kitchen } });
    expect(commandLabel(from, { kind: 'set-kitchen', kitchen })).toBe('kitchen');
  });

  it('refuse a kitchen that does not fit, with every reason', () => {
    const kitchen = { ...from.kitchen, island: { ...from.kitchen.island!, y: 300 }, tall_height: 1500 };
    const result = applyCommand(from, { kind: 'set-kitchen', kitchen });
    if (result.ok) throw new Error('it was accepted');
    const paths = [result.problem, ...(result.more ?? [])].map(({ at }) => at?.path);
    expect(paths).toEqual(['kitchen.tall_height', 'kitchen.island.y']);
  });

  it('set users once each in order, and take the field away with the last', () => {
    const set = (project: Project, users: Project['users'] & object): Project => {
      const result = applyCommand(project, { kind: 'set-users', users });
      if (!result.ok) throw new Error(result.problem.text);
      return result.value;
    };
    const some = set(from, ['wheelchair', 'over-65', 'wheelchair']);
    expect(some.users).toEqual(['over-65', 'wheelchair']);
    expect(set(some, [])).toEqual(from);
    expect(applyCommand(from, { kind: 'set-users', users: ['tall'] as never })).toMatchObject({ ok: false });
  });
});
