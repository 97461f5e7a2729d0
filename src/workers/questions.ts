import type { SettingBalance } from '../engine/judge/balance-settings';
import type { LookRelations } from '../engine/judge/relations/types';
import type { ShortlistOutline, ShortlistRow } from '../engine/judge/shortlist/types';
import type { WhyPoint } from '../engine/judge/shortlist/why';
import type { Wish } from '../engine/judge/shortlist/wish';
import type { Vec3 } from '../engine/light/types';
import type { PatternSample } from '../engine/pattern/sample';
import type { Result } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { CarriedLook } from '../kitchen/carry/carry-over';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import type { HeldChoice, HeldReading } from '../kitchen/study/held-reading';
import type { Narrowing } from '../kitchen/study/narrowing';
import type { PropPlace } from '../kitchen/study/place-light';
import type { PointReading } from '../kitchen/study/point-reading';
import type { StandReading } from '../kitchen/study/stand-reading';
import type { CopiedLook } from '../model/look';

/**
 * What the page may ask the light worker: what the question says, and what answers it. Any of them is answered with null when it
 * cannot be told: in the dark, or of an option that is not lit yet. A question has its answer in `answers.ts`.
 */
export interface Questions {
  /** What is left of the library for the open surfaces of an option. */
  readonly 'read-narrowings': { readonly asks: NarrowingsAsked; readonly gets: readonly Narrowing[] };
  /** What a setting makes of the balance of an option. */
  readonly 'read-balance': { readonly asks: BalanceAsked; readonly gets: SettingBalance };
  /** Everything of the library for a surface as samples; in place as far as that is known, or where a setting is named, in that, too. */
  readonly 'read-shortlist': { readonly asks: ShortlistAsked; readonly gets: ShortlistAnswer };
  /** What is said of some finishes of a shortlist. */
  readonly 'read-rows': { readonly asks: RowsAsked; readonly gets: readonly ShortlistRow[] };
  /** All there is to say for and against one finish on a surface. */
  readonly 'read-why': { readonly asks: WhyAsked; readonly gets: readonly WhyPoint[] };
  /** Color and light of a point. */
  readonly 'read-point': { readonly asks: PointAsked; readonly gets: PointReading };
  /** A white or a finish held against a place, in its light. */
  readonly 'read-held': { readonly asks: HeldAsked; readonly gets: HeldReading };
  /** What each light of the project makes of the finish on a surface, alone or beside that of another. */
  readonly 'read-lights': { readonly asks: LightsAsked; readonly gets: FinishInLights };
  /** A finish of the library as a sample flat on the worktop and upright there, in the light of an option. */
  readonly 'read-stand': { readonly asks: StandAsked; readonly gets: StandReading };
  /** A look carried over to an option, or held against it as it stands; or why that cannot be. */
  readonly 'carry-look': { readonly asks: CarryAsked; readonly gets: Result<CarriedLook> };
  /** What relations a look yields. */
  readonly 'relate-look': { readonly asks: { readonly look: CopiedLook }; readonly gets: LookRelations };
}

export type QuestionKind = keyof Questions;

/** A question as it is sent; its answer bears its ticket. */
export type Question = {
  readonly [K in QuestionKind]: { readonly kind: K; readonly ticket: number } & Questions[K]['asks'];
}[QuestionKind];

export type Answer = {
  readonly [K in QuestionKind]: {
    readonly kind: 'answer';
    readonly to: K;
    readonly ticket: number;
    readonly answer: Questions[K]['gets'] | null;
  };
}[QuestionKind];

export interface PointAsked {
  readonly option: string;
  readonly rect: number;
  /** On a prop instead, where `rect` is -1. */
  readonly onProp?: PropPlace | null;
  readonly u: number;
  readonly v: number;
  /** Where one looks from, for what the surface mirrors; null: nothing is said of that. */
  readonly eye: Vec3 | null;
  /** What the pattern has there; null where the surface has none. */
  readonly place: PatternSample | null;
  /** A point of the sample stand instead of the room. */
  readonly onStand: boolean;
}

export interface HeldAsked {
  readonly option: string;
  readonly rect: number;
  readonly u: number;
  readonly v: number;
  readonly place: PatternSample | null;
  readonly onStand: boolean;
  readonly held: HeldChoice;
}

export interface LightsAsked {
  readonly option: string;
  readonly surface: SurfaceId;
  readonly beside: SurfaceId | null;
}

export interface NarrowingsAsked {
  readonly option: string;
}

export interface BalanceAsked {
  readonly option: string;
  readonly setting: string;
}

export interface StandAsked {
  readonly option: string;
  readonly finish: string;
}

export interface CarryAsked {
  readonly option: string;
  /** A look of its own, or the id of an option of the project. */
  readonly look: CopiedLook | string;
  readonly asIs: boolean;
}

export interface ShortlistAsked {
  readonly option: string;
  readonly surface: SurfaceId;
  /** A setting in which the best are to be judged in their place; null: samples are enough. */
  readonly setting: string | null;
  /** What somebody would like, the most wanted first. */
  readonly wishes: readonly Wish[];
  /** The list one has already. */
  readonly known: number | null;
  /** All of it, also where that takes a while; else what is there at once, the project's own at least. */
  readonly isWhole: boolean;
}

/** A shortlist, with what is said of the first of it. */
export interface ShortlistAnswer {
  /** Another number: something of the order, or of what is said, is another. */
  readonly list: number;
  /** Null: the list one has already. */
  readonly outline: ShortlistOutline | null;
  /** How many finishes are not held against anything yet. */
  readonly pending: number;
  readonly rows: readonly ShortlistRow[];
}

export interface RowsAsked extends Omit<ShortlistAsked, 'setting' | 'isWhole'> {
  readonly finishes: readonly string[];
}

export interface WhyAsked {
  readonly option: string;
  readonly surface: SurfaceId;
  readonly finish: string;
}
