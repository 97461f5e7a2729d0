import type { StoreApi } from 'zustand/vanilla';
import { type AppState, isPictureOld } from './state';

/**
 * Resolves once the picture shows what is asked for: at once where it does, else after what was on its way has been drawn. Words
 * beside a picture say what is asked for, and must not be put under one of before.
 */
export function pictureCurrent(store: StoreApi<AppState>, drawn: () => Promise<void> = twoFrames): Promise<void> {
  if (!isPictureOld(store.getState())) return Promise.resolve();
  return new Promise((resolve) => {
    const stop = store.subscribe((state) => {
      if (isPictureOld(state)) return;
      stop();
      resolve(drawn());
    });
  });
}

/** A look that came is put into the scene before the next frame and drawn by the one after it. */
const twoFrames = (): Promise<void> =>
  new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(() => resolve())));
