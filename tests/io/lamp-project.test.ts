import { expect, it } from 'vitest';
import { parseProject, projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { commandLabel } from '../../src/model/command-label';
import type { Lamp } from '../../src/model/project';
import { demoProject, demoText } from './demo';

const lamp: Lamp = {
  id: 'island-pendant',
  label: 'Island pendant',
  start_nm: 380,
  step_nm: 10,
  power: Array.from({ length: 41 }, (_, i) => 1 + i),
  note: 'Invented for this test.',
};

/** The demo with lamps, and with one of its lights named anew. */
function withLamps(lamps: readonly unknown[], light = 'LED-B2'): string {
  const project = JSON.parse(demoText());
  project.settings[1].lamps.ceiling.light = light;
  return JSON.stringify({ ...project, lamps }, null, 2);
}

it('reads a lamp of the project and a setting that uses it, and writes both back', () => {
  const parsed = parseProject(withLamps([lamp], lamp.id));
  if (!parsed.ok) throw new Error(parsed.problem.text);
  expect(parsed.notices).toBeUndefined();
  expect(parsed.value.lamps).toEqual([lamp]);
  expect(parseProject(projectText(parsed.value))).toEqual(parsed);
});

it('writes no field for lamps where there are none', () => {
  expect(projectText(demoProject())).not.toContain('"lamps": [');
});

it.each<[string, string, unknown]>([
  ['lamp-id', 'lamps[0].id', { ...lamp, id: 'LED-B2' }],
  ['lamp-id', 'lamps[0].id', { ...lamp, id: 'led:2700,90' }],
  ['lamp-id', 'lamps[0].id', { ...lamp, id: '' }],
  ['empty-text', 'lamps[0].label', { ...lamp, label: ' ' }],
  ['out-of-range', 'lamps[0].step_nm', { ...lamp, step_nm: 0 }],
  ['out-of-range', 'lamps[0].start_nm', { ...lamp, start_nm: -5 }],
  ['out-of-range', 'lamps[0].power', { ...lamp, power: [1] }],
  ['missing-field', 'lamps[0].power', { ...lamp, power: undefined }],
  ['wrong-field', 'lamps[0].power[3]', { ...lamp, power: lamp.power.map((one, i) => (i === 3 ? 'x' : one)) }],
])('refuses with %s at %s', (code, path, wrong) => {
  const parsed = parseProject(withLamps([wrong]), 'mine.json');
  const all = parsed.ok ? [] : [parsed.problem, ...(parsed.more ?? [])];
  const found = all.find((problem) => problem.code === code && problem.at?.path === path);
  expect(found, JSON.stringify(all.slice(0, 3))).toBeDefined();
  expect(found!.at!.line).toBeGreaterThan(1);
});

it.each([
  ['below zero', lamp.power.map((one, i) => (i === 7 ? -1 : one))],
  ['dark', lamp.power.map(() => 0)],
])('refuses a lamp whose power is %s, at its power', (_, power) => {
  expect(parseProject(withLamps([{ ...lamp, power }], lamp.id))).toMatchObject({
    ok: false,
    problem: { at: { path: 'lamps[0].power' } },
  });
});

it('refuses two lamps of one id, and a light that is neither a lamp nor words', () => {
  expect(parseProject(withLamps([lamp, lamp]))).toMatchObject({
    ok: false,
    problem: { code: 'duplicate-id', at: { path: 'lamps[1].id' } },
  });
  expect(parseProject(withLamps([lamp], 'pendant'))).toMatchObject({
    ok: false,
    problem: {
      code: 'unknown-light',
      at: { path: 'settings[1].lamps.ceiling.light' },
      remedy: expect.stringContaining('island-pendant'),
    },
  });
});

it('adds a lamp and hangs it in one step, and refuses it a second time', () => {
  const demo = demoProject();
  const setting = demo.settings[1]!.id;
  const add = { kind: 'add-lamp', lamp } as const;
  const added = applyCommand(demo, {
    kind: 'together',
    label: 'lamp',
    commands: [add, { kind: 'set-group', setting, group: 'ceiling', light: lamp.id }],
  });
  if (!added.ok) throw new Error(added.problem.text);
  expect(added.value.lamps).toEqual([lamp]);
  expect(added.value.settings[1]!.lamps.ceiling.light).toBe(lamp.id);
  expect(commandLabel(demo, add)).toBe('add lamp Island pendant');
  expect(applyCommand(added.value, add)).toMatchObject({ ok: false, problem: { code: 'duplicate-id' } });
  expect(demo.lamps).toBeUndefined();
});
