import type { Lab } from '../color/types';
import { ISCC_NBS_NAMES, isccNbsBlock } from './iscc-nbs';
import { type Munsell, munsellFromLabD65 } from './munsell';

/** How far a colour is from plain white, gray or black; nearest first. */
export const UNDERTONE_LEVELS = ['none', 'faint', 'named', 'color'] as const;
export type UndertoneLevel = (typeof UNDERTONE_LEVELS)[number];

/** The lean of a near-neutral, or the hue of a colour. */
export interface Undertone {
  readonly munsell: Munsell;
  /** ISCC-NBS level 3 name, for example 'yellowish white'. */
  readonly name: string;
  /** 'none'; the -ish word for faint and named leans ('bluish', 'olive'); the level 2 name for a colour ('brown'). */
  readonly word: string;
  /** U: Munsell chroma over the chroma at which a neutral gets a tinted name. */
  readonly strength: number;
  readonly level: UndertoneLevel;
}

/**
 * Munsell chroma from which the ISCC-NBS system no longer says plain white, gray or black: 0.7 for hues 7YR to 9Y at
 * value 4.5 and above, else 0.5 (Kelly and Judd 1955).
 */
export function neutralLimit(munsell: Omit<Munsell, 'notation' | 'chroma'>): number {
  const yellow = munsell.hue100 >= 17 && munsell.hue100 < 29;
  return yellow && munsell.value >= 4.5 ? 0.7 : 0.5;
}

/** Below this strength a lean is not seen without a white beside it; our judgment. */
const FAINT_FROM = 0.5;

/**
 * Undertone of a colour under D65, 2 degrees. Levels by strength U: below 0.5 none; to 1 faint; from 1, while the name is
 * still a tinted white, gray or black, named; beyond, a colour.
 * What is no colour throws a RangeError, as `munsellFromLabD65`.
 */
export function undertoneOf(lab: Lab<'D65-2'>): Undertone {
  const munsell = munsellFromLabD65(lab);
  const block = isccNbsBlock(munsell.hue100, munsell.value, munsell.chroma);
  const strength = munsell.chroma / neutralLimit(munsell);
  const level = levelOf(strength, block);
  return {
    munsell,
    name: ISCC_NBS_NAMES[block - 1]!.name,
    word: undertoneWord(munsell, block, level),
    strength,
    level,
  };
}

/** Level of a strength in an ISCC-NBS block (1-267). */
export function levelOf(strength: number, block: number): UndertoneLevel {
  if (strength < FAINT_FROM) return 'none';
  if (strength < 1) return 'faint';
  return LEAN_WORDS[block - 1] ? 'named' : 'color';
}

/** The word of an undertone: see `Undertone.word`. */
export function undertoneWord(munsell: Omit<Munsell, 'notation'>, block: number, level: UndertoneLevel): string {
  if (level === 'none') return 'none';
  return level === 'color' ? ISCC_NBS_NAMES[block - 1]!.level2 : leanWord(munsell);
}

/**
 * The hue word of the tinted white, gray or black at this hue. Between black and dark gray some hues have only colours
 * (dark grayish brown); there the black of the same hue gives the word.
 */
function leanWord({ hue100, value, chroma }: Omit<Munsell, 'notation'>): string {
  const limit = neutralLimit({ hue100, value });
  const here = LEAN_WORDS[isccNbsBlock(hue100, value, Math.max(chroma, limit)) - 1];
  return here ?? LEAN_WORDS[isccNbsBlock(hue100, 1, limit) - 1]!;
}

/** By block: 'yellowish' of 'yellowish white'; null for all that is not a tinted white, gray or black. */
const LEAN_WORDS: readonly (string | null)[] = ISCC_NBS_NAMES.map(
  ({ name }) => /\b(\w+ish|olive)\b.*(?:white|gray|black)$/.exec(name)?.[1] ?? null,
);
