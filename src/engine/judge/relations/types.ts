import type { SurfaceId } from '../../surface';
import type { BalanceVerdict } from '../assessment';

/** What a look is held by. Never a color to match: each says how surfaces stand to one another, or which way one leans. */
export type RelationKind = 'order' | 'step' | 'edge' | 'undertone' | 'echo' | 'opposition' | 'pattern' | 'balance';

/** Size of a difference in lightness: under 5 L* none, from 10 on clear. */
export type Step = 'none' | 'small' | 'clear';
/** How well an edge is seen by the light reflectance of both sides. */
export type EdgeClass = 'weak' | 'fair' | 'clear';
/** A plain white, gray or black; one that leans; a color meant as such. */
export type UndertoneSort = 'plain' | 'tinted' | 'color';
/** How two places echo: nobody tells them apart, they agree as whites, or they share a hue. */
export type EchoKind = 'alike' | 'whites' | 'hue';

type Surfaces = readonly SurfaceId[];

/** The checkable core of a relation. Surfaces of one place (the fronts, the counters) stand together. */
export type Claim =
  /** Each of the first is lighter than the second: no two may change places. */
  | { readonly kind: 'order'; readonly pairs: readonly (readonly [lighter: Surfaces, darker: Surfaces])[] }
  | { readonly kind: 'step'; readonly lighter: Surfaces; readonly darker: Surfaces; readonly step: Step }
  | { readonly kind: 'edge'; readonly one: Surfaces; readonly other: Surfaces; readonly seen: EdgeClass }
  | {
      readonly kind: 'undertone';
      readonly of: Surfaces;
      readonly sort: UndertoneSort;
      /** Of a lean or a color, degrees in CIELAB; null for what is plain. */
      readonly hue_deg: number | null;
      readonly word: string;
    }
  | { readonly kind: 'echo'; readonly one: Surfaces; readonly other: Surfaces; readonly how: EchoKind }
  | { readonly kind: 'opposition'; readonly one: Surfaces; readonly other: Surfaces }
  /** Null: none of the surfaces has a pattern that shows. */
  | { readonly kind: 'pattern'; readonly lead: Surfaces | null }
  | {
      readonly kind: 'balance';
      readonly verdict: BalanceVerdict;
      /** Which surfaces bring the warmth and the cool, largest share of the view first. */
      readonly warm: Surfaces;
      readonly cool: Surfaces;
    };

export interface Relation {
  /** The same relation between the same places has the same id, in every look. */
  readonly id: string;
  readonly kind: RelationKind;
  readonly surfaces: Surfaces;
  /** One plain sentence. */
  readonly text: string;
  /** Said flatly, or with "may". */
  readonly wording: 'firm' | 'may';
  /** Share of plausible errors of the look's colors under which it holds, 0-1. */
  readonly holds_in: number;
  readonly numbers: Readonly<Record<string, number>>;
  readonly claim: Claim;
  /** Ids of the relations that it follows from; empty for one that stands by itself. */
  readonly follows_from: readonly string[];
}

/** A relation that the look seems to have, but that its colors are not known well enough for. */
export interface LeftOut {
  readonly id: string;
  readonly kind: RelationKind;
  readonly surfaces: Surfaces;
  readonly text: string;
  readonly holds_in: number;
}

export interface LookRelations {
  readonly relations: readonly Relation[];
  readonly left_out: readonly LeftOut[];
}

/** By how much a relation is missed, in its own unit and in words. */
export interface Miss {
  readonly value: number;
  readonly unit: string;
  readonly text: string;
}

type RelationStands = 'holds' | 'breaks' | 'cannot-tell';

/** How a relation stands with the colors read in place, in the light of a setting. */
export interface InPlace {
  readonly stands: RelationStands;
  /** Share of plausible errors of the colors there under which it holds, 0-1. */
  readonly holds_in: number;
}

/** What became of a relation in another scheme. */
export interface RelationCheck {
  readonly relation: Relation;
  readonly stands: RelationStands;
  /** What is so here, in one plain sentence. */
  readonly here: string;
  /** Null where it does not break. */
  readonly by: Miss | null;
  /** Share of plausible errors of the colors here under which it holds, 0-1; null where its surfaces are missing. */
  readonly holds_in: number | null;
  /** Of its surfaces those that stay as they are. */
  readonly kept: Surfaces;
}
