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

export type PaintOf = (finish: Finish) => SwatchPaint;

/** What the dialog is given to work with. */
export interface LibraryDoors {
  /** Null while they are looked up. */
  readonly libraries: readonly Library[] | null;
  /** The finishes of the project as if they were a library. */
  readonly project: Library;
  /** False: it could not be kept. */
  readonly onPut: (library: Library) => Promise<boolean>;
  /** What brings it back; null where it could not be removed. */
  readonly onRemove: (id: string) => Promise<(() => Promise<boolean>) | null>;
  /** Makes these the finishes of the project, as one step called `label`; what is wrong with that, and nothing was changed then. */
  readonly onProject: (finishes: readonly Finish[], label: string) => Problem | null;
  readonly onUndoProject: () => void;
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
