import type { StoreApi } from 'zustand/vanilla';
import type { AppState } from '../state';

/** What the page shows in the usual way while views are gathered, whatever is on screen. */
const USUAL = {
  holding: false,
  heldLight: null,
  sideBySide: false,
  scene: 'room',
  seenBy: 'used-to-it',
  shownAs: 'color',
  marksClipped: false,
  tryOut: null,
} as const satisfies Partial<AppState>;

/** Lets the page be shown what the set needs; returns what brings back what one looked at. The document never changes. */
export function showForSet(store: StoreApi<AppState>): () => void {
  const { option, setting, heldLight, lastLight, ...state } = store.getState();
  const { sideBySide, scene, seenBy, shownAs, marksClipped, tryOut } = state;
  const before = { option, setting: heldLight ?? setting, lastLight };
  const document = state.history.present;
  store.setState(USUAL);
  return () =>
    store.setState((now) => ({
      ...before,
      sideBySide,
      scene,
      seenBy,
      shownAs,
      marksClipped,
      // A trial is of the document it began in.
      tryOut: now.history.present === document ? tryOut : null,
    }));
}
