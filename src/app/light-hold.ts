import type { StoreApi } from 'zustand/vanilla';
import { type AppState, projectOf } from './state';

/** Shows a setting, and remembers the one before. */
export function chooseLight(store: StoreApi<AppState>, setting: string): void {
  store.setState((state) => ({
    setting,
    heldLight: null,
    lastLight: state.setting === setting ? state.lastLight : state.setting,
  }));
}

/** Shows another setting until `releaseLight`: the one given, or where that is on screen already, the one before. */
export function holdLight(store: StoreApi<AppState>, wanted: string | null): void {
  const state = store.getState();
  const { settings } = projectOf(state);
  if (state.heldLight !== null) return;
  const at = settings.findIndex(({ id }) => id === state.setting);
  const others = [wanted, state.lastLight, settings[(at + 1) % settings.length]?.id];
  const other = others.find((id) => id !== state.setting && settings.some((one) => one.id === id));
  if (other) store.setState({ setting: other, heldLight: state.setting });
}

/** Back to the setting from before the hold. */
export function releaseLight(store: StoreApi<AppState>): void {
  const { heldLight } = store.getState();
  if (heldLight !== null) store.setState({ setting: heldLight, heldLight: null });
}
