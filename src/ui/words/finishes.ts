import type { ComponentRole, FinishClass, Provenance } from '../../engine/finish/types';
import type { Layout, Variation } from '../../engine/pattern/types';
import type { DecisionState } from '../../engine/surface';
import type { SHEENS, SheenId } from '../../model/sheens';
import { shownName } from './built-in';
import { spoken } from './spoken';

/** Material classes in the trade's words. */
export const CLASS_WORDS: { readonly [C in FinishClass]: string } = spoken({
  paint: 'Paint',
  stone: 'Stone',
  engineered: 'Engineered stone',
  'solid surface': 'Solid surface',
  laminate: 'Laminate',
  wood: 'Wood',
  vinyl: 'Vinyl plank',
  glazed: 'Glazed tile',
  porcelain: 'Porcelain',
  glass: 'Glass, painted behind',
  metal: 'Metal',
  grout: 'Grout',
});

/** The same, short enough to stand under a sample. */
export const CLASS_SHORT: { readonly [C in FinishClass]: string } = spoken({
  ...CLASS_WORDS,
  engineered: 'Engineered',
  glass: 'Glass',
});

/** How a color came to be known. */
export const PROVENANCE_WORDS: { readonly [P in Provenance]: string } = spoken({
  measured: 'measured with an instrument',
  declared: 'declared by the supplier',
  'photo-with-card': 'from a photo with a gray card',
  photo: 'from a photo',
  'by-eye': 'judged by eye',
  screen: 'a screen color',
});

/** Short form for lists. */
export const PROVENANCE_SHORT: { readonly [P in Provenance]: string } = spoken({
  measured: 'measured',
  declared: 'declared',
  'photo-with-card': 'photo with card',
  photo: 'photo',
  'by-eye': 'by eye',
  screen: 'screen color',
});

export const STATE_WORDS: { readonly [S in DecisionState]: string } = spoken({
  fixed: 'fixed',
  open: 'open',
  decided: 'decided',
  ordered: 'ordered',
});

/** What a state means, for its menu. */
export const STATE_MEANING: { readonly [S in DecisionState]: string } = spoken({
  fixed: 'Fixed: it stays',
  open: 'Open: still to choose',
  decided: 'Decided: chosen',
  ordered: 'Ordered: bought',
});

export const ROLE_WORDS: { readonly [R in ComponentRole | 'average']: string } = spoken({
  average: 'average',
  base: 'base',
  vein: 'vein',
  fleck: 'fleck',
  grain: 'grain',
  cleft: 'cleft',
  pool: 'glaze pool',
  thread: 'thread',
  shade: 'shade',
  cloud: 'cloud',
  grout: 'grout',
});

export const LAYOUT_WORDS: { readonly [L in Layout]: string } = spoken({
  plain: 'One piece',
  planks: 'Planks',
  stack: 'Stack bond',
  'stack-upright': 'Stack bond, upright',
  'running-bond': 'Running bond',
  'third-offset': 'Third offset',
  herringbone: 'Herringbone',
  hexagon: 'Hexagons',
});

/** Tile-to-tile variation (ANSI A137.1 classes) in plain words. */
export const VARIATION_WORDS: { readonly [V in Variation]: string } = spoken({
  V0: 'very uniform',
  V1: 'uniform',
  V2: 'slight variation',
  V3: 'moderate variation',
  V4: 'strong variation',
});

export const SHEEN_WORDS: { readonly [S in SheenId]: string } = spoken({
  flat: 'flat',
  matte: 'matte',
  'low-sheen': 'low sheen',
  satin: 'satin',
  'semi-gloss': 'semi-gloss',
  gloss: 'gloss',
});

/** A sheen to choose in a menu: "Satin, 20 to 35 GU". */
export const sheenChoice = ({ id, from, to }: (typeof SHEENS)[number]): string => {
  const word = `${SHEEN_WORDS[id].charAt(0).toUpperCase()}${SHEEN_WORDS[id].slice(1)}`;
  return from === 0 ? `${word}, to ${to} GU` : to === 100 ? `${word}, from ${from} GU` : `${word}, ${from} to ${to} GU`;
};

/** The label without its code at the end, as it is written. */
export function bareLabel(label: string, code: string): string {
  const tail = `, ${code}`;
  return label.endsWith(tail) ? label.slice(0, -tail.length) : label;
}

/** The label without its code at the end, which is shown apart; of the program's own finishes in the words chosen. */
export const labelWithoutCode = (label: string, code: string): string => shownName(bareLabel(label, code));
