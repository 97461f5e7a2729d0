import { useCallback, useEffect, useRef, useState } from 'react';

/** Rest this long and the rows at the picture's foot step back, ms. */
const REST_MS = 4000;

/**
 * Whether the hand has rested for a while. Never rests for people who asked for less motion, nor on touch screens,
 * where there is no hovering hand to bring the rows back.
 */
export function useResting(): { readonly resting: boolean; readonly wake: () => void } {
  const [resting, setResting] = useState(false);
  const timer = useRef(0);
  const wake = useCallback(() => {
    window.clearTimeout(timer.current);
    setResting(false);
    const still = window.matchMedia('(prefers-reduced-motion: reduce), (hover: none)').matches;
    if (!still) timer.current = window.setTimeout(() => setResting(true), REST_MS);
  }, []);
  useEffect(() => {
    wake();
    return () => window.clearTimeout(timer.current);
  }, [wake]);
  return { resting, wake };
}
