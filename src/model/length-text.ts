import type { Region } from './kitchen';

/** What lengths are shown and read in. The document is in mm whatever is chosen. */
export type LengthUnit = 'mm' | 'in';

/** By the inch's definition, exactly. */
export const MM_PER_INCH = 25.4;
const INCHES_PER_FOOT = 12;
/** Inches are shown to sixteenths, as rulers and drawings have them. */
const SIXTEENTHS = 16;

/** The unit of a region's drawings. */
export const unitOfRegion = (region: Region): LengthUnit => (region === 'us' ? 'in' : 'mm');

/** A length as its field shows it, without the unit: `914` or `36 1/2`. Millimeters to tenths, inches to sixteenths. */
export function lengthText(mm: number, unit: LengthUnit): string {
  if (unit === 'mm') return String(Math.round(mm * 10) / 10);
  const sixteenths = Math.round((Math.abs(mm) / MM_PER_INCH) * SIXTEENTHS);
  const sign = mm < 0 && sixteenths > 0 ? '-' : '';
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  const rest = sixteenths % SIXTEENTHS;
  if (rest === 0) return `${sign}${whole}`;
  const shared = commonFactor(rest, SIXTEENTHS);
  const fraction = `${rest / shared}/${SIXTEENTHS / shared}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}

/** A length in a sentence: `914 mm`, `36 1/2 in`. */
export const lengthWords = (mm: number, unit: LengthUnit): string => `${lengthText(mm, unit)} ${unit}`;

/**
 * What may stand in a field at all, as its hint says it: in inches at whole ones, or at quarters where the range is small, rounded inward
 * so that what is said may be typed; at sixteenths where even that leaves nothing.
 */
export function boundsText([least, most]: readonly [number, number], unit: LengthUnit): readonly [string, string] {
  if (unit === 'in') {
    for (const by of [1, 1 / 4].slice(most - least < WIDE_MM ? 1 : 0)) {
      // What is a whole number of parts stays it, whatever is lost in division.
      const parts = (mm: number) => Math.round((mm / MM_PER_INCH / by) * 1e6) / 1e6;
      const [from, to] = [Math.ceil(parts(least)), Math.floor(parts(most))];
      if (from < to) return [lengthText(from * by * MM_PER_INCH, unit), lengthText(to * by * MM_PER_INCH, unit)];
    }
  }
  return [lengthText(least, unit), lengthText(most, unit)];
}

/** From such a range on nobody asks for parts of an inch, mm. */
const WIDE_MM = 24 * MM_PER_INCH;

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const METRIC = new RegExp(String.raw`^(${NUMBER}|\d{1,3},\d{3}) ?(mm|cm|m)$`);
const PLAIN = new RegExp(`^(${NUMBER})$`);
const INCHES = String.raw`(${NUMBER})(?:[ -]+(\d+)\/(\d+))?|(\d+)\/(\d+)`;
const IMPERIAL = new RegExp(`^(?:(${NUMBER}) ?(?:'|feet|foot|ft)(?:$|[ -]*))?(?:(?:${INCHES}) ?("|inches|inch|in)?)?$`);
/**
 * What somebody may mean who types a bare number that is no length allowed: `3.2` in a field of 1500 to 12000 mm is `3.2 m`. Null where it
 * says its unit, or is within the bounds, mm, in no other.
 */
export function meantLength(text: string, [least, most]: readonly [number, number], unit: LengthUnit): string | null {
  const plain = text.trim();
  if (!PLAIN.test(plain)) return null;
  for (const other of unit === 'mm' ? ['m', 'cm'] : ['ft', 'mm', 'cm', 'm']) {
    const mm = parseLength(`${plain} ${other}`, unit);
    if (mm !== null && mm >= least && mm <= most) return `${plain} ${other}`;
  }
  return null;
}

const MM_PER: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };

/**
 * A length as somebody types it, in mm to a tenth; null where it is none. Without a unit it is in `unit`. Understood are `914`,
 * `914 mm`, `91.4 cm`, `0.914 m`, `36`, `36 1/2`, `36-1/2"`, `36.5 in.`, `3' 0"`, `3 ft 1/2 in`. A comma parts decimals, or
 * thousands where three digits follow one to three and the unit is not the meter.
 */
export function parseLength(text: string, unit: LengthUnit): number | null {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[\u00bc-\u00be\u215b-\u215e]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/\u2044/g, '/')
    .replace(/[\u2033\u201c\u201d]|''/g, '"')
    .replace(/[\u2032\u2018\u2019]/g, "'")
    .replace(/[\u2010-\u2015]/g, '-')
    .replace(/[\s\u00a0]+/g, ' ')
    .replace(/(?<=[a-z])\.(?=[\s\d]|$)/g, '')
    .trim();
  const mm = lengthOf(plain, unit);
  return mm !== null && Number.isFinite(mm) ? tenth(mm) : null;
}

/** mm of a text in plain signs; not finite where it has more digits than a number holds. */
function lengthOf(plain: string, unit: LengthUnit): number | null {
  const metric = METRIC.exec(plain);
  if (metric) return numberOf(metric[1]!, metric[2] !== 'm') * MM_PER[metric[2]!]!;
  const only = PLAIN.exec(plain);
  if (only) return numberOf(only[1]!, true) * (unit === 'in' ? MM_PER_INCH : 1);
  const parts = plain === '' ? null : IMPERIAL.exec(plain);
  if (!parts) return null;
  const [, feet, inches, besideOver, besideUnder, loneOver, loneUnder, mark] = parts;
  const [over, under] = [besideOver ?? loneOver, besideUnder ?? loneUnder];
  // A bare fraction says nothing of its unit where millimeters are meant otherwise.
  if (unit === 'mm' && feet === undefined && mark === undefined) return null;
  if (under !== undefined && Number(under) === 0) return null;
  const whole = (feet === undefined ? 0 : numberOf(feet, true) * INCHES_PER_FOOT) + numberOf(inches ?? '0', true);
  return (whole + (over === undefined ? 0 : Number(over) / Number(under))) * MM_PER_INCH;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '\u00bc': '1/4',
  '\u00bd': '1/2',
  '\u00be': '3/4',
  '\u215b': '1/8',
  '\u215c': '3/8',
  '\u215d': '5/8',
  '\u215e': '7/8',
};

const numberOf = (digits: string, hasThousands: boolean): number =>
  Number(hasThousands && /^[1-9]\d{0,2},\d{3}$/.test(digits) ? digits.replace(',', '') : digits.replace(',', '.'));

const tenth = (mm: number): number => Math.round(mm * 10) / 10;
