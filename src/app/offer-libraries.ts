import type { StoreApi } from 'zustand/vanilla';
import type { Library } from '../model/library';
import { sameData } from '../model/same-data';
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
    const next = sameWhereAlike(keptLibraries, now);
    store.setState({ keptLibraries: next, isRangeComing: false });
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

/** The libraries as they are now, with the very objects of before where nothing changed: what is known of these stays known. */
export function sameWhereAlike(before: readonly Library[], now: readonly Library[]): readonly Library[] {
  const next = now.map((library) => {
    const old = before.find(({ id }) => id === library.id);
    if (!old) return library;
    const known = new Map(old.finishes.map((finish) => [finish.id, finish]));
    const finishes = library.finishes.map((finish) => {
      const its = known.get(finish.id);
      return its && sameData(its, finish) ? its : finish;
    });
    const isSame = finishes.length === old.finishes.length && finishes.every((finish, i) => finish === old.finishes[i]);
    return isSame && old.name === library.name && old.note === library.note ? old : { ...library, finishes };
  });
  return next.length === before.length && next.every((library, i) => library === before[i]) ? before : next;
}

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
