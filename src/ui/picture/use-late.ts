import { useEffect, useState } from 'react';

/** True once something has held for a while, and no longer than it holds. */
export function useLate(holds: boolean, after_ms: number): boolean {
  const [isLate, setLate] = useState(false);
  useEffect(() => {
    if (!holds) return;
    const timer = window.setTimeout(() => setLate(true), after_ms);
    return () => {
      window.clearTimeout(timer);
      setLate(false);
    };
  }, [holds, after_ms]);
  return holds && isLate;
}
