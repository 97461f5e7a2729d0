import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { withProject } from '../../src/app/other-project';
import { type AppState, initialState } from '../../src/app/state';
import { followUnsettled } from '../../src/app/unsettled-follower';
import type { Assessment } from '../../src/engine/judge/assessment';
import { judge } from '../../src/engine/judge/judge';
import { record, startHistory } from '../../src/model/history';
import type { Project } from '../../src/model/project';
import { type Row, relaid, scheme } from '../judgement/schemes';
import { terrace } from '../ui/terrace';

const ROWS: readonly Row[] = [
  ['counter', 'EN-01', 25],
  ['floor', 'WD-03', 25],
  ['backsplash', 'TL-01', 50],
];

/** The demo project with a decided backsplash, and a counter of some finish. */
function kitchen(id: string, counter: string): Project {
  const project = terrace();
  const [option] = project.options;
  const placed = { ...option!.scheme, counter: { ...option!.scheme.counter, finish: counter } };
  const backsplash = { ...placed.backsplash, finish: 'TL-01', state: 'decided' as const };
  return { ...project, id, options: [{ ...option!, scheme: { ...placed, backsplash } }] };
}

function findings(option: string, setting: string, rows: readonly Row[]): Assessment {
  const found = judge(scheme(rows, option));
  return { ...found, setting: { ...found.setting, id: setting }, status: 'done' };
}

/** A kitchen with its findings; then another counter comes in by `change`, and its findings. */
function after(change: (state: AppState) => Partial<AppState>): AppState['unsettling'] {
  const store = createStore<AppState>(() => initialState(kitchen('one', 'EN-01'), 'system'));
  followUnsettled(store);
  const { option, setting } = store.getState();
  const judged = (rows: readonly Row[]) =>
    store.setState({ assessments: { [option]: findings(option, setting, rows) }, stale: [] });
  judged(ROWS);
  store.setState((state) => ({ ...change(state), stale: [option] }));
  judged(relaid(ROWS, { counter: 'ST-02' }));
  return store.getState().unsettling;
}

it('a changed counter unsettles the decided backsplash', () => {
  const lay = (state: AppState) => ({ history: record(state.history, kitchen('one', 'ST-02'), 'Counter') });
  expect(after(lay)?.found.map(({ surface }) => surface)).toEqual(['backsplash']);
});

// Ids of options recur from project to project: the one opened was taken for the one before, changed.
it.each(['another', 'one'])('a project that is opened (%s) changes no decision', (id) => {
  expect(after((state) => withProject(state, startHistory(kitchen(id, 'ST-02'))))).toBeNull();
});
