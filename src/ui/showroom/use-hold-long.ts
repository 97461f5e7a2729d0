import { type KeyboardEvent, useEffect, useRef, useState } from 'react';

/** Looked at this often while it is held, ms. */
const STEP_MS = 100;

/**
 * Handlers for a button that acts only when it is held for `hold_ms`, by finger, mouse or the keys that press a button; and how long it
 * still has to be held, ms, null while nobody does. `onShort`: it was let go before, or clicked by something that cannot hold.
 */
export function useHoldLong(hold_ms: number, onDone: () => void, onShort: () => void) {
  const [left_ms, setLeft] = useState<number | null>(null);
  const timer = useRef(0);
  const stop = () => {
    window.clearInterval(timer.current);
    timer.current = 0;
    setLeft(null);
  };
  useEffect(() => () => window.clearInterval(timer.current), []);
  const start = () => {
    if (timer.current !== 0) return;
    const until = Date.now() + hold_ms;
    setLeft(hold_ms);
    timer.current = window.setInterval(() => {
      const left = until - Date.now();
      if (left > 0) return setLeft(left);
      stop();
      onDone();
    }, STEP_MS);
  };
  const isPress = ({ key }: KeyboardEvent) => key === 'Enter' || key === ' ';
  return {
    left_ms,
    handlers: {
      onPointerDown: start,
      onPointerUp: stop,
      onPointerLeave: stop,
      onPointerCancel: stop,
      onContextMenu: (event: { preventDefault: () => void }) => event.preventDefault(),
      onKeyDown: (event: KeyboardEvent) => {
        if (!isPress(event)) return;
        event.preventDefault();
        start();
      },
      onKeyUp: (event: KeyboardEvent) => {
        if (!isPress(event)) return;
        if (timer.current !== 0) onShort();
        stop();
      },
      onBlur: stop,
      onClick: onShort,
    },
  };
}
