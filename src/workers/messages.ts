import type { Assessment } from '../engine/judge/assessment';
import type { JudgeInput } from '../engine/judge/input';
import type { PairTable } from '../engine/judge/pair-table';
import type { PatternSpec, PatternTexture } from '../engine/pattern/types';
import type { Problem } from '../engine/result';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { StandChoice } from '../kitchen/stand/types';
import type { StandReadings } from '../kitchen/study/stand-samples';
import type { Room } from '../kitchen/types';
import type { Shelf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import type { CarriedFinishes } from './carry-finishes';
import type { CarriedShelf } from './carry-shelf';
import type { LibraryFacts } from './prepare-library';
import type { Answer, Question } from './questions';

/** The page to the light worker: everything shown, in full; the worker finds out what changed. */
export interface Show {
  readonly kind: 'show';
  /** Counts requests; what is answered says which request it answers. */
  readonly revision: number;
  readonly project: Project;
  /** The first is on screen now; the others may be asked for next. */
  readonly options: readonly string[];
  readonly setting: string;
  readonly seenBy: SeenBy;
  /** The sample stand, where that is on screen; null: the room. */
  readonly stand: StandChoice | null;
}

/** Only whose sight the picture shows has changed: it is painted anew from the light there is. */
export interface SeeBy {
  readonly kind: 'see-by';
  readonly seenBy: SeenBy;
}

/** Libraries kept beside the project; sent once, and again when one of them changed. */
export interface KeepShelf {
  readonly kind: 'shelf';
  /** Counts them: what is told of finishes is of those of this one. */
  readonly number: number;
  readonly shelf: Shelf;
}

export type ToLight = Show | SeeBy | KeepShelf | Question;

/** As it is sent: a large library crosses over once. */
export type ToLightWorker =
  | Exclude<ToLight, Show | KeepShelf>
  | (Omit<KeepShelf, 'shelf'> & { readonly shelf: CarriedShelf })
  | (Omit<Show, 'project'> & { readonly project: Omit<Project, 'library'>; readonly library: CarriedFinishes });

/** A pattern to bake, shared by all surfaces with the same key. */
export interface ToPattern {
  readonly key: string;
  readonly spec: PatternSpec;
}

export type FromLight =
  | { readonly kind: 'patterns'; readonly patterns: readonly ToPattern[] }
  | { readonly kind: 'room'; readonly room: Room }
  | { readonly kind: 'light'; readonly light: RoomLight }
  | {
      readonly kind: 'look';
      readonly revision: number;
      readonly look: Omit<Look, 'patterns'>;
      readonly patterns: readonly ToPattern[];
      /** Of the sample stand, with what its samples read (null in the dark); absent: of the room. */
      readonly stand?: { readonly readings: StandReadings | null };
    }
  | { readonly kind: 'stand-room'; readonly room: Room }
  | { readonly kind: 'stand-light'; readonly light: RoomLight }
  | { readonly kind: 'readings'; readonly revision: number; readonly input: JudgeInput; readonly complete: boolean }
  /** The assessment of complete readings once more, done: with what would help. */
  | { readonly kind: 'repairs'; readonly revision: number; readonly assessment: Assessment }
  /** What finishes of a library are, bit by bit once all else is done. */
  | ({ readonly kind: 'facts'; readonly shelf: number } & LibraryFacts)
  | Answer
  | { readonly kind: 'problem'; readonly problem: Problem };

/** Readings to be judged. */
export interface JudgeReadings {
  readonly kind: 'readings';
  readonly revision: number;
  readonly input: JudgeInput;
  /** Complete readings are also tried against plausible errors of the colors, and curves that they may have. */
  readonly complete: boolean;
}

/** All finishes of an option against each other, by what was judged last. */
export interface AskPairs {
  readonly kind: 'pairs';
  readonly ticket: number;
  readonly option: string;
}

export type ToJudge = JudgeReadings | AskPairs;

export type FromJudge =
  | { readonly kind: 'assessment'; readonly revision: number; readonly assessment: Assessment }
  | { readonly kind: 'pairs'; readonly ticket: number; readonly table: PairTable | null }
  | { readonly kind: 'problem'; readonly problem: Problem };

export interface FromPattern {
  readonly key: string;
  /** Null when it could not be baked. */
  readonly texture: PatternTexture | null;
}

/** How a worker's inner part speaks to the page. */
export type Post = (message: FromLight, transfer?: Transferable[]) => void;
