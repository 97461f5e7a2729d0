import type { SurfaceId } from '../../engine/surface';

/** What a part of a takeoff is: a piece to cut, a front to make, a field to cover. */
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
  | 'filler';

/** Alike parts, mm. A leg, an island, a strip: along its length and across; a front, a field: width and height. */
export interface MeasuredPart {
  readonly kind: PartKind;
  readonly length_mm: number;
  readonly width_mm: number;
  readonly count: number;
  /** Along the length of a counter from its low end: holes a seam keeps clear of. Not taken off. */
  readonly cutouts_mm?: readonly (readonly [from: number, to: number])[];
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
  /** To be covered or made, m2: gross less deductions, never below 0; of fronts one face. */
  readonly area_m2: number;
  readonly gross_m2: number;
  readonly deductions: readonly Deduction[];
  readonly parts: readonly MeasuredPart[];
  /** Finished edge of counters, length of plinths and upstands, m; absent where length says nothing. */
  readonly length_m?: number;
  /** Joints between counter pieces that the plan itself makes (corners), seams of slabs not counted. */
  readonly corner_joints?: number;
  /** Things that are counted: handles, sinks, taps, appliances, window leaves. */
  readonly count?: number;
}

/** All surfaces that a kitchen has. */
export type Takeoff = ReadonlyMap<SurfaceId, SurfaceTakeoff>;
