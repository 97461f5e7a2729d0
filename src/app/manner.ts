import type { StoreApi } from 'zustand/vanilla';
import { finishNames, givenNames } from '../model/given-names';
import type { Region } from '../model/kitchen';
import type { Project } from '../model/project';
import type { TradeWords } from '../model/trade-words';
import { keepNames, localeNow, setManner } from '../ui/words/spoken';
import { type AppState, lengthUnitOf, projectOf } from './state';

/** Words by the language of the browser; other languages go by the kitchen's region. */
export function usualWords(language: string, region: Region): TradeWords {
  const tag = language.toLowerCase();
  if (/^en(?:$|-us\b)/.test(tag)) return 'us';
  return tag.startsWith('en-') || region !== 'us' ? 'uk' : 'us';
}

/** The trade words of the page: those chosen, else the usual ones. */
export const wordsOf = (state: AppState): TradeWords =>
  state.words ?? usualWords(globalThis.navigator?.language ?? 'en-US', projectOf(state).kitchen.region);

/** What all that is read depends on; changes with it. */
export const mannerOf = (state: AppState): string => `${wordsOf(state)} ${lengthUnitOf(state)}`;

/** Makes the page speak as is chosen, from the start and before anything is drawn anew. */
export function followManner(store: StoreApi<AppState>): void {
  const speak = (state: AppState) => {
    setManner({ words: wordsOf(state), unit: lengthUnitOf(state) });
    document.documentElement.lang = localeNow();
  };
  let told = store.getState();
  speak(told);
  keepProjectNames(projectOf(told), null);
  store.subscribe((state, before) => {
    if (mannerOf(state) !== mannerOf(told)) speak(state);
    told = state;
    const project = projectOf(state);
    if (project !== projectOf(before)) keepProjectNames(project, projectOf(before));
  });
}

/** Names people and suppliers gave stay as they are in whatever the page says. */
function keepProjectNames(project: Project, before: Project | null): void {
  if (project.library !== before?.library) keepNames('finishes', finishNames(project.library));
  keepNames('project', givenNames(project));
}
