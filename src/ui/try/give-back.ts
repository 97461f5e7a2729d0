/** For so long what has the focus may still be taken away, ms: the findings are judged anew. */
const WATCHED_MS = 4000;
const LOOK_MS = 100;

/**
 * Gives the focus back to what began a trial or, where that is gone, to the heading of what stands in the column of findings. What
 * began it may go only once the findings are judged anew: then the heading takes over, unless the focus has gone elsewhere.
 */
export function giveBack(began: Element | null): void {
  if (document.activeElement !== document.body) return;
  const isThere = began instanceof HTMLElement && began !== document.body && began.isConnected;
  if (isThere) began.focus({ preventScroll: true });
  if (document.activeElement === document.body) toHeading();
  const held = document.activeElement;
  const until = performance.now() + WATCHED_MS;
  const look = window.setInterval(() => {
    const isLost = document.activeElement === document.body && !held?.isConnected;
    if (isLost) toHeading();
    if (isLost || document.activeElement !== held || performance.now() > until) window.clearInterval(look);
  }, LOOK_MS);
}

function toHeading(): void {
  const heading =
    document.querySelector<HTMLElement>('.room-panel') ?? document.querySelector<HTMLElement>('.findings-title h2');
  heading?.focus({ preventScroll: true });
}
