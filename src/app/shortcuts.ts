import type { StoreApi } from 'zustand/vanilla';
import type { Actions } from './actions';
import { holdLight, releaseLight } from './light-hold';
import { goTo } from './look-from';
import { drawnScene } from './scene';
import { type AppState, aimAtStart, isSplitWanted, projectOf } from './state';

/** What a key press asks for, apart from what the focused control does with it. */
export type Shortcut =
  | 'undo'
  | 'redo'
  | 'hold-other'
  | 'hold-light'
  | 'side-by-side'
  | 'mark'
  | 'close'
  | { readonly viewpoint: number };

interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** The shortcut of a key press; single letters count only when `letters` are on. */
export function shortcutOf(press: KeyPress, letters: boolean): Shortcut | null {
  const key = press.key.toLowerCase();
  if (press.altKey) return null;
  if (press.ctrlKey || press.metaKey) {
    if (key === 'z') return press.shiftKey ? 'redo' : 'undo';
    return key === 'y' ? 'redo' : null;
  }
  if (key === 'escape') return 'close';
  if (!letters) return null;
  if (key === 'o') return 'hold-other';
  if (key === 'l') return 'hold-light';
  if (key === 's') return 'side-by-side';
  if (key === 'm') return 'mark';
  return /^[1-9]$/.test(key) ? { viewpoint: Number(key) - 1 } : null;
}

/** Fields in which letters are text or jump to an entry. */
const FIELDS = 'textarea, select, [contenteditable], input:not([type=radio], [type=checkbox], [type=range])';

/** Listens to the whole page; returns how to stop. */
export function listenToKeys(store: StoreApi<AppState>, actions: Actions): () => void {
  const release = () => {
    store.setState({ holding: false });
    releaseLight(store);
  };
  const onDown = (event: KeyboardEvent) => {
    if (event.target instanceof Element && event.target.closest(FIELDS)) return;
    const state = store.getState();
    // The questions, the libraries and the handover set have keys of their own, and what lies behind them stays as it is.
    if (state.asking || state.libraries || state.handover) return;
    const shortcut = shortcutOf(event, state.letterKeys && !state.keysHelp);
    if (shortcut === null) return;
    if (event.ctrlKey || event.metaKey) event.preventDefault();
    if (shortcut === 'undo') actions.undo();
    else if (shortcut === 'redo') actions.redo();
    else if (event.repeat) return;
    // The schedule is written over what lies behind it, which stays as it is.
    else if (state.ordering) return;
    else if (shortcut === 'close') closeTopmost(store);
    else if (shortcut === 'hold-other') store.setState({ holding: true });
    else if (shortcut === 'hold-light') holdLight(store, null);
    else if (shortcut === 'side-by-side') {
      if (projectOf(state).options.length > 1) store.setState({ sideBySide: !state.sideBySide });
    } else if (shortcut === 'mark') putMark(store);
    else lookFrom(store, shortcut.viewpoint);
  };
  const onUp = (event: KeyboardEvent) => {
    const key = event.key.toLowerCase();
    if (key === 'o') store.setState({ holding: false });
    if (key === 'l') releaseLight(store);
  };
  window.addEventListener('keydown', onDown);
  window.addEventListener('keyup', onUp);
  window.addEventListener('blur', release);
  return () => {
    window.removeEventListener('keydown', onDown);
    window.removeEventListener('keyup', onUp);
    window.removeEventListener('blur', release);
  };
}

/** Esc closes what lies on top first: a menu or a dialog goes by itself and leaves the rest for the next press. */
function closeTopmost(store: StoreApi<AppState>): void {
  if (document.querySelector(':popover-open, dialog[open]')) return;
  store.setState((state) => {
    if (state.drawer) return { drawer: null, pointed: [] };
    if (state.tryOut) return { tryOut: null, drawer: state.tryOut.reopens };
    if (state.panel) return { panel: null };
    if (state.held && state.picked) return { held: null };
    return state.aim ? { aim: null, picked: null } : { reading: null, picked: null };
  });
}

/** The reading mark is moved by keys in the picture: that has the focus then. */
function putMark(store: StoreApi<AppState>): void {
  const picture = document.querySelector<HTMLElement>('.stage-fill [role="img"]');
  if (!picture) return;
  picture.focus();
  store.setState((state) => ({ aim: state.aim ?? aimAtStart(isSplitWanted(state)) }));
}

function lookFrom(store: StoreApi<AppState>, index: number): void {
  const viewpoint = drawnScene(store.getState()).room?.viewpoints[index];
  if (!viewpoint) return;
  goTo(store, viewpoint.id);
}
