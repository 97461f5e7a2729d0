import { givenWords } from '../../engine/finish/given-words';
import { notationDoubtDe00 } from '../../engine/finish/notation-doubt';
import type { Provenance } from '../../engine/finish/types';
import type { ComponentRecord } from '../../engine/judge/assessment';
import { type ColorRecord, isMeasuredKind } from '../color-record';
import type { ColorUnderLight } from '../color-under';
import type { WhitenessRecord } from '../whiteness-record';
import { fixed, labText, temperatureText, wrapped } from './figures';

const SOURCES: { readonly [S in ColorRecord['spectrum_source']]: string } = {
  measured: 'the measured spectrum',
  lhtss: 'a plausible spectrum of this color (LHTSS); it may have others',
  sigmoid: 'a plausible spectrum of this color (sigmoid); it may have others',
};

/** A color in words. */
export function colorText(color: ColorRecord): string {
  const { whiteness: w, lights = [], lrv_printed } = color;
  return [
    `${color.name}, ${knownUndertoneText(color.undertone, color.uncertainty.strength)}`,
    row('Given as', `${givenWords(color.given)}${roundingText(color)}`),
    row('CIELAB (D65, 2°)', labText(color.lab_d65)),
    row('Munsell', color.munsell),
    row(
      'Light reflectance value',
      `${fixed(color.lrv)} (D65, 10°), usually within about ${fixed(color.uncertainty.lrv)}${lrv_printed === null ? '' : `; printed is ${lrv_printed}`}`,
    ),
    ...(isNearWhite(color)
      ? [row('Whiteness', `WID ${fixed(w.wid)} ±${fixed(color.uncertainty.wid)}, ${cieText(w)}; ${e313Text(w)}`)]
      : []),
    ...(isMeasuredKind(color.given) ? [row('Mirror reflection', mirrorText(color))] : []),
    row('Known by', `${SOURCE_WORDS[color.provenance]}; ${withinText(color.uncertainty_de00)}`),
    row('Computed with', SOURCES[color.spectrum_source]),
    ...lights.flatMap(underText),
  ].join('\n');
}

function roundingText({ given }: ColorRecord): string {
  const doubt = notationDoubtDe00(given);
  return doubt < 0.05 ? '' : `. The notation is rounded: the color may lie about ${fixed(doubt)} CIEDE2000 away`;
}

/** Columns before the values. */
const INDENT = 27;

/** A label and its value, broken below itself where it is long. */
function row(label: string, value: string): string {
  return `  ${label.padEnd(INDENT - 2)}${wrapped(value, ' '.repeat(INDENT)).trimStart()}`;
}

/** How a color is known, after "known by". */
const SOURCE_WORDS: { readonly [P in Provenance]: string } = {
  measured: 'an instrument',
  declared: 'numbers from the supplier',
  'photo-with-card': 'a photo with a card',
  photo: 'a photo',
  'by-eye': 'eye',
  screen: 'a screen color',
};

const withinText = (de00: number): string =>
  `usually within about ${Number(de00.toFixed(de00 < 1 ? 2 : 1))} CIEDE2000 (root mean square)`;

/** Of darker colors nobody asks for the whiteness. Our judgment. */
const WHITE_FROM_L = 70;

/** Light, and either named a white or no more colorful than ASTM E313 takes for one. */
const isNearWhite = ({ lab_d65, name, whiteness }: ColorRecord): boolean =>
  lab_d65[0] >= WHITE_FROM_L && (name.endsWith('white') || !whiteness.white_e313.why.includes('too-colorful'));

function underText({ light, cct_k, duv, name, lab_d65, ...shift }: ColorUnderLight): readonly string[] {
  const [from, to] = shift.shift_from_to_de00;
  const isOpen = to - from >= 0.05;
  return [
    `Under ${light} (${temperatureText(cct_k, duv)}), once the eye is used to it:`,
    row('Looks', `${name}, ${knownUndertoneText(shift.undertone, shift.strength_uncertainty)}`),
    row('CIELAB adapted to D65', `${labText(lab_d65)}, ${withinText(shift.uncertainty_de00)}`),
    row(
      'Shift',
      `${fixed(shift.shift_de00)} CIEDE2000${isOpen ? `; ${fixed(from)} to ${fixed(to)} with other spectra of the same color` : ''}`,
    ),
  ];
}

/** What the spectrum counts of the mirror-like reflection, and what that leaves open. */
function mirrorText({ finish_class, gloss_gu, specular, specular_doubt_de00: doubt, given }: ColorRecord): string {
  if (specular === 'included') {
    const isPutBack = 'specular' in given && given.specular === 'excluded';
    return isPutBack ? `put back in for ${gloss_gu} gloss units, as LRV is measured` : 'included, as LRV is measured';
  }
  if (specular === 'excluded') {
    return finish_class === 'metal'
      ? 'excluded: of a metal that tells next to nothing'
      : 'excluded; not put back, as the gloss is not known';
  }
  if (finish_class === 'metal') return 'taken as included, as nobody said; a metal is far darker without it';
  const taken = 'taken as included, as nobody said';
  return doubt === null || doubt < 0.05 ? taken : `${taken}; ${fixed(doubt)} CIEDE2000 off if it was excluded`;
}

/** The undertone with its uncertainty; where that leaves open on which side of 1 the strength lies, it says so. */
function knownUndertoneText(undertone: ComponentRecord['undertone'], sigma: number): string {
  const { word, strength, level } = undertone;
  const figures = `(strength ${fixed(strength)} ±${fixed(sigma)})`;
  if (sigma < 0.05 || Math.abs(strength - 1) >= sigma) {
    return undertoneText({ undertone }).replace(/\(strength [^)]*\)/, figures);
  }
  return level === 'none' ? `no undertone one could be sure of ${figures}` : `perhaps ${word} ${figures}`;
}

/** "no undertone", "leans bluish (0.7)", ... with the strength in units of the limit where names begin. */
export function undertoneText({ undertone: { word, strength, level } }: Pick<ComponentRecord, 'undertone'>): string {
  switch (level) {
    case 'none':
      return `no undertone (strength ${fixed(strength)})`;
    case 'faint':
      return `faintly ${word} (strength ${fixed(strength)})`;
    case 'named':
      return `undertone ${word} (strength ${fixed(strength)})`;
    case 'color':
      return `a color of its own, ${word} (strength ${fixed(strength)})`;
  }
}

function cieText(w: WhitenessRecord): string {
  const cie =
    w.cie_valid && w.cie_w !== null && w.cie_tint !== null
      ? `CIE W ${fixed(w.cie_w)}, tint ${fixed(w.cie_tint)}`
      : 'CIE W does not apply';
  if (w.yellowness_e313 === null || !w.yellowness_holds) return `${cie}, yellowness E313 does not apply`;
  return `${cie}, yellowness E313 ${fixed(w.yellowness_e313)}`;
}

/** Whether ASTM E313 takes it for a white at all. */
function e313Text({ white_e313: { holds, why } }: WhitenessRecord): string {
  if (holds) return 'a white by ASTM E313';
  const reasons = { 'too-dark': 'too dark', 'too-colorful': 'too colorful' } as const;
  return `no white by ASTM E313: ${why.map((one) => reasons[one]).join(' and ')}`;
}
