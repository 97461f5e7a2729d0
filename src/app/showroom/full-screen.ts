/** Whether the browser lets a page fill the screen; telephones of one maker do not. */
export const canFillScreen = (): boolean => document.fullscreenEnabled === true;

export const isFullScreen = (): boolean => document.fullscreenElement !== null;

/** Fills the screen; a browser that refuses leaves everything as it is. */
export function enterFullScreen(): void {
  if (canFillScreen()) document.documentElement.requestFullscreen().catch(() => undefined);
}

export function toggleFullScreen(): void {
  if (isFullScreen()) document.exitFullscreen().catch(() => undefined);
  else enterFullScreen();
}

/** Tells when the screen is filled or no longer; returns how to stop. */
export function onFullScreen(listener: () => void): () => void {
  document.addEventListener('fullscreenchange', listener);
  return () => document.removeEventListener('fullscreenchange', listener);
}
