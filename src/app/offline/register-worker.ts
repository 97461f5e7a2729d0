import type { StoreApi } from 'zustand/vanilla';
import type { AppState } from '../state';

/** A page that stays open for weeks looks for a newer version this often, ms. */
const LOOK_EVERY_MS = 3_600_000;

/**
 * Registers the service worker beside the page and says in the state how it stands. A newer version waits until `update` is called;
 * where another tab went over to it, `update` only loads this one again. Rejects where the browser refuses.
 */
export async function registerWorker(store: StoreApi<AppState>): Promise<void> {
  const { serviceWorker } = navigator;
  let isAsked = false;
  const registration = await serviceWorker.register('./sw.js');
  // A page loaded past the worker has no controller, though there is a worker: the next one is no first one.
  let isFirst = registration.active === null;

  const offer = (worker: ServiceWorker) =>
    store.setState({
      isUpdateLater: false,
      update: () => {
        isAsked = true;
        worker.postMessage({ type: 'SKIP_WAITING' });
      },
    });
  const follow = (worker: ServiceWorker | null) => {
    const isNewer = registration.active !== null;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && isNewer) offer(worker);
      if (worker.state === 'activated' && !isNewer) store.setState({ offline: 'works', isNewlyOffline: true });
    });
  };

  serviceWorker.addEventListener('controllerchange', () => {
    if (isAsked) location.reload();
    // The first one only takes up the page that registered it.
    else if (!isFirst) store.setState({ isUpdateLater: false, update: () => location.reload() });
    isFirst = false;
  });
  registration.addEventListener('updatefound', () => follow(registration.installing));
  follow(registration.installing);
  if (registration.waiting && registration.active) offer(registration.waiting);
  store.setState({ offline: registration.active ? 'works' : 'coming' });

  window.setInterval(() => {
    // Without a network it finds nothing: the next time, then.
    if (navigator.onLine) registration.update().catch(() => undefined);
  }, LOOK_EVERY_MS);
}
