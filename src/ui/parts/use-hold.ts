import { type MouseEvent, type PointerEvent, useEffect, useRef } from 'react';

/** Pressing longer than this is holding, not a click, ms. */
const HOLD_MS = 280;

/**
 * Handlers for a place where a click chooses, and press and hold shows something for as long as it is held. `onHold` is given
 * what was pressed; the click that ends a hold chooses nothing. Mouse, finger and pen alike.
 */
export function useHold(onHold: (pressed: Element) => void, onRelease: () => void) {
  const timer = useRef(0);
  const held = useRef(false);
  useEffect(() => () => window.clearTimeout(timer.current), []);
  const release = () => {
    window.clearTimeout(timer.current);
    if (held.current) onRelease();
  };
  return {
    onPointerDown: (event: PointerEvent) => {
      if (event.button !== 0) return;
      const pressed = event.target as Element;
      window.clearTimeout(timer.current);
      held.current = false;
      timer.current = window.setTimeout(() => {
        held.current = true;
        onHold(pressed);
      }, HOLD_MS);
    },
    onPointerUp: release,
    onPointerCancel: release,
    onPointerLeave: release,
    // A finger that rests asks for a menu in some browsers, which would end the hold.
    onContextMenu: (event: MouseEvent) => event.preventDefault(),
    onClickCapture: (event: MouseEvent) => {
      // Only the click of the pointer that held ends the hold; keys choose (they count no clicks).
      const endsHold = held.current && event.detail > 0;
      held.current = false;
      if (!endsHold) return;
      event.preventDefault();
      event.stopPropagation();
    },
  };
}
