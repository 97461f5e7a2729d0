import type { Assessment } from '../engine/judge/assessment';
import type { JudgeInput } from '../engine/judge/input';
import type { Vec3 } from '../engine/light/types';
import type { PatternSample } from '../engine/pattern/sample';
import type { PatternSpec, PatternTexture } from '../engine/pattern/types';
import type { Problem } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { StandChoice } from '../kitchen/stand/types';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import type { HeldChoice, HeldReading } from '../kitchen/study/held-reading';
import type { PropPlace } from '../kitchen/study/place-light';
import type { PointReading } from '../kitchen/study/point-reading';
import type { StandReading } from '../kitchen/study/stand-reading';
import type { StandReadings } from '../kitchen/study/stand-samples';
import type { Room } from '../kitchen/types';
import type { Project } from '../model/project';

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

export interface ReadPoint {
  readonly kind: 'read-point';
  readonly ticket: number;
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

/** What each light of the project makes of the finish on a surface, alone or beside that of another. */
export interface ReadLights {
  readonly kind: 'read-lights';
  readonly ticket: number;
  readonly option: string;
  readonly surface: SurfaceId;
  readonly beside: SurfaceId | null;
}

/** A finish of the library as a sample flat on the worktop and upright there, in the light of an option. */
export interface ReadStand {
  readonly kind: 'read-stand';
  readonly ticket: number;
  readonly option: string;
  readonly finish: string;
}

/** A white or a finish held against a place, in its light. */
export interface ReadHeld {
  readonly kind: 'read-held';
  readonly ticket: number;
  readonly option: string;
  readonly rect: number;
  readonly u: number;
  readonly v: number;
  readonly place: PatternSample | null;
  readonly onStand: boolean;
  readonly held: HeldChoice;
}

export type ToLight = Show | SeeBy | ReadPoint | ReadLights | ReadStand | ReadHeld;

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
  | { readonly kind: 'point'; readonly ticket: number; readonly reading: PointReading | null }
  | { readonly kind: 'lights'; readonly ticket: number; readonly found: FinishInLights | null }
  | { readonly kind: 'stand'; readonly ticket: number; readonly reading: StandReading | null }
  | { readonly kind: 'held'; readonly ticket: number; readonly reading: HeldReading | null }
  | { readonly kind: 'problem'; readonly problem: Problem };

export interface ToJudge {
  readonly revision: number;
  readonly input: JudgeInput;
  /** Complete readings are also tried against plausible errors of the colors, and curves that they may have. */
  readonly complete: boolean;
}

export type FromJudge =
  | { readonly kind: 'assessment'; readonly revision: number; readonly assessment: Assessment }
  | { readonly kind: 'problem'; readonly problem: Problem };

export interface FromPattern {
  readonly key: string;
  /** Null when it could not be baked. */
  readonly texture: PatternTexture | null;
}

/** How a worker's inner part speaks to the page. */
export type Post = (message: FromLight, transfer?: Transferable[]) => void;
