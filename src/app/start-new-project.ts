import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import { type Answers, newProject } from '../model/new-project';
import { withProject } from './other-project';
import { type AppState, projectOf } from './state';
import { APP_WORDS } from './words';

/**
 * Makes a project of the answers, with the library of the present one, and shows it; undo brings the present one back. It is in
 * no file yet, so it counts as unsaved. What is wrong with it where it cannot be made: nothing changes then.
 */
export function startNewProject(store: StoreApi<AppState>, answers: Answers): readonly Problem[] {
  const made = newProject(answers, projectOf(store.getState()));
  if (!made.ok) return [made.problem, ...(made.more ?? [])];
  store.setState((state) => withProject(state, made.value, APP_WORDS.newProject));
  return [];
}
