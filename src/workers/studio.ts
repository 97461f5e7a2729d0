import type { Assessment } from '../engine/judge/assessment';
import type { Problem } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import type { PointReading } from '../kitchen/study/point-reading';
import type { Room } from '../kitchen/types';
import type { Project } from '../model/project';

export type { PointReading };

/** What the page hears from the workers. All calls come in the order of the work. */
export interface StudioEvents {
  room(room: Room): void;
  light(light: RoomLight): void;
  look(look: Look): void;
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
  readPoint(option: string, rect: number, u: number, v: number): Promise<PointReading | null>;
  /** The finish on a surface in each light, beside that of another if given; null where the option is not laid yet. */
  readLights(option: string, surface: SurfaceId, beside: SurfaceId | null): Promise<FinishInLights | null>;
  dispose(): void;
}
