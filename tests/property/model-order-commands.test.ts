import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseProject, projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { checkProject } from '../../src/model/check-project';
import { commandLabel } from '../../src/model/command-label';
import type { Command } from '../../src/model/commands';
import type { Project } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { orderCommand } from './random-order-commands';

const whole = demoProject();
const used = new Set(
  whole.options.flatMap(({ scheme }) => Object.values(scheme).flatMap(({ finish, laying }) => [finish, laying.grout])),
);
/** The demo with few finishes, so that many documents are checked in little time. */
const demo: Project = { ...whole, library: whole.library.filter(({ id }) => used.has(id) || id === 'ST-03') };

it('what is said of orders leaves a sound document sound, says what it did, and comes back from a file as it was', () => {
  let changes = 0;
  let refusals = 0;
  fc.assert(
    fc.property(fc.array(orderCommand, { maxLength: 12 }), (commands) => {
      let project = demo;
      for (const command of commands) {
        const result = applyCommand(project, command);
        if (!result.ok) {
          refusals++;
          expect(result.problem.remedy).not.toBe('');
          continue;
        }
        changes++;
        expect(commandLabel(project, command)).not.toMatch(/undefined|^\s*$/);
        project = result.value;
      }
      expect(checkProject(project)).toEqual([]);
      expect(parseProject(projectText(project))).toEqual({ ok: true, value: project });
    }),
    { numRuns: 80 },
  );
  expect(Math.min(changes, refusals)).toBeGreaterThan(50);
});

const done = (...commands: readonly Command[]): Project =>
  commands.reduce((before, command) => {
    const result = applyCommand(before, command);
    if (!result.ok) throw new Error(result.problem.text);
    return result.value;
  }, demo);

it('what says nothing leaves no field behind', () => {
  const option = 'our-floor';
  const record = { item: 'CT1', finish: 'EN-01', note: 'Vein along the wall', lot: { batch: 'B7' } };
  const said = done({ kind: 'set-job', job: { brief: 'Bright' } }, { kind: 'set-item', option, record });
  expect(said.job).toEqual({ brief: 'Bright' });
  const unsaid = [
    { kind: 'set-job', job: { brief: ' ', stage_days: {} } },
    { kind: 'set-item', option, record: { item: 'CT1', finish: 'EN-01', note: '', lot: { batch: '' } } },
    { kind: 'set-assumptions', assumptions: { kerf_mm: 4 } },
    { kind: 'set-assumptions', assumptions: {} },
    { kind: 'set-extra', option, extra: { id: 'X1', what: 'Primer', stage: 'paint' } },
    { kind: 'remove-extra', option, id: 'X1' },
    { kind: 'set-sample', sample: { finish: 'EN-01', status: 'wanted', verdicts: [] } },
    { kind: 'remove-sample', finish: 'EN-01' },
  ] as const;
  expect(unsaid.reduce<Project>((before, one) => mustApply(before, one), said)).toEqual(demo);
});

it('spaces stay while one types, a copy of an option starts without approvals and deliveries', () => {
  const option = 'our-floor';
  const record = {
    item: 'CT1',
    finish: 'EN-01',
    note: 'By the ',
    waste_percent: 5,
    approved: { by: 'Client', on: '2026-05-04' },
    delivery: { on: '2026-06-04', outcome: 'accepted' },
  } as const;
  const project = done(
    { kind: 'set-item', option, record },
    { kind: 'set-item', option, record: { item: 'FL1', finish: 'ST-01', ordered_on: '2026-05-04' } },
    { kind: 'copy-option', option, id: 'second', name: 'Second' },
  );
  const [, first, second] = project.options;
  expect(first!.items![0]).toEqual(record);
  expect(second!.items).toEqual([{ item: 'CT1', finish: 'EN-01', note: 'By the ', waste_percent: 5 }]);
});

function mustApply(project: Project, command: Command): Project {
  const result = applyCommand(project, command);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}
