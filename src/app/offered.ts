import { type Offered, offeredFinishes, type Shelf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import { type AppState, projectOf } from './state';

type Kept = Pick<AppState, 'keptLibraries' | 'putAside'>;
let last: (Kept & { readonly shelf: Shelf }) | null = null;

/** The kept libraries as one object, the same as long as they are. */
export function shelfOf({ keptLibraries, putAside }: Kept): Shelf {
  if (last?.keptLibraries !== keptLibraries || last.putAside !== putAside) {
    last = { keptLibraries, putAside, shelf: { libraries: keptLibraries, putAside } };
  }
  return last.shelf;
}

/** What may be laid: the finishes of the project, those of the change on trial included, and of the libraries beside it. */
export const offeredIn = (state: AppState, project: Project = projectOf(state)): Offered =>
  offeredFinishes(project.library, shelfOf(state));
