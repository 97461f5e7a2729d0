/** What stands in one module of a row. */
export type UnitKind = 'door' | 'pair' | 'drawers' | 'sink' | 'dishwasher' | 'cooktop';

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** One module of a row of units: its span along the wall. */
export interface Unit extends Span {
  readonly kind: UnitKind;
  /** Side of the handle on a single door. */
  readonly handle: 'low' | 'high';
}

/** Units side by side; fillers close the row where no module fits. Without gaps between modules and fillers. */
export interface Row {
  readonly units: readonly Unit[];
  readonly fillers: readonly Span[];
}
