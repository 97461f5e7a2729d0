import { surfacesPhrase } from '../engine/judge/surface-words';
import type { SurfaceId } from '../engine/surface';
import { canGoOn, mayGoOn } from './finish-candidates';
import type { Finish } from './project';

/** Why a finish does not usually go on a surface, as a sentence; null where it does. A guide: a person may lay anything anywhere. */
export function whyNotOn(finish: Finish, surface: SurfaceId): string | null {
  if (canGoOn(finish, surface) || mayGoOn(finish, surface)) return null;
  const where = surfacesPhrase([surface]);
  if (finish.class === 'grout') return 'Grout fills joints; it is not laid by itself.';
  if (finish.class === 'wood' && COUNTERS.includes(surface)) {
    return 'Solid wood makes a counter, veneer does not, and the library does not say which this is.';
  }
  const asOther: Finish = { ...finish, piece_mm: LARGE, pattern: { kind: 'plain' } };
  if (!canGoOn(asOther, surface)) return `${NOUNS[finish.class]} does not usually go on ${where.text}.`;
  if (surface === 'floor') return 'It comes neither as boards nor as floor tiles.';
  if (COUNTERS.includes(surface)) return 'Its pieces are too small for a counter.';
  return `It comes as boards, which do not usually go on ${where.text}.`;
}

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];

/** Larger than any piece a rule asks for, mm. */
const LARGE: readonly [number, number] = [3000, 1500];

const NOUNS: { readonly [C in Finish['class']]: string } = {
  paint: 'Paint',
  stone: 'Stone',
  engineered: 'Engineered stone',
  'solid surface': 'Solid surface',
  laminate: 'Laminate',
  wood: 'Wood',
  vinyl: 'Vinyl plank',
  glazed: 'Glazed tile',
  porcelain: 'Porcelain',
  glass: 'Painted glass',
  metal: 'Metal',
  grout: 'Grout',
};
