import type { StoreApi } from 'zustand/vanilla';
import { record, startHistory } from '../../model/history';
import type { Project } from '../../model/project';
import { noticeTold } from '../../ui/parts/told';
import { withProject } from '../other-project';
import { type AppState, isUnsaved } from '../state';
import type { DocumentSource } from './shelf';

/** Shows a document where nothing can be kept: what is on the page and in no file stays one step back. */
export function showUnkept(store: StoreApi<AppState>, project: Project, from: DocumentSource): void {
  store.setState((state) => ({
    ...withProject(state, isUnsaved(state) ? record(state.history, project, from.label) : startHistory(project)),
    saved: from.isInFile ? project : null,
    told: noticeTold(from.notices),
  }));
}
