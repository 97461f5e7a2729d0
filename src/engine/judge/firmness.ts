/**
 * How flatly a finding may be said: `firm` as it is, `may` with "may", `open` not at all ("cannot tell").
 * By the share of plausible measurement errors under which it holds.
 */
export type Firmness = 'firm' | 'may' | 'open';

/** Limits for the wording, our judgment: below the first "may", below the second "cannot tell". */
const FIRM_FROM = 0.85;
const MAY_FROM = 0.75;

/**
 * @param holdsIn share 0-1, or null while it has not been computed
 * @param isLoose whether it rests on colors known so roughly that, before it is computed, it may not be said flatly
 */
export function firmnessOf(holdsIn: number | null, isLoose = false): Firmness {
  if (holdsIn === null) return isLoose ? 'may' : 'firm';
  if (holdsIn >= FIRM_FROM) return 'firm';
  return holdsIn >= MAY_FROM ? 'may' : 'open';
}

/** True when something occurs so often (0-1) that its absence may not be said either. */
export const isOpenQuestion = (share: number): boolean => 1 - share < MAY_FROM;
