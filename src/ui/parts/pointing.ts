import type { FocusEvent, PointerEvent } from 'react';

/** What is pointed at now, and how to let go of it. */
let current: { readonly element: Element; readonly letGo: () => void } | null = null;

/**
 * Handlers for something that outlines surfaces while a mouse is over it, a finger is on it, or keys have brought the focus to it. A
 * tap leaves a focus behind that nobody sees: it outlines nothing. What is taken away while it is pointed at lets go, too.
 */
export const pointing = <T>(what: readonly T[], onPoint: (what: readonly T[]) => void) => {
  const point = (element: Element) => {
    current?.letGo();
    const gone = new MutationObserver(() => {
      if (!element.isConnected) mine.letGo();
    });
    const mine = {
      element,
      letGo: () => {
        gone.disconnect();
        if (current === mine) current = null;
        onPoint([]);
      },
    };
    gone.observe(document.body, { childList: true, subtree: true });
    current = mine;
    onPoint(what);
  };
  const end = (element: Element) => {
    if (current?.element === element) current.letGo();
  };
  return {
    onPointerEnter: (event: PointerEvent) => point(event.currentTarget),
    onPointerLeave: (event: PointerEvent) => end(event.currentTarget),
    onPointerCancel: (event: PointerEvent) => end(event.currentTarget),
    onFocus: (event: FocusEvent) => {
      if (event.target.matches(':focus-visible')) point(event.currentTarget);
    },
    onBlur: (event: FocusEvent) => end(event.currentTarget),
  };
};
