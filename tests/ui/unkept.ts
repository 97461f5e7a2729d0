import type { StoreApi } from 'zustand/vanilla';
import type { ProjectShelf } from '../../src/app/keeping/shelf';
import { showUnkept } from '../../src/app/keeping/show-unkept';
import type { AppState } from '../../src/app/state';

/** How documents come in where the browser keeps nothing. */
export const unkept = (store: StoreApi<AppState>): Pick<ProjectShelf, 'openDocument'> => ({
  openDocument: async (project, from) => showUnkept(store, project, from),
});
