import type { Assessment } from '../engine/judge/assessment';
import type { Vec3 } from '../engine/light/types';
import type { Problem } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import type { PointReading } from '../kitchen/study/point-reading';
import type { StandReading } from '../kitchen/study/stand-reading';
import type { Room } from '../kitchen/types';
import type { Project } from '../model/project';

export type { PointReading, StandReading };

/** What the page hears from the workers. All calls come in the order of the work. */
export interface StudioEvents {
  room(room: Room): void;
  light(light: RoomLight): void;
  /** `isCurrent`: of what is wanted now; else of a moment ago, with a newer one on its way. */
  look(look: Look, isCurrent: boolean): void;
  /** `isCurrent`: of what is wanted now; else of a moment ago, with newer findings on their way. */
  assessment(assessment: Assessment, isCurrent: boolean): void;
  problem(problem: Problem): void;
}

/** What is on screen. */
export interface Shown {
  readonly options: readonly string[];
  readonly setting: string;
  readonly seenBy: SeenBy;
}

/** The page's one door to the workers: say what is wanted, hear what is ready; never blocks. */
export interface Studio {
  /** The document and what is on screen; call at every change, the studio finds out what changed. */
  show(project: Project, shown: Shown): void;
  /** `eye`: where one looks from, m, for what the surface mirrors there; null where that is not wanted. */
  readPoint(option: string, rect: number, u: number, v: number, eye: Vec3 | null): Promise<PointReading | null>;
  /** The finish on a surface in each light, beside that of another if given; null where the option is not laid yet. */
  readLights(option: string, surface: SurfaceId, beside: SurfaceId | null): Promise<FinishInLights | null>;
  /** A finish of the library as a sample flat on the worktop and upright there; null where it is dark or the option is not lit yet. */
  readStand(option: string, finish: string): Promise<StandReading | null>;
  dispose(): void;
}
