/** Tile-to-tile or board-to-board variation class (ANSI A137.1 aesthetic classes). */
export type Variation = 'V0' | 'V1' | 'V2' | 'V3' | 'V4';

/** The pattern a finish carries in itself; lengths are real, in mm. */
export type FinishPattern =
  | { readonly kind: 'plain' }
  | { readonly kind: 'veined'; readonly spacing_mm: number; readonly direction_deg: number }
  | { readonly kind: 'fleck'; readonly size_mm: number }
  | {
      readonly kind: 'grain';
      readonly board_mm?: readonly [width: number, length: number];
      /** `rings` (default): arched and straight growth-ring figure; `ray-fleck`: short dark spindles, as in beech. */
      readonly figure?: 'rings' | 'ray-fleck';
    }
  | { readonly kind: 'cleft'; readonly size_mm: number }
  | {
      readonly kind: 'cloud';
      readonly size_mm: number;
      /** Where the second colour gathers: along the edges of each piece (glaze), or anywhere (concrete, fired clay). */
      readonly gathers?: 'edges' | 'anywhere';
    }
  | { readonly kind: 'thread'; readonly size_mm: number };

/** How pieces are laid. `plain`: one continuous sheet or slab. */
export type Layout = 'plain' | 'planks' | 'stack' | 'running-bond';

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
  /** Turned a quarter: what runs along s runs along t. */
  readonly turned?: boolean;
}

/**
 * A baked pattern, repeating over width_m x height_m (s to the right, t up, row 0 at t = 0).
 * RGBA bytes: R, G, B = weight of components 1, 2, 3 (component 0 is the rest); A = lightness gain / 2, so 128 is gain 1.
 */
export interface PatternTexture {
  readonly width: number;
  readonly height: number;
  readonly width_m: number;
  readonly height_m: number;
  readonly data: Uint8Array;
}
