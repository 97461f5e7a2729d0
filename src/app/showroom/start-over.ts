import type { StoreApi } from 'zustand/vanilla';
import { keptPreferences } from '../preferences';
import { type AppState, initialState, projectOf } from '../state';
import type { Showroom } from './showroom-state';

/** What a start over can be taken back for, ms. */
const BACK_MS = 60_000;

/** The state in which a customer begins: the option staff chose, first view and first light, nothing done before, with the preferences of staff. */
export function showroomState(showroom: Showroom): AppState {
  const preferences = keptPreferences();
  const { start, range } = showroom;
  const option = start.options.find(({ id }) => id === showroom.option) ?? start.options[0]!;
  return {
    ...initialState(start, preferences.theme),
    ...preferences,
    option: option.id,
    isRangeComing: range.libraries.length > 0,
    showroom,
  };
}

/** What is of the page and not of who uses it. */
const ofThePage = (state: AppState) => ({
  room: state.room,
  isRoomComing: state.isRoomComing,
  light: state.light,
  looks: state.looks,
  contextLost: state.contextLost,
  keptLibraries: state.keptLibraries,
  isRangeComing: state.isRangeComing,
  putAside: state.putAside.length === 0 ? state.putAside : [],
  offline: state.offline,
  isNewlyOffline: state.isNewlyOffline,
  update: state.update,
  isUpdateLater: state.isUpdateLater,
  stale: state.stale,
  unseen: state.unseen,
  // What counts up goes on counting: who waits for a change must see one.
  viewpointVersion: state.viewpointVersion + 1,
  heightVersion: state.heightVersion + 1,
  drawerOpened: state.drawerOpened + 1,
  showroomRun: state.showroomRun + 1,
});

/** Starts afresh for the next customer. What was there can be brought back for a minute, unless something new is begun meanwhile. */
export function startOver(store: StoreApi<AppState>): void {
  const before = store.getState();
  if (!before.showroom) return;
  const next: AppState = {
    ...showroomState(before.showroom),
    ...ofThePage(before),
    viewpoint: before.room?.viewpoints[0]?.id ?? null,
    bringBack: () => {
      const now = store.getState();
      store.setState({
        ...before,
        ...ofThePage(now),
        bringBack: null,
        startsAfreshIn_s: null,
        listing: false,
        assessments: sameFindings(before, now),
      });
    },
  };
  store.setState({ ...next, assessments: sameFindings(next, before) });
  forgetLater(store);
}

/** Puts an end to bringing back: after a minute, or when something is changed. */
function forgetLater(store: StoreApi<AppState>): void {
  const { bringBack, history } = store.getState();
  const forget = () => {
    window.clearTimeout(timer);
    stop();
    if (store.getState().bringBack === bringBack) store.setState({ bringBack: null });
  };
  const timer = window.setTimeout(forget, BACK_MS);
  const stop = store.subscribe((now) => {
    if (now.history !== history || now.bringBack !== bringBack) forget();
  });
}

/** Findings of one and the same document hold on; of another one they say nothing. */
const sameFindings = (next: AppState, shown: AppState): AppState['assessments'] =>
  projectOf(next) === projectOf(shown) ? shown.assessments : {};
