import type { Row, Span } from '../../model/layout/types';
import type { Fixture, Opening } from '../../model/project';

/** An axis-aligned footprint on the floor, m. */
interface Footprint {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** A window or glazed door: its span along the wall (x or y), and heights, m. */
export interface PlannedOpening
  extends Span,
    Pick<Opening, 'id' | 'kind' | 'wall' | 'leaves' | 'panes' | 'facing_deg'> {
  readonly sill: number;
  readonly head: number;
  readonly reveal: number;
}

/** A lamp in its place: the face that shines, m. */
export interface PlannedLamp {
  /** As the kitchen has it, in mm. */
  readonly fixture: Fixture;
  readonly face: Footprint;
  readonly z: number;
  readonly looks: 'up' | 'down';
}

/** The kitchen worked out: where every part goes, in metres. */
export interface Plan {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly fivePiece: boolean;
  /** Thickness of end and side panels. */
  readonly panel: number;
  readonly plinth: { readonly top: number; readonly recess: number };
  /** Underside and top of the counter. */
  readonly counter: {
    readonly bottom: number;
    readonly top: number;
    readonly depth: number;
    readonly overhang: number;
    readonly thickness: number;
  };
  /** Depth of base and tall units with their doors. */
  readonly baseDepth: number;
  /** Short leg on the window wall, along y; ends at `end` (outer face of its end panel). */
  readonly left: Row & { readonly end: number; readonly sink: Span };
  /** Long run on the back wall, along x, up to the side panel of the tall units. */
  readonly back: Row & { readonly to: number; readonly cooktop: Span };
  readonly wallUnits: {
    readonly bottom: number;
    readonly top: number;
    readonly depth: number;
    readonly rows: readonly (Row & Span)[];
  };
  readonly hood: Span & { readonly bottom: number };
  /** Side panel, oven unit, fridge unit, filler to the right wall. */
  readonly tall: { readonly top: number; readonly panel: Span; readonly oven: Span; readonly fridge: Span };
  readonly island: {
    readonly counter: Footprint;
    readonly body: Footprint;
    readonly panel: number;
    readonly row: Row;
    readonly stools: readonly number[];
  };
  readonly openings: readonly PlannedOpening[];
  readonly door: Span & { readonly height: number };
  readonly skirting: number;
  readonly upstand: number;
  readonly lamps: readonly PlannedLamp[];
}
