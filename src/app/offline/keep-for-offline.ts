import type { StoreApi } from 'zustand/vanilla';
import type { AppState } from '../state';
import { whenIdle } from '../when-idle';

/** Keeps the program for use without a network, once the first picture is there: nothing of it comes before that. */
export function keepForOffline(store: StoreApi<AppState>): void {
  // Absent by plain http from another machine; the development server has none to register.
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  store.setState({ offline: navigator.serviceWorker.controller ? 'works' : 'coming' });
  const stop = store.subscribe(({ room, looks }) => {
    if (!room || Object.keys(looks).length === 0) return;
    stop();
    void begin(store);
  });
}

/** Private windows refuse; everything works as before then, with a network. */
async function begin(store: StoreApi<AppState>): Promise<void> {
  await whenIdle();
  try {
    const { registerWorker } = await import('./register-worker');
    await registerWorker(store);
  } catch {
    store.setState({ offline: navigator.serviceWorker.controller ? 'works' : 'never' });
  }
}
