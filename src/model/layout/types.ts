import type { RunWall, TallKind } from '../kitchen';

/** What stands in one module of a row. `cooktop-oven`: an oven under the cooktop. */
export type UnitKind = 'door' | 'pair' | 'drawers' | 'sink' | 'dishwasher' | 'cooktop' | 'cooktop-oven';

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

/**
 * How a run ends: against a wall of the room; in a corner it owns (its counter reaches to the wall, the other run meets it);
 * meeting the run or peninsula that owns the corner; free, with an end panel; at its tall units.
 */
export type RunEnd = 'wall' | 'owns-corner' | 'meets' | 'free' | 'tall';

export interface TallUnit extends Span {
  readonly kind: TallKind;
}

/** Tall units side by side at one end of a run. */
export interface TallBlock extends Span {
  readonly end: 'from' | 'to';
  /** Side panels: towards the counter, and at a free outer end. As deep as the counter. */
  readonly panels: readonly Span[];
  readonly units: readonly TallUnit[];
  /** Between the outermost unit and the wall. */
  readonly fillers: readonly Span[];
}

/** A run worked out, along its wall. Lengths as in what holds it: mm in the model, m in the plan. */
export interface RunRows {
  readonly wall: RunWall;
  readonly ends: { readonly from: RunEnd; readonly to: RunEnd };
  /** The slab; reaches to the wall in a corner the run owns, overhangs the end panel where it ends free. */
  readonly counter: Span;
  /** All that stands under the counter, from carcass end to carcass end (corner included where the run owns it, end panels not). */
  readonly base: Span & Row;
  /** End panels at free ends, as deep as the fronts. */
  readonly panels: readonly Span[];
  readonly tall: readonly TallBlock[];
  /** Wall units in rows: a hood parts them, a window and a corner bound them. */
  readonly over: readonly (Row & Span)[];
  /** Open shelves in place of wall units. */
  readonly shelves: readonly Span[];
  /** Wall behind the counter that is finished with upstand or backsplash. */
  readonly splash: Span & { readonly kind: 'upstand' | 'backsplash' | 'backsplash-to-ceiling' };
  /** Modules that carry sink and cooktop, where this run has them. */
  readonly sink: Span | null;
  readonly cooktop: Span | null;
}

/** The working side of an island or peninsula; its panels share what modules leave. */
export interface IslandRows {
  readonly row: Row;
  readonly panel: number;
}

/** Everything that stands in rows. */
export interface Rows {
  readonly runs: readonly RunRows[];
  readonly island: IslandRows | null;
}
