import { type RefObject, useEffect } from 'react';

/** Tells styles how much of what is above a box is covered by something that rises out of it: `--covered`, px, on the page. */
export function useCovered(box: RefObject<HTMLElement | null>, cover: RefObject<HTMLElement | null>, isOpen: boolean) {
  useEffect(() => {
    const [below, over] = [box.current, cover.current];
    if (!isOpen || !below || !over) return;
    const { style } = document.documentElement;
    const measure = () => style.setProperty('--covered', `${Math.max(0, over.offsetHeight - below.offsetHeight)}px`);
    const sizes = new ResizeObserver(measure);
    sizes.observe(over);
    sizes.observe(below);
    return () => {
      sizes.disconnect();
      style.removeProperty('--covered');
    };
  }, [box, cover, isOpen]);
}
