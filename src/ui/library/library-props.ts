import type { RefObject } from 'react';
import type { Problem } from '../../engine/result';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import type { SwatchPaint } from '../swatch/swatch-paint';

/** Stands for the finishes of the project among the libraries; no kept library has it. */
export const PROJECT_LIBRARY = 'this-project';

export type LibraryFormat = 'json' | 'csv' | 'csv-for-spreadsheets';

export interface SavedFile {
  readonly file: string;
  readonly lost: readonly string[];
}

/** What became of a change: what was to be changed may be another by now, and stays as it is. */
export type Changed = 'kept' | 'is-another' | 'failed';

/** A step of the project; `undo` takes it back, false where the project went on since. Or what is wrong, and nothing was changed. */
export type ProjectStep = { readonly undo: () => boolean } | { readonly problem: Problem };

/** A change of libraries, and what takes it back. */
export interface LibraryStep {
  readonly label: string;
  /** Name of the library that it removed. */
  readonly removed?: string;
  readonly undo: () => Promise<Changed>;
}

export type PaintOf = (finish: Finish) => SwatchPaint;

/** What the dialog is given to work with. */
export interface LibraryDoors {
  /** Null while they are looked up. */
  readonly libraries: readonly Library[] | null;
  /** The finishes of the project as if they were a library. */
  readonly project: Library;
  /** Keeps a library in the place of what is kept of it: `instead`, or nothing for null. */
  readonly onPut: (library: Library, instead: Library | null) => Promise<Changed>;
  readonly onRemove: (library: Library) => Promise<Changed>;
  /** Makes these the finishes of the project, as one step called `label`. */
  readonly onProject: (finishes: readonly Finish[], label: string) => ProjectStep;
  /** The changes made since the page was opened, the oldest first: they outlive the dialog. */
  readonly steps: readonly LibraryStep[];
  readonly onSteps: (change: (before: readonly LibraryStep[]) => readonly LibraryStep[]) => void;
  readonly newId: () => string;
  readonly paintOf: PaintOf;
  /** Hands a library over as a file; the file's name, and what it cannot hold. */
  readonly onSave: (library: Library, format: LibraryFormat) => Promise<SavedFile>;
}

/** What an import of a file is given by the dialog it stands in. */
export interface ImportPlace {
  readonly libraries: readonly Library[];
  /** The one on screen, where finishes can be kept. */
  readonly into: Library | null;
  /** Keeps finishes: in a new library where there is none of its id. True where it was done. */
  readonly onKeep: (library: Library, added: number) => Promise<boolean>;
  readonly held: Held;
  /** Back to the libraries; the id to show. */
  readonly onDone: (show?: string) => void;
}

/** What would be lost by leaving, if anything: asks, and acts once it may. */
export type Held = RefObject<((act: () => void) => void) | null>;
