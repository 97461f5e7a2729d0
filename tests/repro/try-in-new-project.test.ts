import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { startNewProject } from '../../src/app/start-new-project';
import { type AppState, documentOf, initialState, projectOf } from '../../src/app/state';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// What was on trial went into a new project as if it had been kept.
it('a new project takes nothing of what is only tried', () => {
  const made = (isTrying: boolean) => {
    const store = createStore<AppState>(() => initialState(terrace(), 'system'));
    const { option } = store.getState();
    const own = { ...terrace().library[0]!, id: 'TRIED-1' };
    const commands = [
      { kind: 'add-finish', finish: own },
      { kind: 'lay-finish', option, surface: 'wall', finish: own.id },
    ] as const;
    if (isTrying) {
      expect(createActions(store).tryChange(commands, 'Wall')).toEqual([]);
      expect(projectOf(store.getState()).library.at(-1)?.id).toBe(own.id);
    }
    expect(startNewProject({ store, projects: unkept(store), demo: terrace() }, {})).toEqual([]);
    expect(store.getState().tryOut).toBeNull();
    const { id: _, ...project } = documentOf(store.getState());
    return project;
  };
  expect(made(true)).toEqual(made(false));
});
