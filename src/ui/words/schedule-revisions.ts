import { momentText } from './projects';
import { spoken } from './spoken';

/** Words of the frozen revisions in the schedule. */
export const REVISIONS = spoken({
  intro: 'A revision is a frozen copy of the whole project: what is signed, and what later changes are told from.',
  now: 'Now',
  unchanged: (id: string) => `Nothing that is signed has changed since ${id}.`,
  elsewhere: (id: string) => `Every item is as frozen in ${id}, but not all else: see Revisions.`,
  since: (id: string) => `Since ${id}`,
  first: 'The first one.',
  none: 'Nothing is frozen yet.',
  frozen: (at: string) => `frozen ${momentText(at)}`,
  lookAt: 'Look at it',
  lookAtOne: (id: string) => `Look at ${id}`,
  past: (id: string, name: string, at: string) =>
    `${[id, name].filter(Boolean).join(', ')}, frozen ${momentText(at)}. To look at only, without what was found in its light.`,
  back: 'Back to now',
} as const);
