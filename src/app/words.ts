import { sentenceCase, surfacesPhrase } from '../engine/judge/surface-words';
import type { DecisionState, SurfaceId } from '../engine/surface';
import { STATE_WORDS } from '../ui/words/finishes';

const phrase = (surfaces: readonly SurfaceId[]) => surfacesPhrase(surfaces).text.replace(/^the /, '');

const name = (surfaces: readonly SurfaceId[]) => sentenceCase(phrase(surfaces));

/** What the log says by itself, and the steps that write there. */
export const LOG_WORDS = {
  decided: (surfaces: readonly SurfaceId[], state: DecisionState, finish: string) =>
    state === 'open'
      ? `${name(surfaces)} open again. There: ${finish}.`
      : `${name(surfaces)} ${STATE_WORDS[state]}: ${finish}.`,
  frozen: (id: string, as: string) => `Frozen as ${id}: ${as}.`,
  wentBack: (id: string, as: string) => `Went back to ${id}: ${as}.`,
  freezeLabel: (id: string, as: string) => `freeze ${id}, ${as}`,
  removed: (id: string, as: string) => `Removed ${id}: ${as}.`,
  removeLabel: (id: string, as: string) => `remove ${id}, ${as}`,
  goBackLabel: (id: string) => `go back to ${id}`,
} as const;

/** What the page itself says: labels of steps made of several commands, and of files. */
export const APP_WORDS = {
  layLabel: (surfaces: readonly SurfaceId[], finish: string) => `${phrase(surfaces)}: ${finish}`,
  emptyLabel: (surfaces: readonly SurfaceId[]) => `${phrase(surfaces)}: left empty`,
  stateLabel: (surfaces: readonly SurfaceId[], state: DecisionState) => `${phrase(surfaces)}: ${state}`,
  layingLabel: (surfaces: readonly SurfaceId[]) => `laying of the ${phrase(surfaces)}`,
  newProject: 'new project',
  opened: (file: string) => `open ${file}`,
} as const;
