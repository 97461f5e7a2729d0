import type { StoreApi } from 'zustand/vanilla';
import type { Assessment } from '../../engine/judge/assessment';
import { renderPicture, shownOn } from '../../view/read-pixels';
import { pictureCanvas } from '../export-picture';
import { type AppState, isPictureOld } from '../state';

/** An option in a setting. */
export interface WantedView {
  readonly option: string;
  readonly setting: string;
}

/** What it looks like and what was found in it. */
export interface GatheredView {
  /** Address of a picture; null where none is drawn. */
  readonly picture: string | null;
  readonly assessment: Assessment;
}

/** Width and height of a picture, px; in fewer where the screen is coarser than usual. */
const PICTURE_PX = [1600, 1000] as const;
const QUALITY = 0.9;
/** What is a little grainy still is good enough to print after so long, ms. */
const MOST_FINE_MS = 20_000;

/**
 * Shows an option in a setting on the page, waits for its light and its findings, and takes both along. Rejects with the reason of the
 * signal once that is aborted.
 */
export async function gatherView(
  store: StoreApi<AppState>,
  { option, setting }: WantedView,
  signal: AbortSignal,
): Promise<GatheredView> {
  store.setState({ option, setting });
  const found = (state: AppState): Assessment | null => {
    const assessment = state.assessments[option];
    const isReady = assessment?.setting.id === setting && assessment.status !== 'pending';
    return isReady && !state.stale.includes(option) ? assessment : null;
  };
  const isThere = (state: AppState) => found(state) !== null && !isPictureOld(state);
  await until(store, isThere, signal);
  // Finer light brings findings of its own.
  const isFine = (state: AppState) => state.light?.isFinal === true && isThere(state);
  const late = AbortSignal.timeout(MOST_FINE_MS);
  await until(store, isFine, AbortSignal.any([signal, late])).catch((reason) => {
    if (signal.aborted) throw reason;
  });
  await drawn(store, option, signal);
  await until(store, isThere, signal);
  const assessment = found(store.getState())!;
  return { picture: await pictureOnScreen(), assessment };
}

/** The picture of the page as a file of its own, drawn beside it; null where nothing can be drawn. */
async function pictureOnScreen(): Promise<string | null> {
  const drawn = pictureCanvas();
  if (!drawn) return null;
  const scale = Math.min(1, window.devicePixelRatio || 1);
  const [width, height] = PICTURE_PX.map((px) => Math.round(px * scale)) as [number, number];
  try {
    const { rgba } = await renderPicture(drawn, { width, height });
    const canvas = Object.assign(document.createElement('canvas'), { width, height });
    canvas.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(rgba), width, height), 0, 0);
    const file = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', QUALITY));
    return file && URL.createObjectURL(file);
  } catch {
    // A set without a picture is a set all the same.
    return null;
  }
}

/** Resolves once the state is as wanted. */
function until(store: StoreApi<AppState>, isSo: (state: AppState) => boolean, signal: AbortSignal): Promise<void> {
  return new Promise((resolve, reject) => {
    if (signal.aborted) return reject(signal.reason);
    if (isSo(store.getState())) return resolve();
    const stop = store.subscribe((state) => {
      if (!isSo(state)) return;
      end();
      resolve();
    });
    const fail = () => {
      end();
      reject(signal.reason);
    };
    const end = () => {
      stop();
      signal.removeEventListener('abort', fail);
    };
    signal.addEventListener('abort', fail);
  });
}

/** Resolves once the picture draws the look that came last of an option; at once where there is no picture. */
async function drawn(store: StoreApi<AppState>, option: string, signal: AbortSignal): Promise<void> {
  for (;;) {
    signal.throwIfAborted();
    const canvas = pictureCanvas();
    const { looks, light, contextLost } = store.getState();
    const shown = canvas && shownOn(canvas);
    if (!shown || contextLost) return;
    if (shown.looks.length === 1 && shown.looks[0] === looks[option] && shown.light === light) return;
    await new Promise((resolve) => requestAnimationFrame(resolve));
  }
}
