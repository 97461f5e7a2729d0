import type { ComponentRecord } from '../../engine/judge/assessment';
import { UNDERTONE_LEVEL_WORDS } from '../words/findings';
import { capital } from '../words/numbers';
import { isTooRough, READING } from '../words/reading';

/** An undertone in words, or that it cannot be told; `knownDe00` is the root mean square error of the color. */
export function undertoneText({ word, level }: ComponentRecord['undertone'], knownDe00: number): string {
  if (level !== 'color' && isTooRough(knownDe00)) return READING.undertoneOpen(word);
  if (level === 'none' || !word) return capital(UNDERTONE_LEVEL_WORDS[level]);
  return `${capital(word)}, ${UNDERTONE_LEVEL_WORDS[level]}`;
}
