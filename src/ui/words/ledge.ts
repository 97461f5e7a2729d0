import type { DecisionState, SurfaceId } from '../../engine/surface';
import { surfaceName } from './engine-words';
import { STATE_WORDS } from './finishes';
import { capital, listed } from './numbers';
import { spoken } from './spoken';

/** Words of the ledge. */
export const LEDGE = spoken({
  region: 'Ledge: the finishes in this option',
  upright: 'Upright',
  flat: 'Flat',
  fronts: 'Fronts',
  counters: 'Counters',
  allDecided: 'Everything is decided.',
  next: (name: string) => `Next to decide: ${name.toLowerCase()}.`,
  scale: 'All samples at one scale; the slip beside each shows it in this room.',
  caption: (name: string, label: string, state: DecisionState) => `${name}: ${label}. ${capital(STATE_WORDS[state])}.`,
  button: (name: string, label: string, state: DecisionState, members: readonly SurfaceId[]) =>
    `${name}: ${label}, ${STATE_WORDS[state]}${members.length > 1 ? `; on ${listed(members.map((member) => surfaceName(member).toLowerCase()))}` : ''}`,
} as const);
