import type { StoreApi } from 'zustand/vanilla';
import { finishNames, givenNames } from '../model/given-names';
import type { Region } from '../model/kitchen';
import type { Library } from '../model/library';
import type { Project } from '../model/project';
import type { TradeWords } from '../model/trade-words';
import { isBuiltIn, knowBuiltIn } from '../ui/words/built-in';
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

/** Whether UK words were chosen, or are those of the browser's own language: not those of people who read no English at home. */
export const readsUk = ({ words }: Pick<AppState, 'words'>): boolean =>
  words === null ? /^en-gb\b/i.test(globalThis.navigator?.language ?? '') : words === 'uk';

/** What all that is read depends on; changes with it. */
export const mannerOf = (state: AppState): string => `${wordsOf(state)} ${lengthUnitOf(state)}`;

/** Makes the page speak as is chosen, from the start and before anything is drawn anew. */
export function followManner(store: StoreApi<AppState>, demo: Pick<Project, 'library' | 'note'>): void {
  knowBuiltIn(demo);
  const speak = (state: AppState) => {
    setManner({ words: wordsOf(state), unit: lengthUnitOf(state) });
    document.documentElement.lang = localeNow();
  };
  let told = store.getState();
  speak(told);
  keepProjectNames(projectOf(told), null);
  keepLibraryNames(told.keptLibraries);
  store.subscribe((state, before) => {
    if (mannerOf(state) !== mannerOf(told)) speak(state);
    told = state;
    if (state.keptLibraries !== before.keptLibraries) keepLibraryNames(state.keptLibraries);
    const project = projectOf(state);
    if (project !== projectOf(before)) keepProjectNames(project, projectOf(before));
  });
}

/** Names people and suppliers gave stay as they are in whatever the page says. */
function keepProjectNames(project: Project, before: Project | null): void {
  if (project.library !== before?.library) keepNames('finishes', finishNames(project.library).filter(isGiven));
  keepNames('project', givenNames(project));
}

/** Those of libraries that lie beside it, too, but for single words, which may be any word of a sentence. */
function keepLibraryNames(libraries: readonly Library[]): void {
  const names = libraries.flatMap(({ finishes }) => finishNames(finishes));
  keepNames(
    'libraries',
    names.filter((name) => name.includes(' ') && isGiven(name)),
  );
}

const isGiven = (name: string): boolean => !isBuiltIn(name);
