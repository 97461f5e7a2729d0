import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { documentOf, initialState, otherOption, projectOf, shownOption, shownSetting } from '../../src/app/state';
import { isEmpty } from '../../src/model/empty-surface';
import { undoLabel } from '../../src/model/history';
import { LAMP_GROUPS } from '../../src/model/project';
import { terrace } from './terrace';

function open() {
  const store = createStore(() => initialState(terrace(), 'system'));
  return { store, actions: createActions(store), scheme: () => shownOption(store.getState()).scheme };
}

it('lays on several surfaces as one step', () => {
  const { store, actions, scheme } = open();
  actions.lay(['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'], 'WD-07');
  expect(new Set(['base-fronts', 'plinth', 'island-fronts'].map((s) => scheme()[s as 'plinth'].finish))).toEqual(
    new Set(['WD-07']),
  );
  expect(undoLabel(store.getState().history)).toContain('beech');
  actions.undo();
  expect(scheme()['island-fronts'].finish).toBe('PT-01');
  expect(undoLabel(store.getState().history)).toBeNull();
});

it('leaves a surface alone that was taken out of the family', () => {
  const { actions, scheme } = open();
  actions.lay(['base-fronts'], 'WD-07');
  expect(scheme()['base-fronts'].finish).toBe('WD-07');
  expect(scheme().plinth.finish).toBe('PT-01');
});

it('takes a drag as one step', () => {
  const { store, actions } = open();
  actions.setLevel('ceiling', 0.2, false);
  actions.setLevel('ceiling', 0.4, true);
  actions.setLevel('ceiling', 0.6, true);
  expect(shownSetting(store.getState()).lamps.ceiling.level).toBe(0.6);
  actions.undo();
  expect(shownSetting(store.getState()).lamps.ceiling.level).toBe(0);
});

it('changes all lamps with the lamp color and leaves the daylight', () => {
  const { store, actions } = open();
  const { daylight } = shownSetting(store.getState());
  actions.setLamp('LED-B5', false);
  const after = shownSetting(store.getState());
  expect(LAMP_GROUPS.map((group) => after.lamps[group].light)).toEqual(LAMP_GROUPS.map(() => 'LED-B5'));
  expect(after.daylight).toBe(daylight);
});

it('hangs a lamp by day and in the evening alike, in one step', () => {
  const { store, actions } = open();
  const lights = () => projectOf(store.getState()).settings.map(({ lamps }) => lamps.ceiling.light);
  const before = lights();
  expect(new Set(before).size).toBe(1);
  actions.setLamp('led:3000,90', false);
  expect(lights()).toEqual(before.map(() => 'led:3000,90'));
  actions.undo();
  expect(lights()).toEqual(before);
});

it('says what is wrong and keeps the document', () => {
  const { store, actions } = open();
  const before = projectOf(store.getState());
  actions.lay(['floor'], 'NO-SUCH');
  expect(store.getState().told?.list[0]?.remedy).toBeTruthy();
  expect(projectOf(store.getState())).toBe(before);
});

it('shows the other option while it is held', () => {
  const { store } = open();
  const other = otherOption(store.getState()).id;
  store.setState({ holding: true });
  expect(shownOption(store.getState()).id).toBe(other);
  store.setState({ holding: false });
  expect(shownOption(store.getState()).id).toBe('our-floor');
});

it('copies the chosen option under a name that is free, shows it, and removes it again', () => {
  const { store, actions } = open();
  const before = projectOf(store.getState()).options;
  const copied = shownOption(store.getState());
  actions.copyOption();
  const made = shownOption(store.getState());
  expect(made.scheme).toEqual(copied.scheme);
  expect([before.length, made.name]).toEqual([2, 'Third idea']);
  expect(projectOf(store.getState()).options).toHaveLength(before.length + 1);
  actions.removeOption();
  expect(projectOf(store.getState()).options).toEqual(before);
  expect(before).toContain(shownOption(store.getState()));
});

it('tries a finish as it would lay it, one after another, and keeps it as one step', () => {
  const { store, actions, scheme } = open();
  const fronts = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'] as const;
  store.setState({ drawer: 'base-fronts' });
  actions.tryFinish(fronts, 'WD-07', { keepsDrawer: true, keepsFocus: true });
  actions.tryFinish(['base-fronts'], 'WD-01', { keepsDrawer: true, keepsFocus: true });
  // The first trial left no trace: the plinth keeps what it has by the document.
  expect([scheme()['base-fronts'].finish, scheme().plinth.finish]).toEqual(['WD-01', 'PT-01']);
  expect(store.getState().drawer).toBe('base-fronts');
  expect(documentOf(store.getState())).toBe(store.getState().saved);
  actions.dropTry();
  expect(scheme()['base-fronts'].finish).toBe('PT-01');
  expect(store.getState().drawer).toBe('base-fronts');

  actions.tryFinish(['floor'], 'WD-01', { reopens: 'floor' });
  expect(store.getState().drawer).toBeNull();
  actions.dropTry();
  expect(store.getState().drawer).toBe('floor');
  actions.tryFinish(['floor'], 'WD-01', { reopens: 'floor' });
  actions.keepTry();
  expect([store.getState().drawer, scheme().floor.finish]).toEqual([null, 'WD-01']);
  actions.undo();
  expect(documentOf(store.getState())).toBe(store.getState().saved);
});

it('empties an open surface in one step and leaves one that is settled', () => {
  const { store, actions, scheme } = open();
  actions.empty(['backsplash']);
  expect(isEmpty(scheme().backsplash)).toBe(true);
  expect(undoLabel(store.getState().history)).toBe('Backsplash: left empty');
  actions.undo();
  expect(scheme().backsplash.finish).toBe('TL-01');
  actions.empty(['floor']);
  expect(scheme().floor.finish).toBe('ST-01');
  expect(JSON.stringify(store.getState().told)).toContain('can only be open');
});

it('leaves what follows an emptied surface as it is where that is decided', () => {
  const { actions, scheme } = open();
  actions.setState(['counter', 'island-counter'], 'open');
  actions.setState(['upstand'], 'decided');
  const { finish } = scheme().upstand;
  actions.empty(['counter', 'island-counter']);
  expect(isEmpty(scheme().counter)).toBe(true);
  expect(scheme().upstand).toMatchObject({ finish, state: 'decided' });
  actions.setState(['upstand'], 'open');
  actions.undo();
  actions.undo();
  actions.setState(['upstand'], 'open');
  actions.empty(['counter', 'island-counter']);
  expect(isEmpty(scheme().upstand)).toBe(true);
});

it('takes back the trial and nothing else by undo, opens again what it closed, and leaves redo for after it', () => {
  const { store, actions } = open();
  actions.lay(['floor'], 'WD-01');
  actions.lay(['floor'], 'WD-03');
  actions.undo();
  const before = store.getState().history;
  actions.tryFinish(['floor'], 'WD-07', { reopens: 'floor' });
  actions.redo();
  expect(store.getState().tryOut).not.toBeNull();
  actions.undo();
  expect(store.getState()).toMatchObject({ tryOut: null, drawer: 'floor' });
  expect(store.getState().history).toBe(before);
});
