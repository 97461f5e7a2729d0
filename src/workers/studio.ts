import type { Assessment } from '../engine/judge/assessment';
import type { SettingBalance } from '../engine/judge/balance-settings';
import type { PairTable } from '../engine/judge/pair-table';
import type { LookRelations } from '../engine/judge/relations/types';
import type { ShortlistRow } from '../engine/judge/shortlist/types';
import type { WhyPoint } from '../engine/judge/shortlist/why';
import type { Vec3 } from '../engine/light/types';
import type { Problem, Result } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { CarriedLook } from '../kitchen/carry/carry-over';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { StandChoice } from '../kitchen/stand/types';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import type { HeldChoice, HeldReading } from '../kitchen/study/held-reading';
import type { Narrowing } from '../kitchen/study/narrowing';
import type { PropPlace } from '../kitchen/study/place-light';
import type { PointReading } from '../kitchen/study/point-reading';
import type { StandReading } from '../kitchen/study/stand-reading';
import type { StandReadings } from '../kitchen/study/stand-samples';
import type { Room } from '../kitchen/types';
import type { Library } from '../model/library';
import type { CopiedLook } from '../model/look';
import type { Shelf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import type { LibraryFacts } from './prepare-library';
import type { CarryAsked, RowsAsked, ShortlistAnswer, ShortlistAsked } from './questions';

export type { PointReading, StandReading };

/** What the page hears from the workers. All calls come in the order of the work. */
export interface StudioEvents {
  room(room: Room): void;
  light(light: RoomLight): void;
  /** `isCurrent`: of what is wanted now; else of a moment ago, with a newer one on its way. */
  look(look: Look, isCurrent: boolean): void;
  /** The sample stand in a look of an option. `isCurrent` as above. */
  stand(seen: SeenStand, isCurrent: boolean): void;
  /** Its light got finer. */
  standLight(light: RoomLight): void;
  /** `isCurrent`: of what is wanted now; else of a moment ago, with newer findings on their way. */
  assessment(assessment: Assessment, isCurrent: boolean): void;
  /** What some finishes of a kept library are by their numbers. */
  facts(library: Library, facts: LibraryFacts): void;
  problem(problem: Problem): void;
}

/** The sample stand, lit, in the look of an option. */
export interface SeenStand {
  readonly room: Room;
  readonly light: RoomLight;
  readonly look: Look;
  /** What its samples read; null in the dark. */
  readonly readings: StandReadings | null;
}

/** What is on screen. */
export interface Shown {
  readonly options: readonly string[];
  readonly setting: string;
  readonly seenBy: SeenBy;
  /** The sample stand as one wants to see it; null: the room. */
  readonly stand: StandChoice | null;
}

/** A point of the room or of the sample stand. */
export interface PlaceAsked {
  readonly option: string;
  readonly rect: number;
  /** On a prop instead, where `rect` is -1. */
  readonly onProp?: PropPlace | null;
  readonly u: number;
  readonly v: number;
  /** Where one looks from, m, for what the surface mirrors there; null where that is not wanted. */
  readonly eye: Vec3 | null;
  readonly onStand: boolean;
}

/** The page's one door to the workers: say what is wanted, hear what is ready; never blocks. */
export interface Studio {
  /** The document and what is on screen; call at every change, the studio finds out what changed. */
  show(project: Project, shown: Shown): void;
  /** Libraries offered beside the document; call when they change, for they are many. */
  keepShelf(shelf: Shelf): void;
  readPoint(place: PlaceAsked): Promise<PointReading | null>;
  /** A white or a finish held there; null where it is dark, or the option is not lit yet. */
  readHeld(place: PlaceAsked, held: HeldChoice): Promise<HeldReading | null>;
  /** The finish on a surface in each light, beside that of another if given; null where the option is not laid yet. */
  readLights(option: string, surface: SurfaceId, beside: SurfaceId | null): Promise<FinishInLights | null>;
  /** A finish of the library as a sample flat on the worktop and upright there; null where it is dark or the option is not lit yet. */
  readStand(option: string, finish: string): Promise<StandReading | null>;
  /** All finishes of an option against each other, by the findings that came last; null before the first. */
  readPairs(option: string): Promise<PairTable | null>;
  /** What a setting makes of the balance of an option; takes a while. Null when something newer came in between: ask again. */
  readBalance(option: string, setting: string): Promise<SettingBalance | null>;
  /** A look (or an option of the project) carried over to an option; null where it is dark or not lit yet. */
  carryLook(asked: CarryAsked): Promise<Result<CarriedLook> | null>;
  /** What relations a look yields; null where one of its colors cannot be. */
  relateLook(look: CopiedLook): Promise<LookRelations | null>;
  /** Every finish for a surface, as samples; with a setting also the best in place there, which takes a while. Null: ask again once more is there. */
  readShortlist(asked: ShortlistAsked): Promise<ShortlistAnswer | null>;
  /** What is said of some finishes of a shortlist. */
  readRows(asked: RowsAsked): Promise<readonly ShortlistRow[] | null>;
  /** All there is to say for and against a finish on a surface; null where it is not in the library. */
  readWhy(option: string, surface: SurfaceId, finish: string): Promise<readonly WhyPoint[] | null>;
  /** What is left of the library for the open surfaces of an option; null before it is lit. */
  readNarrowings(option: string): Promise<readonly Narrowing[] | null>;
  dispose(): void;
}
