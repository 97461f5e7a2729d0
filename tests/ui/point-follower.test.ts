import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { followPoint } from '../../src/app/point-follower';
import { type AppState, initialState } from '../../src/app/state';
import type { Look } from '../../src/kitchen/look';
import type { SeenBy } from '../../src/kitchen/seen-by';
import type { PointReading } from '../../src/workers/studio';
import { terrace } from './terrace';

const look = (option: string, setting: string, seenBy: SeenBy = 'used-to-it') => ({ option, setting, seenBy }) as Look;
const place = { rect: 3, u: 0.25, v: 0.5, eye: [1, 1, 1.6] as const };

/** A page whose light answers when the test says so. */
function open() {
  const store = createStore<AppState>(() => initialState(terrace(), 'system'));
  const asked: { option: string; answer: (lux: number) => Promise<void> }[] = [];
  followPoint(store, ({ option }) => {
    let resolve: (reading: PointReading | null) => void = () => {};
    const promise = new Promise<PointReading | null>((done) => {
      resolve = done;
    });
    const answer = async (lux: number) => {
      resolve({ lux } as PointReading);
      await promise;
    };
    asked.push({ option, answer });
    return promise;
  });
  store.setState({ looks: { 'our-floor': look('our-floor', 'day') } });
  return { store, asked, actions: createActions(store), lux: () => store.getState().point?.lux ?? null };
}

it('drops the reading of a point at once when the light changes and takes it anew with the new picture', async () => {
  const { store, asked, actions, lux } = open();
  store.setState({ picked: place });
  await asked[0]!.answer(100);
  expect(lux()).toBe(100);
  actions.setLevel('ceiling', 0.5, false);
  expect(lux()).toBeNull();
  expect(asked).toHaveLength(1);
  store.setState({ looks: { 'our-floor': look('our-floor', 'day') } });
  await asked[1]!.answer(300);
  expect(lux()).toBe(300);
});

it('does not read a place of the room of before from the one that is coming', () => {
  const { store, asked } = open();
  store.setState({ isRoomComing: true });
  store.setState({ picked: place });
  expect(asked).toHaveLength(0);
  store.setState({ isRoomComing: false, picked: { ...place } });
  expect(asked).toHaveLength(1);
});

it('waits for a picture in the setting shown and reads the option shown', async () => {
  const { store, asked, lux } = open();
  store.setState({ picked: place });
  store.setState({ setting: 'evening' });
  store.setState({ option: 'copied-look' });
  expect(asked.map(({ option }) => option)).toEqual(['our-floor']);
  store.setState({ looks: { 'copied-look': look('copied-look', 'evening') } });
  expect(asked.map(({ option }) => option)).toEqual(['our-floor', 'copied-look']);
  await asked[0]!.answer(1);
  expect(lux()).toBeNull();
  await asked[1]!.answer(2);
  expect(lux()).toBe(2);
});

it('reads the place anew once the picture is that of another eye', async () => {
  const { store, asked, lux } = open();
  store.setState({ picked: place });
  await asked[0]!.answer(1);
  store.setState({ seenBy: 'daylight-camera' });
  expect(lux()).toBeNull();
  expect(asked).toHaveLength(1);
  store.setState({ looks: { 'our-floor': look('our-floor', 'day', 'daylight-camera') } });
  await asked[1]!.answer(2);
  expect(lux()).toBe(2);
});
