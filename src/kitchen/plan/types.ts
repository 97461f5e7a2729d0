import type { Fixture } from '../../model/fixture';
import type { Cooktop, Island, Kitchen, Opening, OpenSide, RunWall, Sink } from '../../model/kitchen';
import type { IslandRows, RunRows, Span } from '../../model/layout/types';

/** An axis-aligned footprint on the floor, m. */
export interface Footprint {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** A window or glazed door: its span along the wall (x or y), and heights, m. */
export interface PlannedOpening
  extends Span,
    Pick<Opening, 'id' | 'kind' | 'wall' | 'leaves' | 'panes' | 'facing_deg' | 'blind'> {
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

/** The island or peninsula, m. */
export interface PlannedIsland extends IslandRows, Pick<Island, 'joined' | 'waterfall'> {
  readonly counter: Footprint;
  readonly body: Footprint;
  /** Middles of the stools along x. */
  readonly stools: readonly number[];
}

/** The kitchen worked out: where every part goes, in metres. */
export interface Plan {
  readonly width: number;
  readonly depth: number;
  readonly height: number;
  readonly fronts: Kitchen['fronts'];
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
    readonly edge: Kitchen['counter']['edge'];
  };
  /** Depth of base and tall units with their doors. */
  readonly baseDepth: number;
  readonly runs: readonly RunRows[];
  readonly wallUnits: { readonly bottom: number; readonly top: number; readonly depth: number };
  readonly tallTop: number;
  readonly sink: Pick<Sink, 'run' | 'bowls' | 'fit' | 'tap'> & { readonly module: Span };
  readonly cooktop: Pick<Cooktop, 'run' | 'kind' | 'oven_below'> & { readonly module: Span };
  readonly hood:
    | (Span & { readonly run: RunWall; readonly kind: 'canopy' | 'built-in'; readonly bottom: number })
    | null;
  readonly dishwasher: Kitchen['dishwasher'];
  readonly fridge: Kitchen['fridge'];
  readonly island: PlannedIsland | null;
  readonly openings: readonly PlannedOpening[];
  readonly openSide: (Span & Pick<OpenSide, 'wall'> & { readonly height: number; readonly nextDepth: number }) | null;
  /** On the front wall. */
  readonly door: Span & { readonly height: number };
  readonly skirting: number;
  readonly upstand: number;
  readonly lamps: readonly PlannedLamp[];
  readonly objects: boolean;
}
