import { channelsFromHex, decodeSrgb } from '../../engine/color/display';
import { yFromLightness } from '../../engine/color/lab';
import type { GivenColor } from '../../engine/finish/given-color';
import { yFromMunsellValue } from '../../engine/naming/munsell-value';
import { codeOf } from '../../model/merge-finishes';
import type { Finish } from '../../model/project';
import { knownFacts } from '../drawer/known-facts';
import { shownName } from '../words/built-in';
import { bareLabel } from '../words/finishes';

/** The name alone: lists show the code apart. */
export const nameOf = (finish: Finish): string => shownName(writtenName(finish));

/** The name alone, as it is kept. */
export const writtenName = (finish: Finish): string => bareLabel(bareLabel(finish.label, finish.id), codeOf(finish));

/**
 * Light reflectance value to sort and filter by: by the numbers where they are worked out, else as printed, else as near as the given color
 * tells without its spectrum, which is 2 at most off for what is no strong color. Ten thousand finishes are sorted at once this way.
 */
export function nearLrv(finish: Finish): number | null {
  const facts = knownFacts(finish);
  if (facts) return facts.lrv;
  let sum = 0;
  for (const { share, color, lrv } of finish.components) {
    const one = lrv ?? lrvOfGiven(color);
    if (one === null) return null;
    sum += share * one;
  }
  return sum;
}

function lrvOfGiven(color: GivenColor): number | null {
  switch (color.kind) {
    case 'lab':
      return yFromLightness(color.lab[0]);
    case 'lch':
      return yFromLightness(color.lch[0]);
    case 'xyz':
      return color.xyz[1];
    case 'lrv':
      return color.lrv;
    case 'hex':
      return lrvOfHex(color.hex);
    case 'munsell':
      return lrvOfMunsell(color.munsell);
    case 'spectrum':
      return lrvOfSpectrum(color);
  }
}

/** By the luminance row of sRGB (IEC 61966-2-1). */
function lrvOfHex(hex: string): number | null {
  const read = channelsFromHex(hex);
  if (!read.ok) return null;
  const [r, g, b] = read.value.map(decodeSrgb) as [number, number, number];
  return 100 * (0.2126 * r + 0.7152 * g + 0.0722 * b);
}

/** By the value in its notation (ASTM D1535). */
function lrvOfMunsell(notation: string): number | null {
  const value = Number(/(?:^N\s*|\s)(\d+(?:\.\d+)?)\s*\//i.exec(notation.trim())?.[1]);
  return Number.isFinite(value) ? yFromMunsellValue(value) : null;
}

/** Middle and width of the eye's sensitivity to light, nm, as one bell. */
const [SEEN_NM, SEEN_SPREAD_NM] = [557, 43];

function lrvOfSpectrum({ start_nm, step_nm, reflectance }: GivenColor & { kind: 'spectrum' }): number {
  let [sum, weights] = [0, 0];
  reflectance.forEach((value, i) => {
    const weight = Math.exp(-(((start_nm + i * step_nm - SEEN_NM) / SEEN_SPREAD_NM) ** 2) / 2);
    sum += weight * value;
    weights += weight;
  });
  return (100 * sum) / weights;
}
