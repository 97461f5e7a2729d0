import type { ComponentRole } from '../finish/types';
import { SURFACES, type SurfaceId } from '../surface';

/** Names as on the ledge and in the schedule, US trade words. */
const NAMES: Readonly<Record<SurfaceId, string>> = {
  counter: 'Counter',
  'island-counter': 'Island counter',
  floor: 'Floor',
  'base-fronts': 'Base fronts',
  'wall-fronts': 'Wall-cabinet fronts',
  'tall-fronts': 'Tall fronts',
  'island-fronts': 'Island fronts',
  plinth: 'Toe kick',
  backsplash: 'Backsplash',
  upstand: 'Upstand',
  wall: 'Wall',
  ceiling: 'Ceiling',
  hardware: 'Handles',
  sink: 'Sink',
  tap: 'Faucet',
  appliance: 'Appliance',
  frame: 'Trim',
};

const isSurface = (id: string): id is SurfaceId => (SURFACES as readonly string[]).includes(id);

/** Name of a surface as shown on screen; an unknown id is shown as it is. */
export const surfaceName = (id: string): string => (isSurface(id) ? NAMES[id] : id);

const FRONTS: readonly SurfaceId[] = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'];
const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];

/** A noun phrase and whether its verb stands in the plural. */
export interface Phrase {
  readonly text: string;
  readonly plural: boolean;
}

/** "the fronts", "the base and island fronts", "the floor and the wall": surfaces of a finding, in decision order. */
export function surfacesPhrase(surfaces: readonly SurfaceId[]): Phrase {
  const names = nouns(surfaces);
  const plural = names.length > 1 || /s$/.test(names[0] ?? '');
  return { text: joined(names.map((n) => `the ${n}`)), plural };
}

function nouns(surfaces: readonly SurfaceId[]): string[] {
  const rest = inDecisionOrder(surfaces);
  const names: string[] = [];
  const collapse = (group: readonly SurfaceId[], least: number, name: string) => {
    const members = rest.filter((s) => group.includes(s));
    if (members.length < least) return;
    names.push(name);
    for (const m of members) rest.splice(rest.indexOf(m), 1);
    // A toe kick in the fronts' own finish goes without saying.
    if (group === FRONTS && rest.includes('plinth')) rest.splice(rest.indexOf('plinth'), 1);
  };
  const fronts = rest.filter((s) => FRONTS.includes(s));
  collapse(COUNTERS, 2, 'counters');
  collapse(FRONTS, 2, fronts.length === 2 ? `${joined(fronts.map(adjective))} fronts` : 'fronts');
  return [...names, ...rest.map((s) => surfaceName(s).toLowerCase())];
}

/** "base" of "Base fronts". */
const adjective = (front: SurfaceId): string => NAMES[front].replace(/ fronts$/, '').toLowerCase();

/** The same surfaces, each once, in the trade's decision order. */
export const inDecisionOrder = (surfaces: Iterable<SurfaceId>): SurfaceId[] => {
  const wanted = new Set(surfaces);
  return SURFACES.filter((s) => wanted.has(s));
};

/** "a", "a and b", "a, b and c". */
export const joined = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;

const ROLE_WORDS: Readonly<Record<ComponentRole, string | null>> = {
  base: null,
  vein: 'veins',
  fleck: 'flecks',
  grain: 'grain',
  cleft: 'clefts',
  pool: 'pooled glaze',
  thread: 'threads',
  shade: 'darker pieces',
  cloud: 'clouding',
  grout: 'grout',
};

/** "the veins of the counter"; for the base component just the surfaces. */
export function componentPhrase(role: ComponentRole, surfaces: readonly SurfaceId[]): Phrase {
  const whole = surfacesPhrase(surfaces);
  const part = ROLE_WORDS[role];
  return part === null ? whole : { text: `the ${part} of ${whole.text}`, plural: /s$/.test(part) };
}

/** A sentence to go on inside another. */
export const lowerFirst = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** First letter in upper case: a phrase becomes the start of a sentence. */
export const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
