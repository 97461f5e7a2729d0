import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import { type Answers, newProject } from '../model/new-project';
import { noticeTold } from '../ui/parts/told';
import { withProject } from './other-project';
import { type AppState, documentOf } from './state';
import { APP_WORDS } from './words';

/**
 * Makes a project of the answers, with the library of the present one as it is kept, and shows it; undo brings the present one back. It is in
 * no file yet, so it counts as unsaved. What is wrong with it where it cannot be made: nothing changes then.
 */
export function startNewProject(store: StoreApi<AppState>, answers: Answers): readonly Problem[] {
  const made = newProject(answers, documentOf(store.getState()), idAt(new Date()));
  if (!made.ok) return [made.problem, ...(made.more ?? [])];
  store.setState((state) => ({
    ...withProject(state, made.value, APP_WORDS.newProject),
    told: noticeTold(made.notices),
  }));
  return [];
}

/** The file takes its name from the id: two kitchens begun one after the other are not to be saved over each other. */
const idAt = (date: Date): string =>
  `kitchen-${date.toISOString().slice(0, 19).replace(/[-:]/g, '').replace('T', '-')}`;
