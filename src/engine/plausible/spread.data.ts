import type { FinishClass } from '../finish/types';

/** How far a curve of a class may depart from the one computed with. On the scale of z = atanh(2 rho - 1). */
export interface ClassSpread {
  /** Standard deviation of the departure before the colour is held. */
  readonly amplitude: number;
  /** Distance over which a departure forgets itself, nm. */
  readonly correlation_nm: number;
}

/** First figures, our judgement. */
export const CLASS_SPREAD: Readonly<Record<FinishClass, ClassSpread>> = {
  paint: { amplitude: 0.25, correlation_nm: 60 },
  stone: { amplitude: 0.1, correlation_nm: 80 },
  engineered: { amplitude: 0.2, correlation_nm: 60 },
  'solid surface': { amplitude: 0.2, correlation_nm: 60 },
  laminate: { amplitude: 0.25, correlation_nm: 60 },
  wood: { amplitude: 0.12, correlation_nm: 80 },
  vinyl: { amplitude: 0.25, correlation_nm: 60 },
  glazed: { amplitude: 0.25, correlation_nm: 60 },
  porcelain: { amplitude: 0.2, correlation_nm: 70 },
  metal: { amplitude: 0.1, correlation_nm: 80 },
  grout: { amplitude: 0.15, correlation_nm: 70 },
};
