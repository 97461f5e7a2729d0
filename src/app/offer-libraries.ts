import type { StoreApi } from 'zustand/vanilla';
import type { Library } from '../model/library';
import type { Studio } from '../workers/studio';
import type { LibraryShelf } from './keeping/library-shelf';
import { shelfOf } from './offered';
import type { AppState } from './state';

/**
 * Takes the kept libraries into the state once the first picture is there, and whenever they change; tells the workers of them. What
 * customers of a showroom choose from comes at once.
 * @param idle resolves when the browser has nothing more urgent
 */
export function offerLibraries(
  store: StoreApi<AppState>,
  shelf: Pick<LibraryShelf, 'list' | 'onChange'>,
  studio: Pick<Studio, 'keepShelf'>,
  idle: () => Promise<void>,
): void {
  let turn = 0;
  const read = async () => {
    const mine = ++turn;
    const now = await shelf.list();
    // Read again meanwhile: what is on its way is newer.
    if (mine !== turn) return;
    const { keptLibraries } = store.getState();
    store.setState({ keptLibraries: sameIfAlike(keptLibraries, now), isRangeComing: false });
  };
  store.subscribe((state, before) => {
    const isSame = state.keptLibraries === before.keptLibraries && state.putAside === before.putAside;
    if (!isSame) studio.keepShelf(shelfOf(state));
    // What a customer of a showroom puts aside is kept no longer than all else they do.
    if (state.putAside !== before.putAside && !state.showroom) keepAside(state.putAside);
  });
  const begun = store.getState().isRangeComing ? Promise.resolve() : firstPicture(store).then(idle);
  void begun.then(() => {
    shelf.onChange(() => void read());
    return read();
  });
}

const firstPicture = (store: StoreApi<AppState>): Promise<void> =>
  new Promise((resolve) => {
    const isThere = ({ looks }: AppState) => Object.keys(looks).length > 0;
    if (isThere(store.getState())) return resolve();
    const stop = store.subscribe((state) => {
      if (!isThere(state)) return;
      stop();
      resolve();
    });
  });

/** The libraries as they are now; the same list where nothing changed. */
const sameIfAlike = (before: readonly Library[], now: readonly Library[]): readonly Library[] =>
  now.length === before.length && now.every((library, i) => library === before[i]) ? before : now;

const ASIDE = 'upstand-libraries-aside';

/** Ids of the libraries that were put aside last time; none where nothing is kept or storage is closed. */
export function keptAside(): readonly string[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(ASIDE) ?? '[]');
    return Array.isArray(kept) ? kept.filter((id) => typeof id === 'string') : [];
  } catch {
    return [];
  }
}

function keepAside(ids: readonly string[]): void {
  try {
    localStorage.setItem(ASIDE, JSON.stringify(ids));
  } catch {
    // Private mode: it lasts for this visit only.
  }
}
