import type { OutdoorMaterial, Site } from '../engine/daylight/types';
import type { Fixture } from './fixture';

/** Where defaults and module widths come from: Europe, the United Kingdom, North America. Any value may be edited. */
export type Region = 'eu' | 'uk' | 'us';

/** Walls as one stands with the back to the door's wall: `front` is the door's wall, `back` the one before one's eyes. */
export type Wall = 'left' | 'back' | 'right' | 'front';
/** The walls that units stand on: the door's wall has none. */
export type RunWall = Exclude<Wall, 'front'>;

/** What a tall unit holds: shelves, an oven at working height, or a fridge over a freezer. */
export type TallKind = 'larder' | 'oven' | 'fridge';

/**
 * A run of units along a wall, mm. `from` and `to` along the wall (left and right wall: from the door's wall; back wall: from
 * the left wall) are its outer ends, end panels and overhanging counter included; a run in a corner reaches to the other wall.
 */
export interface Run {
  readonly wall: RunWall;
  readonly from: number;
  readonly to: number;
  /** Tall units at the low and at the high end, from the end inward. Never in a corner with another run. */
  readonly tall_from: readonly TallKind[];
  readonly tall_to: readonly TallKind[];
  /** What hangs over the counter. */
  readonly over: 'units' | 'shelf' | 'none';
  /** What the wall behind the counter is finished with: a low strip of counter material, or the backsplash. */
  readonly splash: 'upstand' | 'backsplash' | 'backsplash-to-ceiling';
}

/** A block that stands free, or joins a side wall as a peninsula (then it begins at that wall). Corner x, y nearest the front left, mm. */
export interface Island {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly depth: number;
  /** How far the counter reaches over the seats, on the side of the door's wall. 0: no seats. */
  readonly seat_overhang: number;
  readonly joined: 'left' | 'right' | null;
  /** Ends where the counter continues down to the floor. */
  readonly waterfall: 'none' | 'left' | 'right' | 'both';
  readonly stools: number;
}

export type FrontStyle = 'flat' | 'five-piece';
export type FrontMounting = 'overlay' | 'inset';
export type HandleKind = 'bar' | 'knob' | 'edge' | 'none';
export type CounterEdge = 'eased' | 'pencil' | 'bevel' | 'half-bullnose' | 'full-bullnose' | 'mitred';

/** A sink in its unit: `center` along the wall of its run, mm. */
export interface Sink {
  readonly run: RunWall;
  readonly center: number;
  readonly bowls: 1 | 2;
  /** From above into the counter, from below, or with a front of its own (apron). */
  readonly fit: 'inset' | 'undermount' | 'apron';
  readonly tap: 'arch' | 'straight';
}

/** A cooktop over its unit: `center` along the wall of its run, mm; the row is fitted as near to it as modules allow. */
export interface Cooktop {
  readonly run: RunWall;
  readonly center: number;
  readonly width: number;
  readonly kind: 'induction' | 'gas';
  readonly hood: 'canopy' | 'built-in' | 'none';
  readonly oven_below: boolean;
}

/** A window or glazed door. `center` along the wall from the corner at the room's origin (front left), mm. */
export interface Opening {
  readonly id: string;
  readonly kind: 'window' | 'glazed-door';
  readonly wall: Wall;
  readonly center: number;
  readonly width: number;
  /** Above the floor; 0 for a door. */
  readonly sill: number;
  readonly height: number;
  /** From the inside of the wall to the glass. */
  readonly reveal: number;
  /** Leaves side by side, 1-6. */
  readonly leaves: number;
  /** Panes of glass one behind the other, 1-3. */
  readonly panes: number;
  /** How high a wall across the way stands above the horizon, seen from here; 0 = open view. */
  readonly facing_deg: number;
  /** A roller blind hangs at its head, rolled up but for a hand's breadth. */
  readonly blind?: 'roller';
}

/** A wide opening without a door to a next room with the same floor, walls and ceiling; along its wall, mm. */
export interface OpenSide {
  readonly wall: 'front' | 'left' | 'right';
  readonly from: number;
  readonly to: number;
  readonly height: number;
  /** How deep the next room is, away from this one. */
  readonly next_depth: number;
}

/** Where the house stands and what lies around it. */
export interface KitchenSite extends Site {
  /** Compass bearing the back wall faces outward, clockwise from north. */
  readonly bearing_deg: number;
  readonly ground: OutdoorMaterial;
  /** What a wall across the way is made of. */
  readonly facing: OutdoorMaterial;
}

/** The parametric kitchen; lengths in mm. */
export interface Kitchen {
  readonly name: string;
  readonly region: Region;
  readonly room: { readonly width: number; readonly depth: number; readonly height: number };
  /** At most one a wall, in the order left, back, right; at least one. */
  readonly runs: readonly Run[];
  readonly island: Island | null;
  readonly fronts: { readonly style: FrontStyle; readonly mounting: FrontMounting; readonly handle: HandleKind };
  readonly base: {
    readonly depth: number;
    readonly carcass_height: number;
    readonly plinth_height: number;
    readonly plinth_recess: number;
  };
  readonly counter: {
    readonly depth: number;
    readonly thickness: number;
    readonly overhang: number;
    readonly edge: CounterEdge;
  };
  readonly wall_units: { readonly depth: number; readonly height: number; readonly gap_above_counter: number };
  readonly tall_height: number;
  readonly sink: Sink;
  readonly cooktop: Cooktop;
  readonly dishwasher: 'hidden' | 'free-standing' | 'none';
  /** How the fridge of a tall unit shows: behind fronts, or as the appliance itself. */
  readonly fridge: 'hidden' | 'free-standing';
  readonly site: KitchenSite;
  readonly openings: readonly Opening[];
  readonly open_side: OpenSide | null;
  /** On the front wall. */
  readonly door: { readonly width: number; readonly height: number; readonly from_right: number };
  readonly skirting_height: number;
  readonly upstand_height: number;
  readonly fixtures: readonly Fixture[];
  /** A few neutral things on the counters, for scale. */
  readonly objects: boolean;
}
