import type { StoreApi } from 'zustand/vanilla';
import type { SurfaceId } from '../engine/surface';
import type { AppState } from './state';

/** Where findings are a sheet over the ledge, the drawer needs its place. */
const IS_SHEET = '(max-width: 63.99em)';

/** Opens the drawer of a surface from somewhere else than the ledge. */
export function openDrawer(store: StoreApi<AppState>, surface: SurfaceId): void {
  const isSheet = window.matchMedia(IS_SHEET).matches;
  store.setState((state) => ({
    drawer: surface,
    drawerOpened: state.drawerOpened + 1,
    pointed: [],
    ...(isSheet ? { panel: null } : {}),
  }));
}
