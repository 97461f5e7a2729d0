import { expect, it } from 'vitest';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { type AppState, initialState, projectOf } from '../../src/app/state';
import { followUnsettled } from '../../src/app/unsettled-follower';
import { judge } from '../../src/engine/judge/judge';
import type { SurfaceId } from '../../src/engine/surface';
import { DECISIONS } from '../../src/ui/words/decisions';
import { scheme } from '../judgement/schemes';
import { terrace } from '../ui/terrace';

/** The demo project with a decided backsplash on a counter beside which it looks right. */
function start(): { store: StoreApi<AppState>; option: string; actions: ReturnType<typeof createActions> } {
  const project = terrace();
  const option = project.options.at(-1)!;
  const placed = (surface: SurfaceId, finish: string) => ({ ...option.scheme[surface], finish });
  const counter = placed('counter', 'EN-01');
  const backsplash = { ...placed('backsplash', 'TL-01'), state: 'decided' as const };
  const own = { ...option, scheme: { ...option.scheme, counter, backsplash } };
  const store = createStore<AppState>(() => initialState({ ...project, options: [own] }, 'system'));
  // As on the page: what was found is old as soon as another project is shown.
  store.subscribe((state, last) => {
    if (projectOf(state) !== projectOf(last)) store.setState({ stale: [option.id] });
  });
  followUnsettled(store);
  return { store, option: option.id, actions: createActions(store) };
}

/** What is shown is judged. */
function judged(store: StoreApi<AppState>): void {
  const { option, setting } = store.getState();
  const { scheme: laid } = projectOf(store.getState()).options[0]!;
  const rows = (['counter', 'floor', 'base-fronts', 'backsplash'] as const).map(
    (surface) => [surface, laid[surface].finish, 25] as const,
  );
  const found = judge(scheme(rows, option));
  const assessment = { ...found, setting: { ...found.setting, id: setting }, status: 'done' as const };
  store.setState({ assessments: { [option]: assessment }, stale: [] });
}

const layCounter = (option: string) => [{ kind: 'lay-finish', option, surface: 'counter', finish: 'ST-02' }] as const;
const layFronts = (option: string) =>
  [{ kind: 'lay-finish', option, surface: 'base-fronts', finish: 'PT-16' }] as const;

// What was tried on other surfaces was named as changed, and went on being so after it was dropped.
it('a trial that is dropped leaves what is told of the document as it was', () => {
  const { store, option, actions } = start();
  judged(store);
  actions.run(layCounter(option)[0]);
  judged(store);
  const told = store.getState().unsettling!;
  expect(DECISIONS.unsettled(told.changed, told.found.length)).toContain(
    'Changing the counter and the upstand works against',
  );
  actions.tryChange(layFronts(option), 'Fronts');
  judged(store);
  expect(store.getState().unsettling).toEqual(told);
  actions.dropTry();
  judged(store);
  expect(store.getState().unsettling).toEqual(told);
});

it('a trial alone changes no decision, dropped or not', () => {
  const { store, option, actions } = start();
  judged(store);
  actions.tryChange(layCounter(option), 'Counter');
  judged(store);
  expect(store.getState().unsettling).toBeNull();
  actions.dropTry();
  judged(store);
  expect(store.getState().unsettling).toBeNull();
});

it('a trial that is kept is a change, told at once by what was found while it was tried', () => {
  const { store, option, actions } = start();
  judged(store);
  actions.tryChange(layCounter(option), 'Counter');
  judged(store);
  actions.keepTry();
  expect(store.getState().unsettling?.changed).toEqual(['counter', 'upstand']);
  expect(store.getState().unsettling?.found.map(({ surface }) => surface)).toEqual(['backsplash']);
});

it('a trial that another change takes the place of hides nothing of that change', () => {
  const { store, option, actions } = start();
  judged(store);
  actions.tryChange(layFronts(option), 'Fronts');
  judged(store);
  actions.run(layCounter(option)[0]);
  judged(store);
  expect(store.getState().unsettling?.changed).toEqual(['counter', 'upstand']);
});
