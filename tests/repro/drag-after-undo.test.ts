import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { initialState, projectOf, shownSetting } from '../../src/app/state';
import { undoLabel } from '../../src/model/history';
import { terrace } from '../ui/terrace';

// A drag that went on after an undo was merged into whatever step came before, and undo then took back both.

function open() {
  const store = createStore(() => initialState(terrace(), 'system'));
  return { store, actions: createActions(store), level: () => shownSetting(store.getState()).lamps.ceiling.level };
}

it('starts a step of its own when a drag goes on after an undo', () => {
  const { store, actions, level } = open();
  actions.lay(['floor'], 'WD-01');
  const laid = projectOf(store.getState());
  actions.setLevel('ceiling', 0.2, false);
  actions.undo();
  actions.setLevel('ceiling', 0.4, true);
  actions.setLevel('ceiling', 0.6, true);
  expect(level()).toBe(0.6);
  actions.undo();
  expect(projectOf(store.getState())).toBe(laid);
  expect(undoLabel(store.getState().history)).toContain('loor');
});

it('starts a step of its own when something else was done in between', () => {
  const { store, actions, level } = open();
  actions.setLevel('ceiling', 0.2, false);
  actions.setLevel('under-cabinet', 0.5, true);
  actions.undo();
  expect(level()).toBe(0.2);
  expect(shownSetting(store.getState()).lamps['under-cabinet'].level).toBe(0);
});
