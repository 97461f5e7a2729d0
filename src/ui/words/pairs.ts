import type { PairVerdict } from '../../engine/judge/assessment';
import type { Meets } from '../../engine/judge/meets';
import type { BetweenCode, CellSign } from '../pairs/cell-sign';
import { SEVERITY_WORDS } from './findings';
import { spoken } from './spoken';

/** Words of the table of all pairs. */
export const PAIRS = spoken({
  title: 'All pairs',
  open: 'All pairs in one table',
  grid: 'Every two finishes, in the order of deciding',
  intro: 'Numbers stand for the rows. Choose a square to read why; arrow keys move.',
  waiting: 'Comparing every two finishes.',
  none: 'There is nothing to compare: one finish is laid everywhere.',
  legend: 'What the signs mean',
  both: (a: string, b: string) => `${a} and ${b.charAt(0).toLowerCase()}${b.slice(1)}`,
  part: 'Parts',
  asSamples: 'As samples',
  inLight: (setting: string) => `In ${setting.toLowerCase()} light`,
  between: (a: string, b: string) => `${a} and ${b}`,
  thin: 'thin lines: no warning',
  light: (setting: string, isDark: boolean) =>
    isDark
      ? 'Judged as samples in neutral light; no light is on.'
      : `Judged as samples in neutral light, and as installed in ${setting.toLowerCase()} light by eyes used to it.`,
  numbers: 'Numbers',
} as const);

export const MEETS_WORDS: { readonly [M in Meets]: string } = spoken({
  adjacent: 'they touch',
  together: 'seen together, without touching',
  apart: 'never seen together from the usual places',
});

/** What a square says, as short as it can be said. */
const SIGN_WORDS: { readonly [V in PairVerdict | BetweenCode]: string } = spoken({
  'weak-edge': 'an edge that is hard to see',
  'pair-splits': 'a match by day that parts in this light',
  'patterns-compete': 'busy patterns that compete',
  'woods-nearly-match': 'woods that nearly match',
  same: 'look the same',
  match: 'match closely',
  agree: 'whites that agree',
  relates: 'echo each other',
  'looks-dirty': 'one looks dirty',
  'too-yellow': 'one looks yellow',
  'pulls-apart': 'undertones pull apart',
  none: 'leave each other alone',
  'cannot-tell': 'cannot tell from here',
});

/** The letter of a fault beside its mark. */
export const FAULT_LETTERS: Partial<Record<CellSign['kind'], string>> = spoken({
  'weak-edge': 'E',
  'pair-splits': 'P',
  'patterns-compete': 'B',
  'woods-nearly-match': 'W',
  'looks-dirty': 'D',
  'too-yellow': 'Y',
  'pulls-apart': 'U',
});

/** What a sign says, with its grade where it warns. */
export const signWords = ({ kind, severity }: CellSign): string =>
  severity ? `${SIGN_WORDS[kind]} (${SEVERITY_WORDS[severity]})` : SIGN_WORDS[kind];

/** A square read out in full. */
export const cellName = (a: string, b: string, sign: CellSign, meets: Meets): string =>
  `${PAIRS.both(a, b)}: ${signWords(sign)}; ${MEETS_WORDS[meets]}`;
