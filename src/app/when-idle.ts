/** When the browser has nothing more urgent; Safari has no idle callback. */
export const whenIdle = (): Promise<void> =>
  new Promise((resolve) => {
    if ('requestIdleCallback' in window) window.requestIdleCallback(() => resolve(), { timeout: 500 });
    else setTimeout(resolve, 100);
  });
