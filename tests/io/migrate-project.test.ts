import { describe, expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { parseProject, projectText } from '../../src/io/project-file';
import { settingLight } from '../../src/kitchen/study/setting-light';
import type { Kitchen } from '../../src/model/kitchen';
import type { Project } from '../../src/model/project';
import { demoProject, demoText } from './demo';
import { type Loose, version1 } from './version-1';
import { version2 } from './version-2';
import { version3 } from './version-3';

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

  it('opens as version 9, without a word, with its window, its lamps and its sky', () => {
    expect(notices).toBeUndefined();
    expect(project.version).toBe(9);
    const { kitchen, settings } = project;
    expect(kitchen.sink).toEqual({ run: 'left', center: 2350, bowls: 1, fit: 'inset', tap: 'arch' });
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

  it('is saved as version 9 and comes back the same', () => {
    const text = projectText(project);
    expect(text).toContain('"version": 9');
    expect(text).not.toMatch(/"groups"|"sky_lx": 12000,\s*"settings"|"under_cabinet"|"window": \{/);
    expect(opened(text)).toEqual({ ok: true, value: project });
    expect(projectText(opened(text).value)).toBe(text);
  });

  it('lights as the same document written as version 9 does: sky and levels as they were', () => {
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

describe('a project of version 2', () => {
  const { value: project, notices } = opened(version2());

  it('opens as version 9, without a word: an L with an island, every unit where it was', () => {
    expect(notices).toBeUndefined();
    expect(project.version).toBe(9);
    // The places themselves are held in tests/kitchen/demo-rows.test.ts, for the same kitchen.
    const { fixtures, openings, site, ...kitchen } = project.kitchen;
    const { fixtures: _, openings: windows, site: _site, ...usual } = scene as unknown as Kitchen;
    expect(kitchen).toEqual(usual);
    expect(openings).toEqual(windows);
    expect(site.bearing_deg).toBe(330);
    expect(fixtures).toMatchObject([{ kind: 'hood', count: 2 }]);
  });

  it('is saved as version 9 and comes back the same', () => {
    const text = projectText(project);
    expect(text).toContain('"version": 9');
    expect(text).not.toContain('"layout": "l-island"');
    expect(opened(text)).toEqual({ ok: true, value: project });
  });

  it.each<[string, string, (project: Loose) => void]>([
    ['missing-field', 'kitchen.runs', (p) => delete (p['kitchen'] as Loose)['sink']],
    [
      'missing-field',
      'kitchen.runs',
      (p) => Object.assign((p['kitchen'] as Loose)['room'] as Loose, { width: 'wide' }),
    ],
    [
      'out-of-range',
      'kitchen.door.width',
      (p) => Object.assign((p['kitchen'] as Loose)['door'] as Loose, { width: 9 }),
    ],
    ['wrong-field', 'kitchen.fixtures', (p) => Object.assign(p['kitchen'] as Loose, { fixtures: 'all' })],
    ['wrong-field', 'kitchen', (p) => Object.assign(p, { kitchen: 7 })],
  ])('is refused with %s at %s where it is broken', (code, path, change) => {
    const all = problemsOf(version2(change));
    const found = all.find((problem) => problem.code === code && problem.at?.path?.startsWith(path));
    expect(found, JSON.stringify(all.slice(0, 4))).toBeDefined();
  });
});

describe('a project of version 3', () => {
  const { value: project, notices } = opened(version3());

  it('opens as version 9, without a word and without a look, else as it was', () => {
    expect(notices).toBeUndefined();
    const { version, ...rest } = project;
    expect(version).toBe(9);
    expect('looks' in project).toBe(false);
    expect({ ...rest, version: 3 }).toEqual(JSON.parse(version3()));
  });

  it('is saved as version 9 and comes back the same, with a look added', () => {
    const surfaces = [
      {
        surface: 'counter',
        colors: [{ role: 'base', share: 1, color: { kind: 'hex', hex: '#d9d7d2' }, provenance: 'photo' }],
      },
    ] as const;
    const changed = { ...project, looks: [{ id: 'seen', name: 'Seen', source: 'picture', surfaces } as const] };
    const text = projectText(changed);
    expect(text).toContain('"version": 9');
    expect(opened(text)).toEqual({ ok: true, value: changed });
  });
});

describe('a project of version 4', () => {
  // As version 3 but for its looks.
  const looks = [
    {
      id: 'seen',
      name: 'Seen',
      source: 'picture',
      surfaces: [
        {
          surface: 'counter',
          colors: [{ role: 'base', share: 1, color: { kind: 'hex', hex: '#d9d7d2' }, provenance: 'photo' }],
        },
      ],
    },
  ];
  const text = JSON.stringify({ ...JSON.parse(version3()), version: 4, looks });
  const { value: project, notices } = opened(text);

  it('opens as version 9, without a word and without a year, else as it was', () => {
    expect(notices).toBeUndefined();
    expect(project.year_built).toBeUndefined();
    expect({ ...project, version: 4 }).toEqual(JSON.parse(text));
  });

  it('keeps a year that is given, and refuses what is none', () => {
    const dated = { ...project, year_built: 1931 };
    expect(opened(projectText(dated))).toEqual({ ok: true, value: dated });
    for (const year of [1499, 2101, 1931.5]) {
      expect(problemsOf(projectText({ ...project, year_built: year }))[0]).toMatchObject({
        at: { path: 'year_built' },
      });
    }
    expect(problemsOf(projectText(dated).replace('1931', '"1931"'))[0]).toMatchObject({ at: { path: 'year_built' } });
  });
});

describe('a project of version 5', () => {
  // As version 3 but for looks and a year.
  const text = JSON.stringify({ ...JSON.parse(version3()), version: 5, year_built: 1931 });
  const { value: project, notices } = opened(text);

  it('opens as version 9, without a word and without log, notes and revisions, else as it was', () => {
    expect(notices).toBeUndefined();
    expect({ ...project, version: 5 }).toEqual(JSON.parse(text));
  });

  it('is brought along where it stands in a project as a frozen copy, and told where it is newer', () => {
    const revision = { id: 'R1', name: 'First', at: '2026-05-04T16:30Z', note: '' };
    const holding = (document: unknown) => JSON.stringify({ ...project, revisions: [{ ...revision, document }] });
    expect(opened(holding(JSON.parse(text))).value.revisions).toEqual([{ ...revision, document: project }]);
    expect(problemsOf(holding({ ...project, version: 10 }))[0]).toMatchObject({
      at: { path: 'revisions[0].document.version' },
    });
  });
});

describe('a project of version 6', () => {
  // As version 3 but for looks, a year, and a note in the log; its finishes have neither a price nor a thickness.
  const log = [{ at: '2026-05-04T16:30Z', kind: 'note', text: 'Seen' }];
  const text = JSON.stringify({ ...JSON.parse(version3()), version: 6, year_built: 1931, log });
  const { value: project, notices } = opened(text);

  it('opens as version 9, without a word and without prices and thicknesses, else as it was', () => {
    expect(notices).toBeUndefined();
    expect({ ...project, version: 6 }).toEqual(JSON.parse(text));
  });

  it('is saved as version 9 with prices and thicknesses added, and comes back the same', () => {
    const [first, ...rest] = project.library;
    const price = { amount: 34.5, currency: 'GBP', per: 'm2' } as const;
    const priced = { ...first!, thickness_mm: 9.5, supply: { ...first!.supply, price } };
    const saved = { ...project, library: [priced, ...rest] };
    expect(opened(projectText(saved))).toEqual({ ok: true, value: saved });
    expect(projectText(saved)).toContain('"version": 9');
  });

  it.each([
    ['supply.price.amount', { supply: { price: { amount: -1 } } }],
    ['supply.price.amount', { supply: { price: { amount: 1_000_001 } } }],
    ['supply.price.currency', { supply: { price: { amount: 1, currency: 'euro' } } }],
    ['supply.price.per', { supply: { price: { amount: 1, per: 'acre' } } }],
    ['supply.price.amount', { supply: { price: { currency: 'EUR' } } }],
    ['thickness_mm', { thickness_mm: 0.05 }],
    ['thickness_mm', { thickness_mm: 201 }],
  ])('refuses at %s what can be no price and no thickness', (path, change) => {
    const library = [{ ...project.library[0]!, ...change }, ...project.library.slice(1)];
    expect(problemsOf(JSON.stringify({ ...project, library }))[0]!.at!.path).toBe(`library[0].${path}`);
  });
});

describe('a project of version 7', () => {
  const text = JSON.stringify({ ...JSON.parse(version3()), version: 7 });
  const { value: project, notices } = opened(text);

  it('opens as version 9, without a word and without anything ordered, else as it was', () => {
    expect(notices).toBeUndefined();
    expect({ ...project, version: 7 }).toEqual(JSON.parse(text));
  });

  it('is saved as version 9 with job, assumptions, items, extras and samples added, and comes back the same', () => {
    const [option, ...options] = project.options;
    const finish = option!.scheme.counter.finish;
    const saved: Project = {
      ...project,
      options: [
        {
          ...option!,
          items: [
            {
              item: 'CT1',
              finish,
              waste_percent: 12,
              spare_packs: 0,
              lead_time_weeks: 2.5,
              needed_on: '2026-06-01',
              ordered_on: '2026-05-04',
              lot: { batch: 'B7', slabs: '12, 13' },
              delivery: { on: '2026-05-30', by: 'Site', outcome: 'accepted', batch: 'B7', note: 'One corner chipped' },
              approved: { by: 'Client', on: '2026-05-02' },
              note: 'Vein along the wall',
            },
          ],
          extras: [{ id: 'X1', what: 'Silicone', quantity: 2, unit: 'tube', stage: 'fittings' }],
        },
        ...options,
      ],
      job: {
        prepared_for: 'Client',
        prepared_by: 'Studio',
        place: 'Upstairs',
        brief: 'Bright, and easy to clean.',
        starts_on: '2026-06-01',
        margin_days: 5,
        stage_days: { template: 10, paint: 2 },
      },
      quantities: { floor_reach: 'to-plinth', wall_coats: 3 },
      samples: [
        {
          finish,
          status: 'received',
          on: '2026-04-30',
          batch: 'B6',
          verdicts: [{ light: 'evening', by: 'Client', on: '2026-05-01', verdict: 'holds' }],
        },
      ],
    };
    expect(opened(projectText(saved))).toEqual({ ok: true, value: saved });
    expect(projectText(saved)).toContain('"version": 9');
  });

  const held = (change: Partial<Project>) => problemsOf(JSON.stringify({ ...project, ...change }))[0]!.at!.path;
  const items = (record: object) => ({
    options: [{ ...project.options[0]!, items: [{ item: 'CT1', finish: 'X', ...record }] }],
  });

  it.each<[string, Partial<Project>]>([
    ['job.starts_on', { job: { starts_on: '2026-02-30' } }],
    ['job.stage_days.paint', { job: { stage_days: { paint: -1 } } }],
    ['quantities.wall_coats', { quantities: { wall_coats: 0 } }],
    ['options[0].items[0].item', items({ item: 'XX9' })],
    ['options[0].items[0].waste_percent', items({ waste_percent: 101 })],
    ['options[0].items[0].delivery.on', items({ delivery: { on: 'soon', by: 'Me', outcome: 'accepted' } })],
    ['options[0].items[0].approved.by', items({ approved: { by: ' ', on: '2026-05-04' } })],
    ['samples[0].on', { samples: [{ finish: 'X', status: 'wanted', on: '4.5.2026', verdicts: [] }] }],
  ])('refuses at %s what cannot be', (path, change) => expect(held(change)).toBe(path));
});

it('refuses version 10, and any version that is no number', () => {
  expect(problemsOf(demoText().replace('"version": 9', '"version": 10'))[0]).toMatchObject({
    code: 'newer-version',
    at: { path: 'version' },
  });
  for (const odd of ['"2"', 'null', '1.5', '0', '-1']) {
    const [problem] = problemsOf(demoText().replace('"version": 9', `"version": ${odd}`));
    expect(problem, odd).toMatchObject({ at: { path: 'version' } });
  }
});

const settingOf = (project: Loose): Loose => (project['settings'] as Loose[])[0]!;
const groupOf = (project: Loose, group: string): Loose => (settingOf(project)['groups'] as Loose)[group] as Loose;
const wide = (project: Loose, width: unknown) =>
  Object.assign((project['kitchen'] as Loose)['window'] as Loose, { width });

describe('a project of version 8', () => {
  const text = JSON.stringify({ ...JSON.parse(version3()), version: 8 });
  const { value: project, notices } = opened(text);
  const [option, ...options] = project.options;
  const ordered = (record: object): Project => ({
    ...project,
    options: [{ ...option!, items: [{ item: 'CT1', finish: option!.scheme.counter.finish, ...record }] }, ...options],
  });

  it('opens as version 9, without a word and without supply of items, else as it was', () => {
    expect(notices).toBeUndefined();
    expect({ ...project, version: 8 }).toEqual(JSON.parse(text));
  });

  it('is saved as version 9 with what was agreed for an item added, and comes back the same', () => {
    const price = { amount: 2450, currency: 'EUR', per: 'all' };
    const saved = ordered({ supplier: 'Stone yard', code: 'SY 12', unit: 'slab', price });
    expect(opened(projectText(saved))).toEqual({ ok: true, value: saved });
    expect(projectText(saved)).toContain('"version": 9');
  });

  it.each([
    ['amount', { amount: -1 }],
    ['currency', { amount: 1, currency: 'euro' }],
    ['per', { amount: 1, per: 'barrel' }],
  ])('refuses %s of a price that can be none', (name, price) => {
    const [problem] = problemsOf(JSON.stringify(ordered({ price })));
    expect(problem!.at!.path).toBe(`options[0].items[0].price.${name}`);
  });
});
