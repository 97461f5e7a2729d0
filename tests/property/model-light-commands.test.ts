import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import type { Command } from '../../src/model/commands';
import { record, redo, startHistory, undo } from '../../src/model/history';
import type { BeamRecord, Daylight, Project } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { beam, randomLightCommand } from './random-light-commands';

const whole = demoProject();
/** The demo in two lights only. */
const demo: Project = {
  ...whole,
  settings: whole.settings.filter(({ id }) => id === 'day' || id === 'evening'),
};

/** Any write to the document throws in strict mode, so a command that changes its input cannot pass. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const member of Object.values(value)) frozen(member);
  }
  return value;
}
const done = (project: Project, one: Command): Project => {
  const result = applyCommand(project, one);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
};
const refused = (one: Command, from: Project = demo) => {
  const result = applyCommand(frozen(from), one);
  if (result.ok) throw new Error('it was done');
  expect(result.problem.remedy).not.toBe('');
  return result.problem.code;
};

describe('commands about light, whatever they bring', () => {
  it('leave a sound document sound, are undone and redone exactly, and say what they did', () => {
    let changes = 0;
    let refusals = 0;
    fc.assert(
      fc.property(fc.array(randomLightCommand, { maxLength: 15 }), (commands) => {
        let history = startHistory<Project>(frozen(demo));
        const documents = [history.present];
        for (const one of commands) {
          const before = JSON.stringify(history.present);
          const result = applyCommand(history.present, one);
          expect(JSON.stringify(history.present)).toBe(before);
          if (!result.ok) {
            refusals++;
            expect(result.problem.remedy).not.toBe('');
            continue;
          }
          expect(checkProject(result.value)).toEqual([]);
          const label = commandLabel(history.present, one);
          expect(label.trim()).not.toBe('');
          if (result.value === history.present) continue;
          changes++;
          history = record(history, frozen(result.value), label);
          documents.push(result.value);
        }
        for (let i = documents.length - 1; i > 0; i--) {
          expect(history.present).toBe(documents[i]);
          history = undo(history);
        }
        expect(history.present).toBe(demo);
        for (let i = 1; i < documents.length; i++) {
          history = redo(history);
          expect(history.present).toBe(documents[i]);
        }
      }),
    );
    // Both ways happen often, or nothing was tested.
    expect(Math.min(changes, refusals)).toBeGreaterThan(50);
  });
});

describe('a day', () => {
  const on = (month: number, day: number, more: Partial<Daylight> = {}): Command => ({
    kind: 'set-daylight',
    setting: 'day',
    daylight: { sky: 'clear', month, day, hour: 15, blind: 1, ...more },
  });

  it('is any of the calendar, leap day included, and no other', () => {
    // Lengths of the months of the Gregorian calendar, a leap year's February.
    [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31].forEach((days, i) => {
      expect(applyCommand(demo, on(i + 1, days)).ok).toBe(true);
      expect(applyCommand(demo, on(i + 1, 1)).ok).toBe(true);
      expect(applyCommand(demo, on(i + 1, days + 1)).ok).toBe(false);
      expect(applyCommand(demo, on(i + 1, 0)).ok).toBe(false);
    });
    expect(refused(on(4, 31))).toBe('no-such-day');
    expect(refused(on(2, 1.5))).toBe('no-such-day');
    expect(refused(on(2.5, 1))).toBe('no-such-day');
    for (const wrong of [0, 13, Number.NaN]) expect(refused(on(wrong, 1))).toBe('out-of-range');
  });

  it('has hours, blinds and skies within bounds', () => {
    for (const hour of [-0.1, 24.1, Number.NaN]) expect(refused(on(6, 21, { hour }))).toBe('out-of-range');
    for (const blind of [-0.1, 1.1, Number.NaN]) expect(refused(on(6, 21, { blind }))).toBe('out-of-range');
    for (const sky_lx of [-1, Number.NaN]) expect(refused(on(6, 21, { sky_lx }))).toBe('out-of-range');
    expect(refused(on(6, 21, { light: 'LED-Z9' }))).toBe('unknown-light');
    expect(refused({ kind: 'set-daylight', setting: 'noon', daylight: null })).toBe('unknown-setting');
    for (const hour of [0, 24]) expect(applyCommand(demo, on(6, 21, { hour })).ok).toBe(true);
  });

  it('changes its own setting only, and night takes it away', () => {
    const night = done(demo, { kind: 'set-daylight', setting: 'day', daylight: null });
    expect(night.settings[0]!.daylight).toBeNull();
    expect(night.settings[1]).toBe(demo.settings[1]);
    expect(night.kitchen).toBe(demo.kitchen);
  });
});

describe('settings', () => {
  it('are copied to behind their original and removed, down to the last', () => {
    const copied = done(demo, { kind: 'copy-setting', setting: 'day', id: 'late', name: 'Late' });
    expect(copied.settings.map(({ id }) => id)).toEqual(['day', 'late', 'evening']);
    expect(copied.settings[1]).toEqual({ ...demo.settings[0], id: 'late', name: 'Late' });
    expect(refused({ kind: 'copy-setting', setting: 'day', id: 'evening', name: 'Again' })).toBe('duplicate-id');
    expect(refused({ kind: 'copy-setting', setting: 'day', id: 'late', name: ' ' })).toBe('empty-text');
    const one = done(done(copied, { kind: 'remove-setting', setting: 'day' }), {
      kind: 'remove-setting',
      setting: 'late',
    });
    expect(one.settings).toEqual([demo.settings[1]]);
    expect(refused({ kind: 'remove-setting', setting: 'evening' }, one)).toBe('last-setting');
    expect(refused({ kind: 'remove-setting', setting: 'noon' })).toBe('unknown-setting');
  });
});

describe('place, windows and lamps', () => {
  it('are refused where a value is out of range, whole or in part', () => {
    const { site, openings: windows } = demo.kitchen;
    for (const wrong of [
      { latitude_deg: 91 },
      { longitude_deg: Number.NaN },
      { utc_offset_h: 15 },
      { bearing_deg: -1 },
    ]) {
      expect(refused({ kind: 'set-site', site: { ...site, ...wrong } })).toBe('out-of-range');
    }
    expect(refused({ kind: 'set-openings', openings: [...windows, windows[0]!] })).toBe('duplicate-id');
    expect(refused({ kind: 'set-openings', openings: [{ ...windows[0]!, leaves: 1.5 }] })).toBe('not-whole');
    expect(refused({ kind: 'set-openings', openings: [{ ...windows[0]!, center: 100 }] })).toBe('does-not-fit');
    expect(done(demo, { kind: 'set-openings', openings: [] }).kitchen.openings).toEqual([]);
  });

  it('take a beam of the project once it is there, and no other', () => {
    const lit = (name: string): Command => ({
      kind: 'set-fixtures',
      fixtures: [
        {
          kind: 'downlight',
          id: 'spots',
          group: 'ceiling',
          beam: { kind: 'file', beam: name, turn_deg: 0 },
          count: 4,
          diameter: 80,
          lumens_each: 600,
        },
      ],
    });
    expect(refused(lit('narrow'))).toBe('unknown-beam');
    const withBeam = done(demo, { kind: 'add-beam', beam });
    expect(done(withBeam, lit('narrow')).kitchen.fixtures).toHaveLength(1);
    expect(refused(lit('wide'), withBeam)).toBe('unknown-beam');
    expect(refused({ kind: 'add-beam', beam }, withBeam)).toBe('duplicate-id');
  });

  it.each<[string, Partial<BeamRecord>]>([
    ['angles that fall', { vertical_deg: [0, 90, 20] }],
    ['angles that begin anywhere', { vertical_deg: [10, 20, 90] }],
    [
      'angles of no symmetry',
      {
        horizontal_deg: [0, 45],
        candela: [
          [1, 1, 1],
          [1, 1, 1],
        ],
      },
    ],
    ['rows that are missing', { candela: [] }],
    ['rows that are short', { candela: [[2000, 400]] }],
    ['negative intensities', { candela: [[2000, -1, 0]] }],
    ['no numbers', { candela: [[2000, Number.NaN, 0]] }],
    ['darkness', { candela: [[0, 0, 0]] }],
    ['no angle that is a number', { vertical_deg: [0, Number.NaN, 90] }],
    ['lumens that are no number', { lumens: Number.NaN }],
    ['no lumens', { lumens: 0 }],
    ['lumens far from its intensities', { lumens: 50_000 }],
    ['lumens 6 % from its intensities', { lumens: 1363 * 1.06 }],
    ['angles that are one', { vertical_deg: [0, 1e-12, 90] }],
    ['no name', { label: '' }],
  ])('refuse a beam with %s', (_, wrong) => {
    refused({ kind: 'add-beam', beam: { ...beam, ...wrong } });
  });
});
