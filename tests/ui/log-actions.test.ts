import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { documentOf, initialState } from '../../src/app/state';
import { checkProject } from '../../src/model/check-project';
import { undoLabel } from '../../src/model/history';
import { terrace } from './terrace';

function open() {
  const store = createStore(() => initialState(terrace(), 'system'));
  const project = () => documentOf(store.getState());
  return { store, actions: createActions(store), project, log: () => project().log ?? [] };
}

it('writes down what is decided and what lies there, in the same step', () => {
  const { actions, project, log } = open();
  const before = project();
  actions.setState(['backsplash'], 'decided');
  expect(log()).toHaveLength(1);
  expect(log()[0]).toMatchObject({ kind: 'decision', option: 'our-floor', surface: 'backsplash' });
  const lies = project().library.find(({ id }) => id === project().options[1]!.scheme.backsplash.finish)!;
  expect(log()[0]!.text).toBe(`Backsplash decided: ${lies.label}.`);
  expect(checkProject(project())).toEqual([]);

  actions.setState(['backsplash'], 'ordered');
  actions.setState(['backsplash'], 'open');
  expect(log().map(({ text }) => text.replace(lies.label, 'it'))).toEqual([
    'Backsplash decided: it.',
    'Backsplash ordered: it.',
    'Backsplash open again. There: it.',
  ]);
  for (let i = 0; i < 3; i++) actions.undo();
  expect(project()).toBe(before);
});

it('writes one line for what lies alike, and none for what was so already', () => {
  const { actions, log } = open();
  actions.setState(['base-fronts', 'wall-fronts', 'backsplash'], 'decided');
  expect(log()).toHaveLength(2);
  actions.setState(['base-fronts', 'wall-fronts'], 'decided');
  expect(log()).toHaveLength(2);
  actions.setState(['base-fronts', 'tall-fronts'], 'decided');
  expect(log()).toHaveLength(3);
  expect(log()[2]!.text).toMatch(/^Tall fronts decided/);
});

it('freezes, goes back and notes, each as one step that the log tells of', () => {
  const { store, actions, project, log } = open();
  const before = project();
  actions.freeze('As shown', 'Before the tiles came');
  const frozen = project();
  expect(undoLabel(store.getState().history)).toBe('freeze R1, As shown');
  expect(frozen.revisions).toMatchObject([{ id: 'R1', name: 'As shown', note: 'Before the tiles came' }]);
  expect(frozen.revisions![0]!.document).toEqual(before);
  actions.lay(['backsplash'], 'TL-01');
  actions.note('Two samples came');
  actions.freeze('With tiles', '');
  actions.goBack('R1');
  expect(project().options).toEqual(before.options);
  expect(project().revisions!.map(({ id }) => id)).toEqual(['R1', 'R2']);
  expect(log().map(({ kind, text }) => `${kind} ${text}`)).toEqual([
    'revision Frozen as R1: As shown.',
    'note Two samples came',
    'revision Frozen as R2: With tiles.',
    'revision Went back to R1: As shown.',
  ]);
  for (let i = 0; i < 5; i++) actions.undo();
  expect(project()).toBe(before);
});

it('removes a revision as one step, and never gives its number to another', () => {
  const { actions, project, log } = open();
  actions.freeze('First', '');
  actions.freeze('Second', '');
  const both = project();
  actions.removeRevision('R2');
  expect(project().revisions!.map(({ id }) => id)).toEqual(['R1']);
  expect(log().at(-1)!.text).toBe('Removed R2: Second.');
  expect(checkProject(project())).toEqual([]);
  actions.undo();
  expect(project()).toBe(both);
  actions.redo();
  actions.removeRevision('R1');
  expect(project()).not.toHaveProperty('revisions');
  actions.freeze('R77', '');
  actions.freeze('Fourth', '');
  expect(project().revisions!.map(({ id }) => id)).toEqual(['R3', 'R4']);
});
