/** Whether the browser can keep the screen from going dark. */
export const canKeepAwake = (): boolean => 'wakeLock' in navigator;

/** Keeps the screen on for as long as the page is in sight; the browser lets go of it whenever the page is hidden. */
export function keepAwake(): void {
  if (!canKeepAwake()) return;
  const ask = () => {
    // Refused where the battery is low: the screen goes dark as usual then.
    if (document.visibilityState === 'visible') navigator.wakeLock.request('screen').catch(() => undefined);
  };
  ask();
  document.addEventListener('visibilitychange', ask);
}
