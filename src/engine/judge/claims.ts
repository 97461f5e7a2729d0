import type { SurfaceId } from '../surface';
import type { PairVerdict, WarningCode } from './assessment';

/** A fault between two colors, and the key of the one that suffers; null where both do. */
export interface DrawnFault {
  readonly verdict: PairVerdict;
  readonly faulty: string | null;
}

/** Shares of plausible errors (0-1) under which what was said of a pair still holds. */
export interface PairHolds {
  /** The same verdict. */
  readonly same: number;
  /** Same or match: nobody, or hardly anybody, tells the two apart. */
  readonly alike: number;
  /** Some fault, whichever its name. */
  readonly fault: number;
  /** The faults that occur in more than a stray draw, commonest first. */
  readonly faults: readonly DrawnFault[];
  /** No fault (whites, among the errors under which they still are whites), or still the same color (others). */
  readonly fine: number;
}

/** The same in place; a fault is one of the finishes, there with the tint of each place and without it. */
export interface InstalledPairHolds extends PairHolds {
  /** A fault that goes with the tint of the places: theirs, not the finishes'. */
  readonly byPlace: number;
  /** No fault were the samples known exactly: what only the plausible curves leave open. Whites alone; else 1. */
  readonly fineByCurves: number;
}

/** Shares of plausible errors under which a tint of its place is at least that grave. */
export interface TintHolds {
  readonly visible: number;
  readonly note: number;
}

/** What the lamps make of a finish under plausible errors and curves. */
export interface ShiftHolds {
  /** Share in which it shifts that far. */
  readonly shifted: number;
  /** Size of the shift, CIEDE2000: 5th and 95th percentile. */
  readonly p05: number;
  readonly p95: number;
  /** The name it bears most often where it shifts that far; null where it never does. */
  readonly name: string | null;
}

/** How firmly the findings stand; null wherever that has not been computed. */
export interface Holds {
  readonly pair: (key: string) => PairHolds | null;
  readonly installed: (key: string) => InstalledPairHolds | null;
  readonly edge: (key: string) => number | null;
  /** By group of busy patterns: share in which all of them are busy. */
  readonly patterns: (key: string) => number | null;
  /** By two woods: share in which they are close but unlike. */
  readonly woods: (key: string) => number | null;
  readonly tint: (surface: SurfaceId) => TintHolds | null;
  readonly shift: (finish: string) => ShiftHolds | null;
  readonly balance: number | null;
  /** Share in which the balance lacks nothing, whether quiet or balanced. */
  readonly nothingLacks: number | null;
  /** The verdict of the balance as installed. */
  readonly installedBalance: number | null;
}

export const NOT_DRAWN: Holds = {
  pair: () => null,
  installed: () => null,
  edge: () => null,
  patterns: () => null,
  woods: () => null,
  tint: () => null,
  shift: () => null,
  balance: null,
  nothingLacks: null,
  installedBalance: null,
};

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

/** Verdicts that tell people two finishes look alike. */
export const isAlike = (verdict: PairVerdict): boolean => verdict === 'same' || verdict === 'match';

/** Verdicts that tell people two finishes go together. */
export const isAssurance = (verdict: PairVerdict): boolean => isAlike(verdict) || verdict === 'agree';
