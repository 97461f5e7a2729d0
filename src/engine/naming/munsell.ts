import { bradfordCToD65, bradfordD65ToC } from '../color/adapt';
import { labD65FromXyzD65, labFromXyz, xyzD65FromLabD65, xyzFromLab } from '../color/lab';
import type { Lab } from '../color/types';
import { C_2 } from '../color/whites';
import { failure, type Result, success } from '../result';
import { renotationForward, renotationInverse } from './renotation';

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

const three = new Float64Array(3);

/**
 * Munsell colour of a CIELAB colour under D65, 2 degrees; adapted to illuminant C by Bradford. L* is held inside 0-100.
 * Coordinates that are not finite, or so large that their tristimulus values are not, throw a RangeError.
 */
export function munsellFromLabD65(lab: Lab<'D65-2'>): Munsell {
  if (!writeMunsell(lab, three, 0)) throw new RangeError(`no Munsell color for L* ${lab.l}, a* ${lab.a}, b* ${lab.b}`);
  const [hue100, value, chroma] = [three[0]!, three[1]!, three[2]!];
  return { hue100, value, chroma, notation: munsellNotation(hue100, value, chroma) };
}

/** Writes hue on the circle of 100, value and chroma into `out` from `at` on; false, writing nothing, for what is no colour. */
export function writeMunsell(lab: Lab<'D65-2'>, out: Float64Array, at: number): boolean {
  // Both whites from our own tables: with slightly other ones our neutrals would get a chroma.
  const { l, a, b } = labFromXyz(bradfordD65ToC(xyzD65FromLabD65(lab)), C_2);
  if (!Number.isFinite(l + a + b)) return false;
  renotationInverse(l, a, b, out, at);
  return true;
}

/**
 * Printed notation with one decimal each, '4.1Y 9.2/1.3'; 'N 9.2' when the chroma rounds to 0.
 * `hue100` on the circle of 100; numbers that are not finite throw a RangeError.
 */
export function munsellNotation(hue100: number, value: number, chroma: number): string {
  if (!Number.isFinite(hue100 + value + chroma)) throw new RangeError(`not finite: ${hue100} ${value}/${chroma}`);
  if (chroma < 0.05) return `N ${value.toFixed(1)}`;
  // Hues run from 0.1 to 10.0 within a family: 0 is the 10 of the family before.
  const tenths = ((Math.round(hue100 * 10) % 1000) + 1000) % 1000 || 1000;
  const family = Math.ceil(tenths / 100) - 1;
  const hue = (tenths - family * 100) / 10;
  return `${hue.toFixed(1)}${HUE_FAMILIES[family]} ${value.toFixed(1)}/${chroma.toFixed(1)}`;
}

/**
 * CIELAB under D65, 2 degrees, of hue on the circle of 100, value (held inside 0-10) and chroma (0 and up).
 * Numbers that are not finite, or chromas too large to compute with, throw a RangeError.
 */
export function labD65FromHueValueChroma(hue100: number, value: number, chroma: number): Lab<'D65-2'> {
  if (!Number.isFinite(hue100 + value + chroma)) throw new RangeError(`not finite: ${hue100} ${value}/${chroma}`);
  renotationForward(hue100, value, chroma, three);
  const underC = { l: three[0]!, a: three[1]!, b: three[2]! };
  const lab = labD65FromXyzD65(bradfordCToD65(xyzFromLab<'C-2'>(underC, C_2)));
  if (!Number.isFinite(lab.l + lab.a + lab.b)) throw new RangeError(`no color has chroma ${chroma}`);
  return lab;
}

/** CIELAB under D65, 2 degrees, of a Munsell notation such as '5Y 8.5/2' or 'N 9.25/', adapted from illuminant C by Bradford. */
export function labD65FromMunsell(notation: string): Result<Lab<'D65-2'>> {
  const lab = labCFromMunsell(notation);
  return lab.ok ? success(labD65FromXyzD65(bradfordCToD65(xyzFromLab(lab.value, C_2)))) : lab;
}

/** CIELAB under illuminant C, 2 degrees, where the renotation is defined, of a Munsell notation such as '5Y 8.5/2' or 'N 9.25/'. */
export function labCFromMunsell(notation: string): Result<Lab<'C-2'>> {
  const read = parseMunsell(notation);
  if (!read.ok) return read;
  renotationForward(read.value.hue100, read.value.value, read.value.chroma, three);
  return success({ l: three[0]!, a: three[1]!, b: three[2]! });
}

/** A notation taken apart; `written` has its numbers digit by digit, without hue and chroma where it is a neutral. */
export interface MunsellParts {
  readonly hue100: number;
  readonly value: number;
  readonly chroma: number;
  readonly written: { readonly hue?: string; readonly value: string; readonly chroma?: string };
}

/** Hue, value and chroma of a Munsell notation such as '5Y 8.5/2' or 'N 9.25/'. Problem: 'munsell-not-understood'. */
export function parseMunsell(notation: string): Result<MunsellParts> {
  const text = notation.trim().toUpperCase();
  const neutral = /^N\s*(\d*\.?\d+)\s*\/?$/.exec(text);
  if (neutral && Number(neutral[1]) <= 10) {
    return success({ hue100: 0, value: Number(neutral[1]), chroma: 0, written: { value: neutral[1]! } });
  }
  const colored = /^(\d*\.?\d+)\s*(YR|GY|BG|PB|RP|R|Y|G|B|P)\s*(\d*\.?\d+)\s*\/\s*(\d*\.?\d+)$/.exec(text);
  const [hue, value, chroma] = [Number(colored?.[1]), Number(colored?.[3]), Number(colored?.[4])];
  if (!colored || hue > 10 || value > 10 || chroma > 50) {
    return failure({
      code: 'munsell-not-understood',
      text: `'${notation}' is not a Munsell notation.`,
      remedy: 'Write hue, value and chroma, for example 2.5Y 8.5/2, or N 9.25 for a neutral.',
    });
  }
  const hue100 = HUE_FAMILIES.indexOf(colored[2]!) * 10 + hue;
  return success({
    hue100,
    value,
    chroma,
    written: { hue: colored[1]!, value: colored[3]!, chroma: colored[4]! },
  });
}
