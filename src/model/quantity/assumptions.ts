import type { Bounds } from '../check-number';

/** Where the floor ends: under the units as far as the walls, or at the plinths. */
export type FloorReach = 'under-units' | 'to-plinth';

/** Which faces of fronts are coated: the one that shows, or both with their edges. */
export type CoatedFaces = 'front' | 'both';

/**
 * What quantities rest on besides the kitchen itself. All of it is said beside the quantities and may be changed; what a
 * project does not say is as in `USUAL_ASSUMPTIONS`.
 */
export interface QuantityAssumptions {
  readonly floor_reach: FloorReach;
  /** Openings up to this are not taken off walls, m2. */
  readonly least_opening_m2: number;
  /** Is the wall behind units and tall units painted as well? */
  readonly paint_behind_units: boolean;
  /** Coated area of one litre and one coat, m2. */
  readonly wall_spread_m2_per_l: number;
  readonly wall_coats: number;
  readonly front_spread_m2_per_l: number;
  readonly front_coats: number;
  readonly coated_faces: CoatedFaces;
  readonly paint_waste_percent: number;
  /** Edge of a slab that is not used, all round, mm. */
  readonly slab_trim_mm: number;
  /** Width of a saw cut, mm. */
  readonly kerf_mm: number;
  /** No part of a counter between a seam and an end, or another seam, is shorter, mm. */
  readonly shortest_part_mm: number;
  /** Seams keep so far from cut-outs, and behind a cooktop from its ends, mm. */
  readonly seam_clear_mm: number;
  /** Do veins match at every seam as they are laid, even where that takes more slabs? */
  readonly match_seams: boolean;
  readonly grout_depth_mm: number;
  readonly grout_kg_per_l: number;
  readonly grout_waste_percent: number;
  /** Boxes or cartons kept for repairs. */
  readonly spare_packs: number;
}

/**
 * The trade's usual values (public trade guidance, several sources agreeing, where not said otherwise): spreading 10 m2/L smooth; two
 * coats; openings above 0.5 m2 taken off, trim, kerf, shortest part and what seams keep clear (common practice, no source).
 */
export const USUAL_ASSUMPTIONS: QuantityAssumptions = {
  floor_reach: 'under-units',
  least_opening_m2: 0.5,
  paint_behind_units: false,
  wall_spread_m2_per_l: 10,
  wall_coats: 2,
  front_spread_m2_per_l: 10,
  front_coats: 2,
  coated_faces: 'both',
  paint_waste_percent: 10,
  slab_trim_mm: 20,
  kerf_mm: 3,
  shortest_part_mm: 600,
  seam_clear_mm: 100,
  match_seams: false,
  grout_depth_mm: 8,
  grout_kg_per_l: 1.6,
  grout_waste_percent: 10,
  spare_packs: 1,
};

type NumberName = {
  [K in keyof QuantityAssumptions]: QuantityAssumptions[K] extends number ? K : never;
}[keyof QuantityAssumptions];

/** What may stand in a field at all. */
export const ASSUMPTION_BOUNDS: { readonly [K in NumberName]: Bounds } = {
  least_opening_m2: [0, 5, 'm2'],
  wall_spread_m2_per_l: [1, 30, 'm2/L'],
  wall_coats: [1, 6, ''],
  front_spread_m2_per_l: [1, 30, 'm2/L'],
  front_coats: [1, 6, ''],
  paint_waste_percent: [0, 100, '%'],
  slab_trim_mm: [0, 200, 'mm'],
  kerf_mm: [0, 20, 'mm'],
  shortest_part_mm: [0, 2000, 'mm'],
  seam_clear_mm: [0, 500, 'mm'],
  grout_depth_mm: [1, 60, 'mm'],
  grout_kg_per_l: [0.5, 4, 'kg/L'],
  grout_waste_percent: [0, 100, '%'],
  spare_packs: [0, 20, ''],
};

/** The assumptions of a project: its own where it says them. */
export const assumptionsOf = (own: Partial<QuantityAssumptions> | undefined): QuantityAssumptions => ({
  ...USUAL_ASSUMPTIONS,
  ...own,
});
