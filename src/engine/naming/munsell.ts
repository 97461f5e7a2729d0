import { labToMhvc, mhvcToLab, yToMunsellValue } from 'munsell';
import { bradfordCToD65, bradfordD65ToC } from '../color/adapt';
import { labD65FromXyzD65, labFromXyz, xyzD65FromLabD65, xyzFromLab } from '../color/lab';
import type { Lab, Xyz } from '../color/types';
import { C_2 } from '../color/whites';
import { failure, type Result, success } from '../result';

/**
 * A colour in the Munsell system (renotation, Newhall, Nickerson and Judd 1943; value relative to the perfect diffuser).
 * `hue100` runs round a circle of 100 (10 = 10R, 20 = 10YR ... 100 = 0 = 10RP); value 0-10; chroma from 0 up.
 */
export interface Munsell {
  readonly hue100: number;
  readonly value: number;
  readonly chroma: number;
  /** As printed in the trade: '4.1Y 9.2/1.3', 'N 9.2'. */
  readonly notation: string;
}

const HUE_FAMILIES: readonly string[] = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'];

/** Of hue steps and of chroma; well inside what a notation shows. */
const THRESHOLD = 1e-5;

/** Munsell colour of tristimulus values under D65 (Y = 100 for white); adapted to illuminant C by Bradford. */
function munsellFromXyzD65(xyz: Xyz<'D65-2'>): Munsell {
  // The package's own Bradford step uses slightly other whites, which would give our neutrals a chroma.
  const { l, a, b } = labFromXyz(bradfordD65ToC(xyz), C_2);
  const [hue100, value, chroma] = invertRenotation(l, a, b);
  return { hue100, value, chroma, notation: munsellNotation(hue100, value, chroma) };
}

/** Munsell colour of a CIELAB colour under D65, 2 degrees. */
export const munsellFromLabD65 = (lab: Lab<'D65-2'>): Munsell => munsellFromXyzD65(xyzD65FromLabD65(lab));

/** Printed notation with one decimal each, '4.1Y 9.2/1.3'; 'N 9.2' when the chroma rounds to 0. */
export function munsellNotation(hue100: number, value: number, chroma: number): string {
  if (chroma < 0.05) return `N ${value.toFixed(1)}`;
  // Hues run from 0.1 to 10.0 within a family: 0 is the 10 of the family before.
  const tenths = Math.round(hue100 * 10) % 1000 || 1000;
  const family = Math.ceil(tenths / 100) - 1;
  const hue = (tenths - family * 100) / 10;
  return `${hue.toFixed(1)}${HUE_FAMILIES[family]} ${value.toFixed(1)}/${chroma.toFixed(1)}`;
}

/** CIELAB under D65, 2 degrees, of hue on the circle of 100, value and chroma. */
export function labD65FromHueValueChroma(hue100: number, value: number, chroma: number): Lab<'D65-2'> {
  const [l, a, b] = mhvcToLab(hue100, value, chroma);
  return labD65FromXyzD65(bradfordCToD65(xyzFromLab<'C-2'>({ l, a, b }, C_2)));
}

/** Munsell value 0-10 of luminance factor Y 0-100 (ASTM D1535); clamped outside. */
export const munsellValueFromY = (y: number): number => yToMunsellValue(y / 100);

/** CIELAB under D65, 2 degrees, of a Munsell notation such as '5Y 8.5/2' or 'N 9.25/'. */
export function labD65FromMunsell(notation: string): Result<Lab<'D65-2'>> {
  const text = notation.trim().toUpperCase();
  const neutral = /^N\s*(\d*\.?\d+)\s*\/?$/.exec(text);
  const colored = /^(\d*\.?\d+)\s*(YR|GY|BG|PB|RP|R|Y|G|B|P)\s*(\d*\.?\d+)\s*\/\s*(\d*\.?\d+)$/.exec(text);
  const hue = Number(colored?.[1] ?? 0);
  const value = Number(neutral?.[1] ?? colored?.[3]);
  const chroma = Number(colored?.[4] ?? 0);
  if ((!neutral && !colored) || hue > 10 || value > 10 || chroma > 50) {
    return failure({
      code: 'munsell-not-understood',
      text: `'${notation}' is not a Munsell notation.`,
      remedy: 'Write hue, value and chroma, for example 2.5Y 8.5/2, or N 9.25 for a neutral.',
    });
  }
  const family = HUE_FAMILIES.indexOf(colored?.[2] ?? 'R');
  return success(labD65FromHueValueChroma(family * 10 + hue, value, chroma));
}

/** Hue on the circle of 100, value, chroma of CIELAB under illuminant C. */
function invertRenotation(l: number, a: number, b: number): [hue100: number, value: number, chroma: number] {
  const lightness = Math.min(100, Math.max(0, l));
  // Half again as many steps converge at a factor of 0.5 as at 0.8, but a few odd colours swing at 0.8.
  const [hue100, value, chroma] =
    convergesQuickly(lightness, a, b) ?? labToMhvc(lightness, a, b, 1e-6, 200, 'last', 0.5);
  return [((hue100 % 100) + 100) % 100, value, chroma];
}

function convergesQuickly(l: number, a: number, b: number): ReturnType<typeof labToMhvc> | null {
  try {
    return labToMhvc(l, a, b, THRESHOLD, 60, 'error', 0.8);
  } catch {
    return null;
  }
}
