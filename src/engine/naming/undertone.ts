import type { Lab } from '../color/types';
import { isccNbsName } from './iscc-nbs';
import { type Munsell, munsellFromLabD65 } from './munsell';

/** How far a colour is from plain white, gray or black. */
export type UndertoneLevel = 'none' | 'faint' | 'named' | 'color';

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

/** Below this strength a lean is not seen without a white beside it; our judgement. */
const FAINT_FROM = 0.5;

const CACHE_LIMIT = 20_000;
const cache = new Map<string, Undertone>();

/**
 * Undertone of a colour under D65, 2 degrees. Levels by strength U: below 0.5 none; to 1 faint; from 1, while the name is
 * still a tinted white, gray or black, named; beyond, a colour.
 * Read at 0.001 in L*, a*, b*; recent answers are remembered.
 */
export function undertoneOf(lab: Lab<'D65-2'>): Undertone {
  const l = Math.round(lab.l * 1000);
  const a = Math.round(lab.a * 1000);
  const b = Math.round(lab.b * 1000);
  const key = `${l},${a},${b}`;
  const known = cache.get(key);
  if (known) return known;
  const undertone = readUndertone({ l: l / 1000, a: a / 1000, b: b / 1000 });
  if (cache.size >= CACHE_LIMIT) cache.clear();
  cache.set(key, undertone);
  return undertone;
}

function readUndertone(lab: Lab<'D65-2'>): Undertone {
  const munsell = munsellFromLabD65(lab);
  const { name, level2 } = isccNbsName(munsell);
  const strength = munsell.chroma / neutralLimit(munsell);
  const level = levelOf(strength, name);
  const word = level === 'none' ? 'none' : level === 'color' ? level2 : leanWord(munsell);
  return { munsell, name, word, strength, level };
}

function levelOf(strength: number, name: string): UndertoneLevel {
  if (strength < FAINT_FROM) return 'none';
  if (strength < 1) return 'faint';
  return isTintedNeutral(name) ? 'named' : 'color';
}

/**
 * The hue word of the tinted white, gray or black at this hue. Between black and dark gray some hues have only colours
 * (dark grayish brown); there the black of the same hue gives the word.
 */
function leanWord(munsell: Munsell): string {
  const chroma = Math.max(munsell.chroma, neutralLimit(munsell));
  const here = isccNbsName({ ...munsell, chroma });
  const tinted = isTintedNeutral(here.name)
    ? here
    : isccNbsName({ ...munsell, value: 1, chroma: neutralLimit(munsell) });
  return /\b(\w+ish|olive)\b/.exec(tinted.name)![1]!;
}

const isTintedNeutral = (name: string): boolean => /(white|gray|black)$/.test(name);
