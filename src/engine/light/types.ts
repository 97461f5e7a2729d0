import type { ShadeFalloff } from '../photometry/shade-falloff';
import type { Beam } from '../photometry/types';
import type { Facing } from '../surface';

/** Metres; x along the back wall, y from the door side to the back wall, z up. */
export type Vec3 = readonly [number, number, number];

/**
 * An axis-aligned rectangle: corner `origin`, full edge vectors `u` and `v` (m).
 * Its front is the side that u x v points to; only the front is seen or lit.
 * `surface` indexes LightRoom.surfaces; -1 is black (openings, lamp faces).
 */
export interface Rect {
  readonly origin: Vec3;
  readonly u: Vec3;
  readonly v: Vec3;
  readonly surface: number;
}

/** A closed box, used to find which parts of a rectangle are buried or touched. */
export interface Solid {
  readonly min: Vec3;
  readonly max: Vec3;
}

/**
 * Where a rectangle lies on its finish's pattern: pattern coordinates (s, t) in metres at the rectangle's origin,
 * and their change over the whole u and v edge. Continuous over the pieces of one slab or field.
 */
export interface PatternFrame {
  readonly s0: number;
  readonly t0: number;
  readonly su: number;
  readonly tu: number;
  readonly sv: number;
  readonly tv: number;
}

/** A rectangle at the detail one sees: what is drawn, read, and casts shadows. */
export interface FineRect extends Rect {
  readonly pattern: PatternFrame;
  /** Of the same door, drawer or slab: lets a pattern start anew per piece. 0 for fields without pieces. */
  readonly piece: number;
}

/** A lamp face, its front lights the room. */
export interface LampFace {
  readonly group: number;
  readonly rect: Rect;
  /** Luminous flux at level 1, lm. */
  readonly lumens: number;
  /** Lambert where it is absent. */
  readonly beam?: Beam;
  /** The round opening of the shade it shines from, about the middle of the level `rect`: what one sees shine. */
  readonly opening?: { readonly radius_m: number; readonly falloff: ShadeFalloff };
}

/** A glazed opening. `rect` lies in the glass plane, front towards the room; what is outside is said by `Outdoors`. */
export interface WindowAperture {
  readonly rect: Rect;
  /** Panes of clear glass, refractive index 1.52: transmittance by angle is computed from Fresnel's equations. */
  readonly panes: number;
  /** Elevation of the top of a long wall across the way, seen straight on; 0 = open view. */
  readonly facing_deg: number;
  /** A roller blind hangs before it. */
  readonly roller?: true;
  /** The light groups of what comes through. */
  readonly groups: { readonly sky: number; readonly sun: number; readonly ground: number; readonly facing: number };
}

/** The cloth of a roller blind let down all the way: what one sees of it. Light takes a blind as a share of the daylight. */
export interface BlindCloth {
  /** Front towards the room. */
  readonly rect: Rect;
  /** How far it hangs when it is rolled up, m. */
  readonly rolled_m: number;
  /** One of the panes behind it. */
  readonly pane: WindowAperture;
}

/** A point-lit mesh for what is not a rectangle (tap, knob, pendant). Triangles, counter-clockwise from outside. */
export interface PropMesh {
  readonly surface: number;
  readonly name: string;
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  readonly indices: Uint32Array;
  /** Where each vertex lies on its finish's pattern, (s, t) in metres; absent where it shows one plain color. */
  readonly pattern?: Float32Array;
  /** The piece of its surface it belongs to, whose shift moves its pattern; absent: 0. */
  readonly piece?: number;
  /** Too narrow to mirror anything: it would only glitter. */
  readonly isNarrow?: boolean;
}

/** A room ready for light: coarse rectangles bounce light, fine rectangles are seen and cast shadows. */
export interface LightRoom {
  readonly surfaces: readonly string[];
  readonly groups: readonly string[];
  /** Already split at contacts, buried parts dropped; closed: openings and lamps are black rectangles. */
  readonly coarse: readonly Rect[];
  readonly fine: readonly FineRect[];
  readonly lamps: readonly LampFace[];
  readonly windows: readonly WindowAperture[];
  readonly blinds?: readonly BlindCloth[];
  readonly props: readonly PropMesh[];
  /** Boxes that stand for props where light is cut off: they shade, and are not seen themselves. */
  readonly shades?: readonly Solid[];
  /** Indices into `fine`: the working surface whose light sets the adopted white and the exposure. */
  readonly worktop: readonly number[];
}

/** One row of numbers per row index, compressed: columns and values of row i stand at start[i] .. start[i+1]. */
export interface SparseRows {
  readonly count: number;
  readonly start: Uint32Array;
  readonly column: Uint32Array;
  readonly value: Float32Array;
}

/** Where each fine rectangle's samples stand in an atlas. Samples include both ends of an edge; one sample = constant. */
export interface AtlasLayout {
  readonly width: number;
  readonly height: number;
  /** Per fine rectangle: x, y, count along u, count along v. */
  readonly blocks: Int32Array;
}

/** Mean light on one surface for one facing, as transport: multiply by the group's spectrum and level. */
export interface SurfaceLight {
  readonly surface: number;
  readonly facing: Facing;
  readonly area_m2: number;
  /** Per group: direct illuminance in lx at level 1. */
  readonly direct: Float64Array;
  /** The fine rectangles it was taken over. */
  readonly rects: readonly number[];
  /** Direct illuminance at level 1 at every sample point of these rectangles in turn, all groups of a point together, lx. */
  readonly directAt: Float32Array;
  /** Mean gather row over the patches, dense, N entries: indirect = row . B. */
  readonly gather: Float32Array;
}

/** A place to look from. Positions in m; fov vertical in degrees. `overview` viewpoints decide the balance. */
export interface Viewpoint {
  readonly id: string;
  readonly name: string;
  readonly eye: Vec3;
  readonly target: Vec3;
  readonly fov_deg: number;
  readonly overview: boolean;
}
