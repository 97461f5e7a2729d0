import { describe, expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { startNewProject } from '../../src/app/start-new-project';
import { initialState, isUnsaved, lengthUnitOf, projectOf } from '../../src/app/state';
import { usualRoom } from '../../src/model/new-kitchen';
import type { Answers } from '../../src/model/new-project';
import type { Finish } from '../../src/model/project';
import { terrace } from './terrace';
import { unkept } from './unkept';

const begin = () => {
  const demo = terrace();
  const store = createStore(() => initialState(demo, 'light'));
  const make = (answers: Answers) => startNewProject({ store, projects: unkept(store), demo }, answers);
  return { store, actions: createActions(store), make, demo };
};

describe('a new project', () => {
  it('takes the place of the present one with a history of its own', () => {
    const { store, actions, make } = begin();
    const before = projectOf(store.getState());
    expect(make({ room: { layout: 'galley', region: 'us', ...usualRoom('galley', 'us') } })).toEqual([]);
    expect(projectOf(store.getState()).kitchen.runs.map(({ wall }) => wall)).toEqual(['left', 'right']);
    expect(projectOf(store.getState()).library).toEqual(before.library);
    const made = projectOf(store.getState());
    actions.undo();
    expect(projectOf(store.getState())).toBe(made);
  });

  it('is one step where the present one is kept nowhere: undo brings it back', () => {
    const { store, actions, make } = begin();
    actions.lay(['floor'], 'WD-01');
    const before = projectOf(store.getState());
    make({});
    expect(projectOf(store.getState()).name).toBe('New kitchen');
    actions.undo();
    expect(projectOf(store.getState())).toBe(before);
  });

  it('takes over what is said to stay, and nothing else of another client', () => {
    const { store, actions, make, demo } = begin();
    const floor = demo.library.find(({ id }) => id === 'WD-01')!;
    const own = (id: string): Finish => ({ ...floor, id, label: id });
    actions.layOwn(['floor'], own('OWN-FLOOR'));
    actions.layOwn(['floor'], own('OWN-OTHER'));
    actions.run({ kind: 'rename', what: 'project', name: 'Of a client' });
    expect(make({ stays: [{ surface: 'floor', finish: 'OWN-FLOOR' }] })).toEqual([]);
    const made = projectOf(store.getState());
    expect(made.options[0]!.scheme.floor).toMatchObject({ finish: 'OWN-FLOOR', state: 'fixed' });
    expect(made.library.map(({ id }) => id)).toEqual([...demo.library.map(({ id }) => id), 'OWN-FLOOR']);
    expect(JSON.stringify(made)).not.toMatch(/OWN-OTHER|Of a client/);
  });

  it('takes the sizes of the UK at first where UK words are chosen, then those of the last kitchen', () => {
    const { store, make } = begin();
    store.setState({ words: 'uk' });
    make({});
    expect(projectOf(store.getState()).kitchen.region).toBe('uk');
    make({ room: { layout: 'galley', region: 'us', ...usualRoom('galley', 'us') } });
    make({});
    expect(projectOf(store.getState()).kitchen.region).toBe('us');
  });

  it('takes those of the demonstration where nobody chose UK words', () => {
    const { store, make, demo } = begin();
    make({});
    expect(projectOf(store.getState()).kitchen.region).toBe(demo.kitchen.region);
  });

  it('is in no file yet, so leaving the page is asked about', () => {
    const { store, make } = begin();
    expect(isUnsaved(store.getState())).toBe(false);
    make({});
    expect(isUnsaved(store.getState())).toBe(true);
  });

  it('has an id of its own, so that its file is not that of another new project', () => {
    vi.useFakeTimers({ now: Date.UTC(2026, 2, 3, 4, 5, 6) });
    const ids = [0, 1000].map((later) => {
      vi.advanceTimersByTime(later);
      const { store, make } = begin();
      make({});
      return projectOf(store.getState()).id;
    });
    vi.useRealTimers();
    expect(ids).toEqual(['kitchen-20260303-040506', 'kitchen-20260303-040507']);
  });

  it('is refused where the layout does not go into the room, and nothing changes', () => {
    const { store, make } = begin();
    const before = store.getState();
    const room = { layout: 'l-island', region: 'eu', width: 1600, depth: 1600, height: 2500 } as const;
    expect(make({ room })[0]?.remedy).toMatch(/layout/);
    expect(store.getState()).toBe(before);
  });

  it('is shown in the unit of its region, until another is chosen', () => {
    const { store, make } = begin();
    make({ room: { layout: 'l', region: 'us', ...usualRoom('l', 'us') } });
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
