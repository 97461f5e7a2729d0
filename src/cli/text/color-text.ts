import type { ComponentRecord } from '../../engine/judge/assessment';
import type { ColorUnderLight } from '../color-under';
import type { WhitenessRecord } from '../whiteness-record';
import { fixed, labText, temperatureText } from './figures';

/** What `color` gives: a component record, whiteness, where the spectrum comes from, and the color under a light. */
export interface ColorRecord extends ComponentRecord {
  readonly whiteness: WhitenessRecord;
  readonly spectrum_source: string;
  readonly under?: ColorUnderLight;
}

const SOURCES: Readonly<Record<string, string>> = {
  measured: 'the measured spectrum',
  lhtss: 'a plausible spectrum of the same color (LHTSS); another light may show it otherwise',
  sigmoid: 'a plausible spectrum of the same color (sigmoid); another light may show it otherwise',
};

/** A color in words. */
export function colorText(color: ColorRecord): string {
  const { whiteness: w, under } = color;
  const lines = [
    `${color.name}, ${undertoneText(color)}`,
    `  CIELAB (D65, 2 degrees)  ${labText(color.lab_d65)}`,
    `  Munsell                  ${color.munsell}`,
    `  Light reflectance value  ${fixed(color.lrv)} (D65, 10 degrees)`,
    `  Whiteness                WID ${fixed(w.wid)}, ${cieText(w)}`,
    `  Known by                 ${color.provenance}, about ${fixed(color.uncertainty_de00, 2)} CIEDE2000 (one standard deviation)`,
    `  Computed with            ${SOURCES[color.spectrum_source] ?? color.spectrum_source}`,
  ];
  if (under) {
    lines.push(
      `Under ${under.light} (${temperatureText(under.cct_k, under.duv)}), once the eye is used to it: ${under.name}`,
      `  CIELAB adapted to D65    ${labText(under.lab_d65)}`,
      `  Shift                    ${fixed(under.shift_de00)} CIEDE2000`,
    );
  }
  return lines.join('\n');
}

/** "no undertone", "leans bluish (0.7)", ... with the strength in units of the limit where names begin. */
export function undertoneText({ undertone: { word, strength, level } }: ComponentRecord): string {
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
  return w.yellowness_e313 === null ? cie : `${cie}, yellowness E313 ${fixed(w.yellowness_e313)}`;
}
