import type { StoreApi } from 'zustand/vanilla';
import type { Studio } from '../workers/studio';
import { drawnScene, isRoomOutdated } from './scene';
import { type AppState, projectOf, shownOption } from './state';

/**
 * Keeps the reading of the picked place true: it goes as soon as something it depends on changes, and is taken anew
 * once the picture shows that change.
 */
export function followPoint(store: StoreApi<AppState>, readPoint: Studio['readPoint']): () => void {
  let asked = 0;
  const read = async (state: AppState) => {
    const mine = ++asked;
    const { id } = shownOption(state);
    const { picked } = state;
    const drawn = drawnScene(state);
    const look = drawn.looks[id];
    if (isRoomOutdated(state)) return;
    if (!picked || look?.setting !== state.setting || look.seenBy !== state.seenBy) return;
    const point = await readPoint({ option: id, ...picked, onStand: drawn.id === 'stand' });
    if (mine === asked) store.setState({ point });
  };
  return store.subscribe((state, before) => {
    const isOther =
      state.picked !== before.picked ||
      shownOption(state).id !== shownOption(before).id ||
      state.setting !== before.setting ||
      state.seenBy !== before.seenBy;
    const isDated = isOther || projectOf(state) !== projectOf(before);
    const isDrawnAnew = lookOf(state) !== lookOf(before) || drawnScene(state).light !== drawnScene(before).light;
    if (isDated) {
      asked++;
      if (state.point) store.setState({ point: null });
    }
    if (isOther || isDrawnAnew) void read(state);
  });
}

const lookOf = (state: AppState) => drawnScene(state).looks[shownOption(state).id];
