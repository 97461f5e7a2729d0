import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { holdLight, releaseLight } from '../../src/app/light-hold';
import { pictureCurrent } from '../../src/app/picture-current';
import { initialState, isPictureOld } from '../../src/app/state';
import { followState, studioEvents } from '../../src/app/studio-link';
import type { Look, RoomLight } from '../../src/kitchen/look';
import type { Room } from '../../src/kitchen/types';
import type { Studio } from '../../src/workers/studio';
import { terrace } from './terrace';

function open() {
  const store = createStore(() => initialState(terrace(), 'system'));
  const events = studioEvents(store);
  followState(store, { show: () => {} } as unknown as Studio);
  const option = store.getState().option;
  const look = (isCurrent: boolean, seenBy = store.getState().seenBy) =>
    events.look(
      { option, setting: store.getState().setting, seenBy, patterns: new Map() } as unknown as Look,
      isCurrent,
    );
  events.room({ viewpoints: [] } as unknown as Room);
  events.light({ isFinal: false } as RoomLight);
  look(true);
  return { store, events, look, isOld: () => isPictureOld(store.getState()) };
}

it('holds the picture for old from the change on until the look that answers it is there', () => {
  const { store, look, isOld } = open();
  expect(isOld()).toBe(false);
  store.setState({ setting: 'evening' });
  expect(isOld()).toBe(true);
  look(false);
  expect(isOld()).toBe(true);
  look(true);
  expect(isOld()).toBe(false);
  createActions(store).setLevel('ceiling', 0.4, false);
  expect(isOld()).toBe(true);
  look(true);
  store.setState({ seenBy: 'camera' as never });
  expect(isOld()).toBe(true);
  look(true);
  expect(isOld()).toBe(false);
});

it('waits for both options side by side, and for nothing that has failed', () => {
  const { store, events, isOld } = open();
  store.setState({ sideBySide: true });
  expect(isOld()).toBe(true);
  store.setState({ sideBySide: false, setting: 'evening' });
  events.problem({ code: 'x', text: 'x', remedy: 'x' });
  expect(isOld()).toBe(false);
  events.room({ viewpoints: [] } as unknown as Room);
  expect(isOld()).toBe(true);
  events.problem({ code: 'x', text: 'x', remedy: 'x' });
  expect(isOld()).toBe(false);
});

it('is kept only when it is that of its caption: what is on its way is waited for', async () => {
  const { store, look } = open();
  const order: string[] = [];
  const drawn = async () => void order.push('drawn');
  await pictureCurrent(store, drawn);
  expect(order).toEqual([]);
  store.setState({ setting: 'evening' });
  const kept = pictureCurrent(store, drawn).then(() => order.push('kept'));
  await Promise.resolve();
  expect(order).toEqual([]);
  look(true);
  await kept;
  expect(order).toEqual(['drawn', 'kept']);
});

it('of a stand side by side waits for both halves', () => {
  const { store, events, isOld } = open();
  const room = { viewpoints: [{ id: 'front' }] } as unknown as Room;
  const light = { isFinal: false } as RoomLight;
  const [left, right] = store.getState().history.present.options.map(({ id }) => id);
  const seen = (option: string) => {
    const look = { option, setting: 'day', seenBy: 'used-to-it', patterns: new Map() } as unknown as Look;
    events.stand({ room, light, look, readings: null }, true);
  };
  store.setState({ scene: 'stand', sideBySide: true, isStandOld: true });
  seen(left!);
  expect(isOld()).toBe(true);
  seen(right!);
  expect(isOld()).toBe(false);
});

it('a light held while its setting is undone is not gone back to', () => {
  const { store } = open();
  const actions = createActions(store);
  const [first] = store.getState().history.present.settings;
  expect(actions.copySetting('A copy')).toEqual([]);
  holdLight(store, first!.id);
  actions.undo();
  releaseLight(store);
  expect(store.getState()).toMatchObject({ setting: first!.id, heldLight: null });
});
