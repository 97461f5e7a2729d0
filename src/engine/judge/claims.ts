import type { PairVerdict, WarningCode } from './assessment';

/** A fault between two colors, and the key of the one that suffers; null where both do. */
export interface DrawnFault {
  readonly verdict: PairVerdict;
  readonly faulty: string | null;
}

/** Shares of plausible measurement errors (0-1) under which what was said of a pair still holds. */
export interface PairHolds {
  /** The same verdict. */
  readonly same: number;
  /** Some fault, whichever its name. */
  readonly fault: number;
  /** The faults that occur in more than a stray draw, commonest first. */
  readonly faults: readonly DrawnFault[];
  /** No fault (whites), or still the same color (others). */
  readonly fine: number;
}

/** How firmly the findings stand; null wherever that has not been computed. */
export interface Holds {
  readonly pair: (key: string) => PairHolds | null;
  readonly edge: (key: string) => number | null;
  readonly balance: number | null;
}

export const NOT_DRAWN: Holds = { pair: () => null, edge: () => null, balance: null };

/** The warning that a pair verdict raises; null for verdicts that ask for nothing. */
export function faultCode(verdict: PairVerdict): WarningCode | null {
  switch (verdict) {
    case 'looks-dirty':
      return 'white-looks-dirty';
    case 'too-yellow':
      return 'too-yellow';
    case 'pulls-apart':
      return 'undertones-pull-apart';
    default:
      return null;
  }
}

/** Verdicts that tell people two finishes go together. */
export const isAssurance = (verdict: PairVerdict): boolean =>
  verdict === 'same' || verdict === 'match' || verdict === 'agree';
