import fc from 'fast-check';
import { expect, it } from 'vitest';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import type { Command } from '../../src/model/commands';
import { record, redo, startHistory, undo } from '../../src/model/history';
import type { Project } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { randomCommand } from './random-commands';

const demo = demoProject();

/** Any write to the document throws in strict mode, so a command that changes its input cannot pass. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const member of Object.values(value)) frozen(member);
  }
  return value;
}

it('gives back every document when all steps are undone, and again when they are redone', () => {
  fc.assert(
    fc.property(fc.array(randomCommand, { maxLength: 30 }), (commands) => {
      let history = startHistory<Project>(frozen(demo));
      const documents = [history.present];
      for (const one of commands) {
        const result = applyCommand(history.present, one);
        if (!result.ok || result.value === history.present) continue;
        history = record(history, frozen(result.value), commandLabel(history.present, one));
        documents.push(result.value);
      }
      for (let i = documents.length - 1; i > 0; i--) {
        expect(history.present).toBe(documents[i]);
        history = undo(history);
      }
      expect(history.present).toBe(demo);
      expect(undo(history)).toBe(history);
      for (let i = 1; i < documents.length; i++) {
        history = redo(history);
        expect(history.present).toBe(documents[i]);
      }
      expect(redo(history)).toBe(history);
    }),
  );
});

it('leaves a sound document sound, whatever the command', () => {
  fc.assert(
    fc.property(fc.array(randomCommand, { maxLength: 30 }), (commands) => {
      let project = frozen(demo);
      for (const one of commands) {
        const result = applyCommand(project, one);
        if (result.ok) project = frozen(result.value);
        else expect(result.problem.remedy).not.toBe('');
      }
      expect(checkProject(project)).toEqual([]);
    }),
  );
});

it('never changes its input, and refuses what is wrong', () => {
  const before = JSON.stringify(demo);
  const wrong: readonly Command[] = [
    { kind: 'lay-finish', option: 'nowhere', surface: 'floor', finish: 'ST-01' },
    { kind: 'lay-finish', option: 'our-floor', surface: 'moon' as never, finish: 'ST-01' },
    { kind: 'lay-finish', option: 'our-floor', surface: 'floor', finish: 'XX-99' },
    { kind: 'lay-finish', option: 'our-floor', surface: 'floor', finish: 'GR-01' },
    { kind: 'set-laying', option: 'our-floor', surface: 'backsplash', laying: { layout: 'stack', grout: 'PT-01' } },
    { kind: 'set-group', setting: 'day', group: 'ceiling', level: 1.5 },
    { kind: 'set-group', setting: 'day', group: 'moon' as never, level: 1 },
    { kind: 'set-group', setting: 'day', group: 'hood', light: 'LED-Z9' },
    { kind: 'edit-finish', finish: 'EN-01', changes: { gloss_gu: 300 } },
    { kind: 'edit-finish', finish: 'PT-01', changes: { class: 'grout' } },
    { kind: 'remove-finish', finish: 'GR-01' },
    { kind: 'add-finish', finish: demo.library[0]! },
    { kind: 'rename', what: 'option', id: 'our-floor', name: ' ' },
    {
      kind: 'together',
      label: 'both',
      commands: [
        { kind: 'rename', what: 'project', name: 'Changed' },
        { kind: 'set-group', setting: 'day', group: 'pendant', level: -1 },
      ],
    },
  ];
  for (const one of wrong) expect(applyCommand(frozen(demo), one)).toMatchObject({ ok: false });
  expect(JSON.stringify(demo)).toBe(before);
});

it('takes the plinth along with the base fronts, and the upstand along with the counter', () => {
  const fronts = applyCommand(demo, {
    kind: 'lay-finish',
    option: 'our-floor',
    surface: 'base-fronts',
    finish: 'WD-07',
  });
  const scheme = fronts.ok ? fronts.value.options[1]!.scheme : null;
  expect(scheme?.['base-fronts'].finish).toBe('WD-07');
  expect(scheme?.plinth.finish).toBe('WD-07');
  expect(scheme?.['wall-fronts'].finish).toBe('PT-01');

  const own = applyCommand(demo, { kind: 'lay-finish', option: 'our-floor', surface: 'plinth', finish: 'MT-02' });
  const after = own.ok
    ? applyCommand(own.value, { kind: 'lay-finish', option: 'our-floor', surface: 'base-fronts', finish: 'WD-07' })
    : own;
  expect(after.ok && after.value.options[1]!.scheme.plinth.finish).toBe('MT-02');

  const counter = applyCommand(demo, { kind: 'lay-finish', option: 'our-floor', surface: 'counter', finish: 'EN-03' });
  expect(counter.ok && counter.value.options[1]!.scheme.upstand.finish).toBe('EN-03');
});
