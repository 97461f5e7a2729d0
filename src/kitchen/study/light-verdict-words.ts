import type { MatchVerdict } from '../../engine/change/pair-under';
import type { ShiftVerdict } from '../../engine/change/shift-under';

/** What a light does to a color, as lists and tables say it. */
export const SHIFT_WORDS: { readonly [V in ShiftVerdict]: string } = {
  holds: 'stays',
  shifts: 'shifts',
  'cannot-tell': 'cannot tell',
};

/** What a light does to two colors that match by day, or do not. */
export const MATCH_WORDS: { readonly [V in MatchVerdict]: string } = {
  apart: 'no match by day',
  'stays-matched': 'stay matched',
  splits: 'part',
  'cannot-tell': 'cannot tell',
};
