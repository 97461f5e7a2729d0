import { describe, expect, it } from 'vitest';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { parseProject, projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { changesWith } from '../../src/model/changes-with';
import type { Command } from '../../src/model/commands';
import { nextOpen } from '../../src/model/decision-order';
import { decisionPath } from '../../src/model/decision-path';
import { EMPTY, emptySurfaces } from '../../src/model/empty-surface';
import type { Project } from '../../src/model/project';
import { demoProject, demoText } from './demo';

/** The demo's file with surfaces of the first option absent, others null. */
function fileWithout(absent: readonly SurfaceId[], none: readonly SurfaceId[] = []): string {
  const project = JSON.parse(demoText());
  for (const surface of absent) delete project.options[0].scheme[surface];
  for (const surface of none) project.options[0].scheme[surface] = null;
  return JSON.stringify(project);
}

function opened(text: string) {
  const parsed = parseProject(text);
  if (!parsed.ok) throw new Error(parsed.problem.text);
  return { project: parsed.value, notices: parsed.notices ?? [] };
}

function changed(project: Project, command: Command): Project {
  const done = applyCommand(project, command);
  if (!done.ok) throw new Error(done.problem.text);
  return done.value;
}

describe('a file whose scheme lacks surfaces', () => {
  const { project, notices } = opened(fileWithout(['floor'], ['wall']));
  const [option] = project.options as [Project['options'][number]];

  it('is read with a notice that names them and says that nothing is said of them', () => {
    expect(notices).toHaveLength(1);
    expect(notices[0]).toMatchObject({ code: 'nothing-chosen', at: { path: 'options[0].scheme' } });
    expect(notices[0]!.text).toMatch(/floor, wall of .* nothing is said of them/);
    expect(emptySurfaces(option)).toEqual(['floor', 'wall']);
    expect(option.scheme.floor).toEqual(EMPTY);
    expect(project.library).toEqual(demoProject().library);
  });
  it('is written back without them, and reads the same again', () => {
    const text = projectText(project);
    const { scheme } = JSON.parse(text).options[0];
    expect(Object.keys(scheme)).toEqual(SURFACES.filter((one) => one !== 'floor' && one !== 'wall'));
    expect(opened(text).project).toEqual(project);
  });
  it('leaves them open on the way of deciding', () => {
    const groups = decisionPath(option, SURFACES).steps.flatMap((step) => step.groups);
    for (const one of ['floor', 'wall'] as const) {
      expect(groups.find(({ surfaces }) => surfaces.includes(one))?.state).toBe('open');
    }
    const { project: nothing } = opened(fileWithout(SURFACES));
    expect(nextOpen(nothing.options[0]!)).toBe('counter');
  });
  it('takes a finish as any surface does, and is whole again', () => {
    const before = demoProject().options[0]!.scheme.floor;
    const laid = changed(project, { kind: 'lay-finish', option: option.id, surface: 'floor', finish: before.finish });
    expect(laid.options[0]!.scheme.floor).toMatchObject({ finish: before.finish, state: 'open' });
    expect(emptySurfaces(laid.options[0]!)).toEqual(['wall']);
    const decided = changed(laid, { kind: 'set-state', option: option.id, surface: 'floor', state: 'decided' });
    expect(opened(projectText(decided)).project).toEqual(decided);
  });
  it('cannot be settled where nothing is chosen', () => {
    for (const state of ['decided', 'ordered', 'fixed'] as const) {
      const done = applyCommand(project, { kind: 'set-state', option: option.id, surface: 'floor', state });
      expect(done).toMatchObject({ ok: false, problem: { code: 'nothing-chosen' } });
    }
  });
  it('is copied with its gaps', () => {
    const copied = changed(project, { kind: 'copy-option', option: option.id, id: 'copy', name: 'Copy' });
    expect(emptySurfaces(copied.options.at(-1)!)).toEqual(['floor', 'wall']);
  });
});

it('leaves an empty upstand empty when a counter is chosen', () => {
  const { project } = opened(fileWithout(['counter', 'upstand']));
  const [option] = project.options as [Project['options'][number]];
  expect(changesWith(option, 'counter')).not.toContain('upstand');
  const { finish } = demoProject().options[0]!.scheme.counter;
  const laid = changed(project, { kind: 'lay-finish', option: option.id, surface: 'counter', finish });
  expect(emptySurfaces(laid.options[0]!)).toEqual(['upstand']);
});

it('still tells a misspelled surface', () => {
  const project = JSON.parse(demoText());
  const { floor, ...scheme } = project.options[0].scheme;
  project.options[0].scheme = { ...scheme, flor: floor };
  expect(opened(JSON.stringify(project)).notices.map(({ code }) => code)).toEqual(['unknown-field', 'nothing-chosen']);
});
