import type { Finish } from './project';

/** Version 2 brought prices and thicknesses of finishes. */
export const LIBRARY_VERSION = 2;

/**
 * A range of finishes kept apart from projects: a supplier's, a showroom's, one's own. A project takes in what it lays of it.
 * Ids are unique within a library; in a project a finish may stand under another one (see offered-finishes.ts).
 */
export interface Library {
  readonly type: 'upstand-library';
  readonly version: typeof LIBRARY_VERSION;
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly finishes: readonly Finish[];
}

/** A library as this version has it. */
export const newLibrary = (fields: Omit<Library, 'type' | 'version'>): Library => ({
  type: 'upstand-library',
  version: LIBRARY_VERSION,
  ...fields,
});

/** A library that may have been kept by an older version, which lacked fields that are optional. */
export const libraryOfNow = (kept: Omit<Library, 'version'>): Library => ({ ...kept, version: LIBRARY_VERSION });
