import { describe, expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { startNewProject } from '../../src/app/start-new-project';
import { initialState, isUnsaved, lengthUnitOf, projectOf } from '../../src/app/state';
import { usualRoom } from '../../src/model/new-kitchen';
import { terrace } from './terrace';

const begin = () => {
  const store = createStore(() => initialState(terrace(), 'light'));
  return { store, actions: createActions(store) };
};

describe('a new project', () => {
  it('is one step: undo brings the project of before, as it was', () => {
    const { store, actions } = begin();
    const before = projectOf(store.getState());
    expect(startNewProject(store, { room: { layout: 'galley', region: 'us', ...usualRoom('galley', 'us') } })).toEqual(
      [],
    );
    expect(projectOf(store.getState()).kitchen.runs.map(({ wall }) => wall)).toEqual(['left', 'right']);
    expect(projectOf(store.getState()).library).toEqual(before.library);
    actions.undo();
    expect(projectOf(store.getState())).toBe(before);
  });

  it('is in no file yet, so leaving the page is asked about', () => {
    const { store } = begin();
    expect(isUnsaved(store.getState())).toBe(false);
    startNewProject(store, {});
    expect(isUnsaved(store.getState())).toBe(true);
  });

  it('has an id of its own, so that its file is not that of another new project', () => {
    vi.useFakeTimers({ now: Date.UTC(2026, 2, 3, 4, 5, 6) });
    const ids = [0, 1000].map((later) => {
      vi.advanceTimersByTime(later);
      const { store } = begin();
      startNewProject(store, {});
      return projectOf(store.getState()).id;
    });
    vi.useRealTimers();
    expect(ids).toEqual(['kitchen-20260303-040506', 'kitchen-20260303-040507']);
  });

  it('is refused where the layout does not go into the room, and nothing changes', () => {
    const { store } = begin();
    const before = store.getState();
    const room = { layout: 'l-island', region: 'eu', width: 1600, depth: 1600, height: 2500 } as const;
    expect(startNewProject(store, { room })[0]?.remedy).toMatch(/layout/);
    expect(store.getState()).toBe(before);
  });

  it('is shown in the unit of its region, until another is chosen', () => {
    const { store } = begin();
    startNewProject(store, { room: { layout: 'l', region: 'us', ...usualRoom('l', 'us') } });
    expect(lengthUnitOf(store.getState())).toBe('in');
    store.setState({ lengthUnit: 'mm' });
    expect(lengthUnitOf(store.getState())).toBe('mm');
  });
});

describe('changes of the kitchen', () => {
  it('of one drag are one step, and keep what is laid', () => {
    const { store, actions } = begin();
    const { kitchen, options } = projectOf(store.getState());
    const moved = (center: number) => ({ ...kitchen, sink: { ...kitchen.sink, center } });
    actions.attempt({ kind: 'set-kitchen', kitchen: moved(kitchen.sink.center - 10) }, false);
    actions.attempt({ kind: 'set-kitchen', kitchen: moved(kitchen.sink.center - 20) }, true);
    expect(projectOf(store.getState()).options).toBe(options);
    actions.undo();
    expect(projectOf(store.getState()).kitchen).toBe(kitchen);
  });

  it('that do not fit are refused with the reason, and nothing changes', () => {
    const { store, actions } = begin();
    const before = projectOf(store.getState());
    const { kitchen } = before;
    const problems = actions.attempt({
      kind: 'set-kitchen',
      kitchen: { ...kitchen, sink: { ...kitchen.sink, center: 0 } },
    });
    expect(problems.length).toBeGreaterThan(0);
    expect(projectOf(store.getState())).toBe(before);
  });
});
