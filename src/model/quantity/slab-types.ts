import type { SlabMatch } from '../../engine/pattern/types';

/** Where a seam is better not set although nothing is cut out: over a dishwasher, behind a cooktop; mm along the piece. */
export interface Avoided {
  readonly what: 'dishwasher' | 'cooktop';
  readonly span_mm: readonly [from: number, to: number];
}

/** A piece to cut from slabs, mm; its length lies along the slab's where veins or grain run along it. */
export interface SlabPiece {
  readonly id: string;
  /** What it is called in a sentence; its id where absent. */
  readonly name?: string;
  readonly length_mm: number;
  readonly width_mm: number;
  /** Places along the length that a seam keeps clear of (sink, cooktop). */
  readonly cutouts_mm: readonly (readonly [from: number, to: number])[];
  readonly avoid?: readonly Avoided[];
  /** The line (a wall) it runs along and where its low end is on it: pieces along one line meet there. */
  readonly along?: { readonly line: string; readonly from_mm: number };
  /**
   * Its seams go where those of the pieces before it on its line are. `pieces`: it may have more of them, as an upstand that is cut from what is
   * left of slabs.
   */
  readonly follows?: 'seams' | 'pieces';
  /** Lines that pieces cut from other slabs leave on it, mm along it. */
  readonly lines_mm?: readonly number[];
}

/** Stone and the like comes in slabs, wood in panels. */
export type SlabNoun = 'slab' | 'panel';

/** How slabs are cut. */
export interface SlabRules {
  readonly slab_mm: readonly [length: number, width: number];
  /** Not used, all round. */
  readonly trim_mm: number;
  readonly kerf_mm: number;
  readonly shortest_part_mm: number;
  /** How far seams keep from cut-outs and from the ends of a cooktop. */
  readonly seam_clear_mm: number;
  /** May a piece lie across the slab? Not where veins or grain would turn. */
  readonly may_turn: boolean;
  /** How slabs follow each other where a piece goes on in the next; null: it does not matter. */
  readonly match: SlabMatch | null;
  /** Are seams matched so even where that takes more slabs? */
  readonly always_match?: boolean;
  /** What they are called; slabs where absent. */
  readonly noun?: SlabNoun;
}

/** A piece, or a part of it between seams, on its slab: mm from the slab's lower left corner, trim included. */
export interface PlacedPart {
  readonly piece: string;
  /** Place along the piece, mm. */
  readonly from_mm: number;
  readonly to_mm: number;
  readonly x_mm: number;
  readonly y_mm: number;
  /** Of the part itself: along the slab, or where it is turned across it. */
  readonly length_mm: number;
  readonly width_mm: number;
  /** Its length lies across the slab. */
  readonly turned: boolean;
}

/** One slab with what is cut from it. */
export interface CutSlab {
  readonly parts: readonly PlacedPart[];
  /** Its face is mirrored against the one before: opened like a book. */
  readonly mirrored: boolean;
}

/** A seam that the slab's size makes, mm along its piece. */
export interface Seam {
  readonly piece: string;
  readonly at_mm: number;
}

/** Whether seams match as they should, and what that takes. */
export interface Matching {
  readonly match: SlabMatch;
  readonly isKept: boolean;
  /** Slabs with seams that match; null where no such layout was found. */
  readonly slabs: number | null;
  /** Slabs where it does not matter. */
  readonly fewest: number;
}

/** Slabs as they are cut. */
export interface SlabLayout {
  readonly slabs: readonly CutSlab[];
  readonly seams: readonly Seam[];
  /** How what goes on over seams matches there; null where nothing does, or where it does not matter. */
  readonly matching: Matching | null;
  /** Area of all pieces by area of all whole slabs, 0-1. */
  readonly yield: number;
  /** What area alone would ask for: never more than the slabs. */
  readonly lower_bound: number;
}
