import type { SurfaceId } from '../../engine/surface';
import type { RunWall } from '../../model/kitchen';
import type { Avoided } from '../../model/quantity/slab-types';

/**
 * What a part of a takeoff is. Of counters: a slab on a run, on an island, down to the floor, along a built-up edge; of floors,
 * walls and tiles: a field, or a strip along a wall; of fronts: what is made to measure; then what is bought by the piece.
 */
export type PartKind =
  | 'leg'
  | 'island'
  | 'waterfall'
  | 'edge-strip'
  | 'strip'
  | 'field'
  | 'door'
  | 'drawer'
  | 'panel'
  | 'filler'
  | 'face-frame'
  | 'rail'
  | 'shelf'
  | 'handle'
  | 'grip-rail'
  | 'lever'
  | 'bracket'
  | 'cooktop'
  | 'oven'
  | 'hood'
  | 'fridge'
  | 'dishwasher'
  | 'window'
  | 'glazed-door'
  | 'room-door';

/**
 * Alike parts, mm. A leg, an island, a strip, a rail: along its length and across; a front, a field, an opening, the face of an
 * appliance: width and height; a handle: its length and 0; 0 and 0 where a size says nothing (knobs, levers, brackets).
 */
export interface MeasuredPart {
  readonly kind: PartKind;
  readonly length_mm: number;
  readonly width_mm: number;
  readonly count: number;
  /** Along the length of a counter from its low end: holes a seam keeps clear of. Not taken off. */
  readonly cutouts_mm?: readonly (readonly [from: number, to: number])[];
  /** Where nothing is cut out and a seam is better not set all the same. */
  readonly avoid?: readonly Avoided[];
  /** Of what runs along a wall: which one, and where its low end is on it, mm. */
  readonly along?: { readonly line: RunWall; readonly from_mm: number };
}

/** What is not covered of a surface, m2. */
export interface Deduction {
  readonly kind:
    | 'window'
    | 'glazed-door'
    | 'door'
    | 'open-side'
    | 'units'
    | 'tall-units'
    | 'splash'
    | 'island'
    | 'hood';
  readonly area_m2: number;
}

/** What a surface of a kitchen measures, before any waste. */
export interface SurfaceTakeoff {
  readonly surface: SurfaceId;
  /** To be covered or made, m2: gross less deductions, never below 0; of fronts one face; 0 for what is counted. */
  readonly area_m2: number;
  readonly gross_m2: number;
  readonly deductions: readonly Deduction[];
  readonly parts: readonly MeasuredPart[];
  /**
   * Finished edge of counters, length of plinths, upstands, skirting and grip rails, outline of the floor, m; absent where length
   * says nothing.
   */
  readonly length_m?: number;
  /** Joints between counter pieces that the plan itself makes (corners, peninsula, waterfall ends), seams of slabs not counted. */
  readonly corner_joints?: number;
  /** Things that are counted: handles or grip rails, sinks, taps, appliances that show, leaves of windows and doors. */
  readonly count?: number;
}

/** All surfaces that a kitchen has, in the order of surfaces. */
export type Takeoff = ReadonlyMap<SurfaceId, SurfaceTakeoff>;
