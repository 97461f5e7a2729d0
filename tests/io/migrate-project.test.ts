import { describe, expect, it } from 'vitest';
import { parseProject, projectText } from '../../src/io/project-file';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { demoProject, demoText } from './demo';

type Loose = Record<string, unknown>;

/** A document as version 1 wrote it: one window on the left wall, lamps by where they hang, the sky as a group. */
function version1(change: (project: Loose) => void = () => {}): string {
  const { library, options } = JSON.parse(demoText()) as Loose;
  const group = (level: number, light: string) => ({ level, light });
  const project: Loose = {
    type: 'upstand-project',
    version: 1,
    id: 'old-house',
    name: 'Old house',
    note: 'Invented for this test.',
    kitchen: {
      layout: 'l-island',
      name: 'L kitchen with island',
      room: { width: 4600, depth: 4000, height: 2500 },
      fronts: 'five-piece',
      base: { depth: 600, carcass_height: 720, plinth_height: 150, plinth_recess: 50 },
      counter: { depth: 620, thickness: 30, overhang: 20 },
      wall_units: { depth: 330, height: 720, gap_above_counter: 500 },
      tall_height: 2300,
      island: { x: 1750, y: 1350, width: 1800, depth: 900, seat_overhang: 250 },
      window: { wall: 'left', center: 2350, width: 1800, sill: 1050, height: 1200, reveal: 160 },
      door: { width: 900, height: 2050, from_right: 200 },
      skirting_height: 90,
      upstand_height: 100,
      lamps: {
        ceiling: { count: 6, size: 200, lumens_each: 1300 },
        under_cabinet: { width: 20, lumens_per_m: 350 },
      },
      sky_lx: 12000,
    },
    settings: [
      {
        id: 'day',
        name: 'Day',
        groups: { sky: group(0.5, 'D75'), ceiling: group(0, 'LED-B2'), 'under-cabinet': group(0.2, 'LED-B4') },
      },
      {
        id: 'plain',
        name: 'Plain day',
        groups: { sky: group(1, 'D65'), ceiling: group(0, 'LED-B2'), 'under-cabinet': group(0, 'LED-B2') },
      },
      {
        id: 'evening',
        name: 'Evening',
        groups: { sky: group(0, 'D65'), ceiling: group(0.8, 'LED-B3'), 'under-cabinet': group(1, 'A') },
      },
    ],
    library,
    options,
  };
  change(project);
  return JSON.stringify(project, null, 2);
}

const opened = (text: string) => {
  const parsed = parseProject(text, 'old.json');
  if (!parsed.ok) throw new Error(parsed.problem.text);
  return parsed;
};
const problemsOf = (text: string) => {
  const parsed = parseProject(text, 'old.json');
  return parsed.ok ? [] : [parsed.problem, ...(parsed.more ?? [])];
};

describe('a project of version 1', () => {
  const { value: project, notices } = opened(version1());

  it('opens as version 2, without a word, with its window, its lamps and its sky', () => {
    expect(notices).toBeUndefined();
    expect(project.version).toBe(2);
    const { kitchen, settings } = project;
    expect(kitchen.sink).toEqual({ center: 2350 });
    expect(kitchen.openings).toEqual([
      {
        id: 'window',
        kind: 'window',
        wall: 'left',
        center: 2350,
        width: 1800,
        sill: 1050,
        height: 1200,
        reveal: 160,
        leaves: 2,
        panes: 2,
        facing_deg: 0,
      },
    ]);
    expect(kitchen.fixtures).toMatchObject([
      { kind: 'panel', group: 'ceiling', beam: { kind: 'wide' }, count: 6, width: 200, length: 200, lumens_each: 1300 },
      {
        kind: 'under-cabinet',
        group: 'under-cabinet',
        beam: { kind: 'wide' },
        run: 'front',
        width: 20,
        lumens_per_m: 350,
      },
    ]);
    const noon = { sky: 'overcast', month: 3, day: 21, hour: 12, sky_lx: 12_000 };
    // D65 is what an overcast sky has anyway; another light stays as it was given.
    expect(settings.map(({ daylight }) => daylight)).toEqual([
      { ...noon, blind: 0.5, light: 'D75' },
      { ...noon, blind: 1 },
      null,
    ]);
    expect(settings.map(({ lamps }) => [lamps.ceiling, lamps['under-cabinet']])).toEqual([
      [
        { level: 0, light: 'LED-B2' },
        { level: 0.2, light: 'LED-B4' },
      ],
      [
        { level: 0, light: 'LED-B2' },
        { level: 0, light: 'LED-B2' },
      ],
      [
        { level: 0.8, light: 'LED-B3' },
        { level: 1, light: 'A' },
      ],
    ]);
    for (const { lamps } of settings) expect([lamps.pendant, lamps.hood]).toEqual([lamps.ceiling, lamps.ceiling]);
    const demo = demoProject();
    expect([project.library, project.options]).toEqual([demo.library, demo.options]);
  });

  it('is saved as version 2 and comes back the same', () => {
    const text = projectText(project);
    expect(text).toContain('"version": 2');
    expect(text).not.toMatch(/"groups"|"sky_lx": 12000,\s*"settings"|"under_cabinet"|"window": \{/);
    expect(opened(text)).toEqual({ ok: true, value: project });
    expect(projectText(opened(text).value)).toBe(text);
  });

  it('lights as the same document written as version 2 does: sky and levels as they were', () => {
    for (const setting of project.settings) {
      const light = settingLight(project, setting);
      if (!light.ok) throw new Error(light.problem.text);
      const { daylight, levels } = light.value;
      if (setting.id === 'evening') {
        expect(daylight).toBeNull();
        expect(levels).toEqual([0, 0, 0, 0, 0.8, 1, 0.8, 0.8]);
        continue;
      }
      // The sky's illuminance is what the kitchen once gave, whatever the hour; no sun; a fifth comes back from the ground.
      expect(daylight!.sky_lx).toBe(12_000);
      expect(daylight!.outdoors.sun).toBeNull();
      expect(daylight!.outdoors.ground_cdm2).toBeCloseTo((0.2 * 12_000) / Math.PI, 0);
      expect(levels.slice(0, 4)).toEqual(new Array(4).fill(setting.id === 'day' ? 0.5 : 1));
    }
  });

  it.each<[string, string, (project: Loose) => void]>([
    ['missing-field', 'kitchen.sink', (p) => delete (p['kitchen'] as Loose)['window']],
    ['wrong-field', 'kitchen.openings[0].width', (p) => wide(p, 'wide')],
    ['out-of-range', 'kitchen.openings[0].width', (p) => wide(p, 90_000)],
    ['missing-field', 'settings[0].lamps', (p) => delete settingOf(p)['groups']],
    ['out-of-range', 'settings[0].daylight.blind', (p) => Object.assign(groupOf(p, 'sky'), { level: 2 })],
    ['unknown-light', 'settings[0].daylight.light', (p) => Object.assign(groupOf(p, 'sky'), { light: 'D999' })],
    ['wrong-field', 'settings[0].lamps.ceiling.level', (p) => Object.assign(groupOf(p, 'ceiling'), { level: 'low' })],
    ['missing-field', 'settings[0].lamps.ceiling', (p) => delete (settingOf(p)['groups'] as Loose)['ceiling']],
    ['wrong-field', 'settings', (p) => Object.assign(p, { settings: 'all' })],
    ['wrong-field', 'kitchen', (p) => Object.assign(p, { kitchen: 7 })],
  ])('is refused with %s at %s where it is broken', (code, path, change) => {
    const all = problemsOf(version1(change));
    const found = all.find((problem) => problem.code === code && problem.at?.path?.startsWith(path));
    expect(found, JSON.stringify(all.slice(0, 4))).toBeDefined();
    expect(found!.remedy).not.toBe('');
    expect(found!.at!.file).toBe('old.json');
  });
});

it('refuses version 3, and any version that is no number', () => {
  expect(problemsOf(demoText().replace('"version": 2', '"version": 3'))[0]).toMatchObject({
    code: 'newer-version',
    at: { path: 'version' },
  });
  for (const odd of ['"2"', 'null', '1.5', '0', '-1']) {
    const [problem] = problemsOf(demoText().replace('"version": 2', `"version": ${odd}`));
    expect(problem, odd).toMatchObject({ at: { path: 'version' } });
  }
});

const settingOf = (project: Loose): Loose => (project['settings'] as Loose[])[0]!;
const groupOf = (project: Loose, group: string): Loose => (settingOf(project)['groups'] as Loose)[group] as Loose;
const wide = (project: Loose, width: unknown) =>
  Object.assign((project['kitchen'] as Loose)['window'] as Loose, { width });
