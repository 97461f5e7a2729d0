import type { PlanPoint } from '../fixture';

export type ClearanceCode =
  | 'work-aisle'
  | 'walkway'
  | 'behind-seats'
  | 'accessible-passage'
  | 'seat-width'
  | 'knee-depth'
  | 'landing-fridge'
  | 'landing-cooktop'
  | 'landing-sink'
  | 'prep-counter'
  | 'counter-frontage'
  | 'work-triangle'
  | 'triangle-leg'
  | 'stone-overhang'
  | 'counter-height';

/**
 * Where a figure comes from: North American planning guidelines (public trade guidance), the same from memory, the stone
 * trade, accessible counters in the US, accessible housing (from memory) and the wheelchair category of UK housing.
 */
export type ClearanceSource =
  | 'planning-guidelines'
  | 'planning-guidelines-from-memory'
  | 'stone-trade'
  | 'accessible-us'
  | 'accessible-housing-uk'
  | 'wheelchair-housing-uk';

/** A length on the plan that was measured, mm from the front left corner. */
export interface Stretch {
  readonly from: PlanPoint;
  readonly to: PlanPoint;
}

/** One recommended measure of a kitchen, held against what planners recommend. Not law: local rules come first. */
export interface ClearanceHint {
  readonly code: ClearanceCode;
  readonly measured_mm: number;
  readonly wanted_mm: number;
  /** Whether at least or at most that much is wanted. */
  readonly bound: 'least' | 'most';
  /** `short` where the measure misses what is wanted. */
  readonly level: 'short' | 'fine';
  /** What was measured, on the plan; none for heights and sums. */
  readonly at: readonly Stretch[];
  readonly source: ClearanceSource;
}
