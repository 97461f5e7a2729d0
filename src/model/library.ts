import type { Finish } from './project';

/**
 * A range of finishes kept apart from projects: a supplier's, a showroom's, one's own. A project takes in what it lays of it.
 * Ids are unique within a library; in a project a finish may stand under another one (see offered-finishes.ts).
 */
export interface Library {
  readonly type: 'upstand-library';
  readonly version: 1;
  readonly id: string;
  readonly name: string;
  readonly note: string;
  readonly finishes: readonly Finish[];
}
