import fc from 'fast-check';
import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import type { Command } from '../../src/model/commands';
import { record, redo, startHistory, undo } from '../../src/model/history';
import { LAMP_GROUPS, type Project } from '../../src/model/project';
import { demoProject } from '../io/demo';

const demo = demoProject();

// Ids that exist most of the time, and some that do not.
const option = fc.constantFrom('copied-look', 'our-floor', 'second', 'nowhere', '');
const setting = fc.constantFrom('day', 'evening', 'noon');
const surface = fc.constantFrom(...SURFACES);
const finishId = fc.constantFrom(...demo.library.map((finish) => finish.id), 'NEW-1', 'NEW-2', 'XX-99');
const level = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(-0.1, 1.1, Number.NaN));
const name = fc.constantFrom('A name', '', '  ', 'Another');
const laying = fc.record(
  {
    layout: fc.constantFrom('plain' as const, 'planks' as const, 'stack' as const, 'running-bond' as const),
    joint_mm: fc.constantFrom(0, 2, 3, -1, 500),
    grout: fc.constantFrom('GR-01', 'GR-02', 'TL-01', 'XX-99'),
    direction_deg: fc.constantFrom(0 as const, 90 as const),
  },
  { requiredKeys: ['layout'] },
);
const newFinish = fc
  .record({ id: fc.constantFrom('NEW-1', 'NEW-2', 'PT-01', ''), l: fc.integer({ min: -20, max: 120 }) })
  .map(({ id, l }) => {
    const paint = demo.library.find((finish) => finish.id === 'PT-02')!;
    const color = { kind: 'lab', lab: [l, 0, 2], illuminant: 'D65', observer_deg: 2 } as const;
    return { ...paint, id, components: [{ role: 'base' as const, share: 1, color }] };
  });

const simple: fc.Arbitrary<Command> = fc.oneof(
  fc.record({ kind: fc.constant('lay-finish' as const), option, surface, finish: finishId }),
  fc.record({ kind: fc.constant('lay-finish' as const), option, surface, finish: finishId, laying }),
  fc.record({ kind: fc.constant('set-laying' as const), option, surface, laying }),
  fc.record({
    kind: fc.constant('set-state' as const),
    option,
    surface,
    state: fc.constantFrom('fixed' as const, 'open' as const, 'decided' as const, 'ordered' as const),
  }),
  fc.record({ kind: fc.constant('add-finish' as const), finish: newFinish }),
  fc.record({
    kind: fc.constant('edit-finish' as const),
    finish: finishId,
    changes: fc.record(
      {
        label: name,
        gloss_gu: fc.constantFrom(0, 40, 101, Number.NaN),
        class: fc.constantFrom('paint' as const, 'grout' as const, 'glazed' as const),
      },
      { requiredKeys: [] },
    ),
  }),
  fc.record({ kind: fc.constant('remove-finish' as const), finish: finishId }),
  fc.record(
    {
      kind: fc.constant('set-group' as const),
      setting,
      group: fc.constantFrom(...LAMP_GROUPS),
      level,
      light: fc.constantFrom('D65', 'LED-B1', 'FL11', 'LED-Z9'),
      dims: fc.constantFrom('same' as const, 'warm' as const),
    },
    { requiredKeys: ['kind', 'setting', 'group'] },
  ),
  fc.record({
    kind: fc.constant('copy-option' as const),
    option,
    id: fc.constantFrom('second', 'our-floor', ''),
    name,
  }),
  fc.record({ kind: fc.constant('remove-option' as const), option }),
  fc.record({
    kind: fc.constant('rename' as const),
    what: fc.constantFrom('project' as const, 'option' as const, 'setting' as const),
    id: fc.constantFrom('day', 'our-floor', 'nowhere'),
    name,
  }),
);
const command: fc.Arbitrary<Command> = fc.oneof(
  { weight: 8, arbitrary: simple },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('together' as const),
      label: fc.constant('several'),
      commands: fc.array(simple, { maxLength: 4 }),
    }),
  },
);

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
    fc.property(fc.array(command, { maxLength: 30 }), (commands) => {
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
    fc.property(fc.array(command, { maxLength: 30 }), (commands) => {
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
