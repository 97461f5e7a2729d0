/** Tile-to-tile or board-to-board variation class (ANSI A137.1 aesthetic classes). */
export type Variation = 'V0' | 'V1' | 'V2' | 'V3' | 'V4';

/** The pattern a finish carries in itself; lengths are real, in mm. */
export type FinishPattern =
  | { readonly kind: 'plain' }
  | { readonly kind: 'veined'; readonly spacing_mm: number; readonly direction_deg: number }
  /** Stone in fine parallel layers, each `size_mm` thick or so. */
  | { readonly kind: 'linear'; readonly size_mm: number; readonly direction_deg: number }
  | { readonly kind: 'fleck'; readonly size_mm: number }
  | {
      readonly kind: 'grain';
      readonly board_mm?: readonly [width: number, length: number];
      /**
       * `rings` (default): arched and straight growth-ring figure; `pores`: the same with the open pores of oak and ash;
       * `ray-fleck`: short dark spindles, as in beech.
       */
      readonly figure?: GrainFigure;
    }
  | { readonly kind: 'cleft'; readonly size_mm: number }
  | {
      readonly kind: 'cloud';
      readonly size_mm: number;
      /** Where the second colour gathers: along the edges of each piece (glaze), or anywhere (concrete, fired clay). */
      readonly gathers?: 'edges' | 'anywhere';
    }
  | { readonly kind: 'thread'; readonly size_mm: number }
  /** Metal with faint streaks along s. */
  | { readonly kind: 'brushed' };

export type GrainFigure = 'rings' | 'pores' | 'ray-fleck';

/** How pieces are laid. `plain`: one continuous sheet or slab. */
export const LAYOUTS = [
  'plain',
  'planks',
  'stack',
  'stack-upright',
  'running-bond',
  'third-offset',
  'herringbone',
  'hexagon',
] as const;

export type Layout = (typeof LAYOUTS)[number];

/** How a pattern is turned against the directions of its surface, degrees counter-clockwise. */
export type Turn = 0 | 45 | 90;

/** How a slab goes on beyond its end: mirrored as the next leaf of an opened book, or from its beginning. */
export type SlabMatch = 'bookmatch' | 'slip';

/**
 * A pattern ready to bake: the finish's own pattern within pieces of a layout.
 * `shares` are the area shares of the components in channel order, the joint (if any) last; they sum to 1.
 */
export interface PatternSpec {
  readonly pattern: FinishPattern;
  readonly layout: Layout;
  readonly piece_mm?: readonly [width: number, length: number];
  readonly joint_mm?: number;
  readonly variation: Variation;
  readonly shares: readonly number[];
  readonly seed: number;
  readonly turn_deg?: Turn;
  /** One slab of the material, where it comes in slabs: the pattern is the whole slab and has seams at its ends. */
  readonly slab?: { readonly size_mm: readonly [length: number, width: number]; readonly match: SlabMatch };
}

/**
 * How the pieces of a texture are laid out over a field. The texture holds `columns` x `rows` different pieces; each piece of
 * the field shows one of them, chosen by a hash of its place, so that a field never repeats. In m.
 */
export interface PieceField {
  readonly kind: 'rows' | 'herringbone' | 'hexagon';
  readonly columns: number;
  readonly rows: number;
  /** A piece and one joint: along s and t; of a hexagon flat to flat, and from row to row. */
  readonly module_m: readonly [number, number];
  /** Shift of row j along s in parts of a module, for j modulo the length; [0] for what has no rows. */
  readonly offsets: readonly number[];
  /** 32 bits. */
  readonly seed: number;
}

/**
 * A baked pattern of width_m x height_m (s to the right, t up, row 0 at t = 0).
 * RGBA bytes: R, G, B = weight of components 1, 2, 3 (component 0 is the rest); A = lightness gain / 2, so 128 is gain 1.
 */
export interface PatternTexture {
  readonly width: number;
  readonly height: number;
  readonly width_m: number;
  readonly height_m: number;
  readonly data: Uint8Array;
  /** Smaller levels for greater distances, each half the size of the one before; absent: still to be made (`mipLevels`). */
  readonly mips?: readonly Uint8Array[];
  /** How it goes on beyond its edges; absent: it repeats. */
  readonly wrap?: 'repeat' | 'mirror';
  /** Absent: not turned. */
  readonly turn_deg?: Turn;
  /** Absent: one sheet. */
  readonly pieces?: PieceField;
}
