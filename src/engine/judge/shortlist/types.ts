import type { LaidFinish } from '../../finish/types';
import type { DecisionState, SurfaceId } from '../../surface';
import type { Basis, WarningCode } from '../assessment';
import type { SampleColor } from '../sample-color';
import type { Wish } from './wish';

/** A finish of the library that may lie on the surface, as a sample. */
export interface Candidate {
  readonly finish: LaidFinish;
  /** In the order of the finish's components. */
  readonly colors: readonly SampleColor[];
  /** Light reflectance value of the area mean, 0-100. */
  readonly lrv: number;
  /** Why it is not made for the surface, as the end of a sentence; null where it is. */
  readonly notMade: string | null;
  /** A paint without the sheen that the surface needs: its color may be right. */
  readonly isTooFlat: boolean;
  readonly priceBand: string | null;
  readonly availability: string | null;
  /** Whether it is quiet from where one stands, or its pattern is seen. */
  readonly pattern: 'quiet' | 'lively';
}

/** A surface that is fixed, decided or ordered: what a choice is held against. */
export interface HeldSurface {
  readonly surface: SurfaceId;
  readonly finish: LaidFinish;
  readonly state: DecisionState;
  readonly colors: readonly SampleColor[];
  readonly lrv: number;
  /** From no place people usually look is it seen with what one chooses for. */
  readonly isApart?: boolean;
}

/** What one chooses for, and how. */
export interface ShortlistPlace {
  /** The surface asked for, then those that are laid alike and change with it. */
  readonly surfaces: readonly SurfaceId[];
  readonly wishes: readonly Wish[];
  /** Users who have to find edges by lightness: contrast then comes before agreement. */
  readonly contrastFirst: boolean;
  /** Ids of finishes that come first where nothing else tells them from others; absent: of all alike. */
  readonly own?: ReadonlySet<string>;
}

/** The steps of the order, one after the other; a later one counts only where all before it are equal. */
export type RankStep = 'clashes' | 'agreement' | 'contrast' | 'wishes' | 'color';

/** `clear`: nothing against it. `compare`: something may be, samples decide. `part`: a vein, a fleck or a fitting clashes. */
export type ShortlistGroup = 'clear' | 'compare' | 'part';

export type RejectionCode =
  | 'not-made-for-it'
  | Extract<WarningCode, 'white-looks-dirty' | 'too-yellow' | 'undertones-pull-apart'>;

/** A wish in words, and whether a finish meets it; null: what is known of the finish does not say. */
export interface WishTold {
  readonly wish: string;
  readonly is_met: boolean | null;
}

export interface AcceptedFinish {
  readonly finish: string;
  readonly label: string;
  /** 1 for the first. */
  readonly rank: number;
  readonly group: ShortlistGroup;
  /** The step that puts it below the one before it (the first: above the one after it). */
  readonly placed_by: RankStep;
  /** In words, step by step: what may clash first, else what it agrees with, or the contrast that places it. */
  readonly reasons: readonly string[];
  /** Wish by wish, in their order; none where none were given. */
  readonly wishes: readonly WishTold[];
  /** Whether it was judged as a sample only, or in its place, too. */
  readonly basis: Basis;
  /** Settings in which it was judged in its place. */
  readonly judged_in: readonly string[];
  /** Of these, the ones in which something showed that its sample did not. */
  readonly failed_in: readonly string[];
  /** Settled surfaces that its reasons speak of. */
  readonly beside: readonly SurfaceId[];
  /** It lies there now. */
  readonly is_laid: boolean;
}

export interface RejectedFinish {
  readonly finish: string;
  readonly label: string;
  readonly code: RejectionCode;
  /** The deciding reason. */
  readonly reason: string;
  readonly basis: Basis;
  readonly failed_in: readonly string[];
  /** Settled surfaces it clashes with; none where it is not made for the place. */
  readonly beside: readonly SurfaceId[];
  readonly is_laid: boolean;
}

/** What is said of a shortlist as a whole. */
export interface ShortlistHead {
  readonly surface: SurfaceId;
  /** With those that change with it. */
  readonly surfaces: readonly SurfaceId[];
  readonly held_against: readonly {
    readonly surface: SurfaceId;
    readonly finish: string;
    readonly label: string;
    readonly state: DecisionState;
  }[];
  /** What it was held against, in one sentence. */
  readonly held_words: string;
  /** The steps of the order as they were taken, in words. */
  readonly order: readonly { readonly step: RankStep; readonly words: string }[];
}

/** Every finish of a library for one surface: accepted in rank order, or rejected with the reason. Plain data. */
export interface Shortlist extends ShortlistHead {
  readonly project: string;
  readonly option: string;
  readonly accepted: readonly AcceptedFinish[];
  readonly rejected: readonly RejectedFinish[];
}

/** Where each finish of a library stands, without what is said of it. */
export interface ShortlistOutline extends ShortlistHead {
  /** In rank order, with the group of each. */
  readonly accepted: readonly string[];
  readonly groups: readonly ShortlistGroup[];
  readonly rejected: readonly string[];
  readonly codes: readonly RejectionCode[];
}

export type ShortlistRow = AcceptedFinish | RejectedFinish;
