import type { PairVerdict } from '../../engine/judge/assessment';
import type { ComparisonWhite } from '../../kitchen/study/held-whites';
import { spoken } from './spoken';

/** Words of what is held beside a place. */
export const HELD = spoken({
  title: 'Hold beside it',
  what: 'A white, or a finish by name',
  note: 'A card of real size, in the light of this place. Its sheen is left out.',
  perfect: 'A perfect white is held there now.',
  away: 'Put away',
  unknown: 'Nothing here has that name. Choose one from the list.',
  pending: 'Coloring the card for this light.',
  list: 'Whites and finishes',
  whites: {
    'neutral-white': 'Neutral white',
    'off-white': 'Off-white',
    cream: 'Cream',
  } satisfies Record<ComparisonWhite, string>,
  /** `held_looks` of a reading in front. */
  looks: (held: string, how: string, surface: string) => `${held} looks ${how} than ${surface} here.`,
  alike: (held: string, surface: string) => `${held} and ${surface} look the same here.`,
  card: 'Card',
  surface: 'Surface there',
  difference: 'Between them',
  verdict: 'Side by side',
  size: 'Size of the card',
  sizeValue: (width: string, height: string) => `${width} by ${height} mm`,
  onScreen: 'Card on screen',
  verdicts: {
    same: 'they look the same',
    match: 'they match closely',
    agree: 'they agree as whites',
    relates: 'they relate',
    'looks-dirty': 'one looks dirty',
    'too-yellow': 'one looks too yellow',
    'pulls-apart': 'they pull apart',
    none: 'they do not touch each other’s undertone',
    'cannot-tell': 'cannot tell from here: compare the samples',
  } satisfies Record<PairVerdict, string>,
  faulty: {
    'looks-dirty': { held: 'the card looks dirty', surface: 'the surface looks dirty' },
    'too-yellow': { held: 'the card looks too yellow', surface: 'the surface looks too yellow' },
  } as Partial<Record<PairVerdict, { readonly held: string; readonly surface: string }>>,
} as const);
