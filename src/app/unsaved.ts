import type { StoreApi } from 'zustand/vanilla';
import { type AppState, isUnsaved } from './state';

/** While there are changes that are neither kept in the browser nor saved as a file, the browser asks before the page is left; returns how to stop. */
export function warnOfUnsaved(store: StoreApi<AppState>): () => void {
  const ask = (event: BeforeUnloadEvent) => event.preventDefault();
  // Listening only while it matters: a page that listens cannot be kept by the browser for going back.
  const follow = (state: AppState) => {
    if (isUnsaved(state)) window.addEventListener('beforeunload', ask);
    else window.removeEventListener('beforeunload', ask);
  };
  const stop = store.subscribe(follow);
  return () => {
    stop();
    window.removeEventListener('beforeunload', ask);
  };
}
