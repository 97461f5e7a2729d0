import type { StoreApi } from 'zustand/vanilla';
import { noticeTold } from '../../ui/parts/told';
import { withProject } from '../other-project';
import type { AppState } from '../state';
import type { OpenDatabase } from './database';
import type { News } from './news';
import type { ProjectShelf } from './shelf';

/** The shelf over the browser's store; `fail` tells what went wrong. */
export function createProjectShelf(
  store: StoreApi<AppState>,
  open: OpenDatabase,
  news: News,
  fail: (error: unknown) => void,
): ProjectShelf {
  return {
    list: async () => {
      try {
        const all = await (await open()).getAll('projects');
        return all.sort((a, b) => b.changed - a.changed);
      } catch (error) {
        fail(error);
        return [];
      }
    },
    open: async () => false,
    openDocument: async (project, { label, notices }) =>
      store.setState((state) => ({ ...withProject(state, project, label), told: noticeTold(notices) })),
    copy: async () => null,
    remove: async () => null,
    onChange: (listener) => news.listen('projects', listener),
  };
}
