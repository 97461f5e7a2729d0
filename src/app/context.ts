import { createContext, use } from 'react';
import { useStore } from 'zustand';
import type { StoreApi } from 'zustand/vanilla';
import type { Project } from '../model/project';
import type { SamplePaints } from '../ui/swatch/sample-paints';
import type { Studio } from '../workers/studio';
import type { Actions } from './actions';
import type { OpenDatabase } from './keeping/database';
import type { KeepingActions } from './keeping/keep';
import type { LibraryShelf } from './keeping/library-shelf';
import type { ProjectShelf } from './keeping/shelf';
import type { AppState } from './state';

/** What the panes work with; made once at start. */
export interface App {
  readonly store: StoreApi<AppState>;
  readonly actions: Actions;
  readonly paints: SamplePaints;
  /** The project of a first visit. */
  readonly demo: Project;
  /** What is kept in this browser. */
  readonly projects: ProjectShelf;
  readonly libraries: LibraryShelf;
  readonly openStore: OpenDatabase;
  readonly keeping: KeepingActions;
  readonly readLights: Studio['readLights'];
  readonly readStand: Studio['readStand'];
  readonly readBalance: Studio['readBalance'];
  readonly readNarrowings: Studio['readNarrowings'];
  readonly readPairs: Studio['readPairs'];
  readonly carryLook: Studio['carryLook'];
  readonly relateLook: Studio['relateLook'];
  readonly readShortlist: Studio['readShortlist'];
  readonly readRows: Studio['readRows'];
  readonly readWhy: Studio['readWhy'];
}

export const AppContext = createContext<App | null>(null);

export function useApp(): App {
  const app = use(AppContext);
  if (!app) throw new Error('a pane was rendered outside the app');
  return app;
}

/** A part of the state; renders again when that part changes. */
export const useAppState = <T>(select: (state: AppState) => T): T => useStore(useApp().store, select);
