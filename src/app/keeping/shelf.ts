import type { Problem } from '../../engine/result';
import type { Project } from '../../model/project';
import type { KeptProject } from './database';

/** Where a document comes from. */
export interface DocumentSource {
  /** As the step is called where it becomes one. */
  readonly label: string;
  /** What is to be told of it. */
  readonly notices?: readonly Problem[];
  /** It is in a file of one's own as it is. */
  readonly isInFile?: boolean;
}

/**
 * The projects kept in this browser. What fails is told on the page by the shelf itself: nobody who uses it has to.
 * The open project is kept at every change without being asked to.
 */
export interface ProjectShelf {
  /** All of them, the one changed last first; empty where nothing can be read. */
  readonly list: () => Promise<readonly KeptProject[]>;
  /** Shows a kept project with its history in place of the present one, which stays kept; false where it cannot be read. */
  readonly open: (id: string) => Promise<boolean>;
  /**
   * Shows a document that comes from outside (a file, a link) as a project of its own, with what is to be told of it. Where its id is kept
   * already it goes on as that project if nothing is lost by it, and else as a copy with an id and a name of its own.
   */
  readonly openDocument: (project: Project, from: DocumentSource) => Promise<void>;
  /** Keeps a copy of a project as it is now, without its history, beside it; the id of the copy, or null where it failed. */
  readonly copy: (id: string) => Promise<string | null>;
  /**
   * Removes a project with its history; false where that failed. Where it is the open one, the one changed last before it is opened, or the
   * demo.
   */
  readonly remove: (id: string) => Promise<boolean>;
  /** What was removed while this page is open, the last first. */
  readonly removed: () => readonly KeptProject[];
  /** Puts back what was removed, with its history, and opens it if it was open then; false where the browser refuses: it waits on. */
  readonly bringBack: (id: string) => Promise<boolean>;
  /** Shows the demo: as one has changed it, or as it always opens, which is nobody's own. */
  readonly openDemo: () => Promise<void>;
  /** Called whenever the list may have changed, here or in another tab; returns how to stop. */
  readonly onChange: (listener: () => void) => () => void;
}
