import { surfacesPhrase } from '../engine/judge/surface-words';
import type { DecisionState, SurfaceId } from '../engine/surface';

const phrase = (surfaces: readonly SurfaceId[]) => surfacesPhrase(surfaces).text.replace(/^the /, '');

/** What the page itself says: labels of steps made of several commands, and of files. */
export const APP_WORDS = {
  layLabel: (surfaces: readonly SurfaceId[], finish: string) => `${phrase(surfaces)}: ${finish}`,
  emptyLabel: (surfaces: readonly SurfaceId[]) => `${phrase(surfaces)}: left empty`,
  stateLabel: (surfaces: readonly SurfaceId[], state: DecisionState) => `${phrase(surfaces)}: ${state}`,
  layingLabel: (surfaces: readonly SurfaceId[]) => `laying of the ${phrase(surfaces)}`,
  newProject: 'new project',
  opened: (file: string) => `open ${file}`,
} as const;
