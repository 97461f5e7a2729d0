import { type RefObject, useEffect, useState } from 'react';

/** Whether an element has come into view at least once. */
export function useSeen(element: RefObject<HTMLElement | null>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const target = element.current;
    if (!target || seen) return;
    const observer = new IntersectionObserver((entries) => {
      if (entries.some((entry) => entry.isIntersecting)) setSeen(true);
    });
    observer.observe(target);
    return () => observer.disconnect();
  }, [element, seen]);
  return seen;
}
