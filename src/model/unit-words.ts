import { type LengthUnit, lengthText, lengthWords, MM_PER_INCH } from './length-text';

/**
 * Lengths, areas, light and weights of sentences, which are written in metric units, in US ones where inches are chosen. Factors are exact: 1 ft =
 * 0.3048 m, 1 lb = 0.45359237 kg (NIST SP 811, appendix B); 1 fc = 1 lm/ft2. Temperatures of light stay in kelvin.
 */
export const M_PER_FOOT = 0.3048;
const KG_PER_POUND = 0.45359237;
/** Of a U.S. gallon, exactly: 231 cubic inches. */
export const L_PER_GALLON = 3.785411784;
const FEET2_PER_M2 = 1 / M_PER_FOOT ** 2;
const INCHES_PER_FOOT = 12;

/** Lux in foot-candles. */
export const footCandles = (lux: number): number => lux / FEET2_PER_M2;

const NUMBER = String.raw`\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?`;
const START = String.raw`(?<![\p{L}\p{N}_.,/-])`;
const END = String.raw`(?![\p{L}\p{N}_/*\u00b2])`;

interface Rule {
  readonly sign: string;
  readonly inUs: (value: number) => string;
  /** The unit as it is written after a number. */
  readonly unit: string;
}

const RULES: readonly Rule[] = [
  { sign: 'mm', inUs: (mm) => lengthText(mm, 'in'), unit: 'in' },
  { sign: 'cm', inUs: (cm) => lengthText(10 * cm, 'in'), unit: 'in' },
  { sign: 'm', inUs: feetText, unit: '' },
  {
    sign: '(?:m2|m\u00b2) per liter',
    inUs: (spread) => figures(spread * FEET2_PER_M2 * L_PER_GALLON),
    unit: 'sq ft per gallon',
  },
  { sign: 'kg per liter', inUs: (kg) => figures((kg / KG_PER_POUND) * L_PER_GALLON), unit: 'lb per gallon' },
  { sign: 'L', inUs: (liters) => figures(liters / L_PER_GALLON), unit: 'gal' },
  { sign: '(?:m2|m\u00b2)', inUs: (m2) => figures(m2 * FEET2_PER_M2), unit: 'sq ft' },
  { sign: 'lx', inUs: (lux) => figures(footCandles(lux)), unit: 'fc' },
  { sign: 'lux', inUs: (lux) => figures(footCandles(lux)), unit: 'foot-candles' },
  { sign: 'lm/m', inUs: (lm) => figures(lm * M_PER_FOOT), unit: 'lm/ft' },
  { sign: '(?:kg/m2|kg/m\u00b2)', inUs: (kg) => figures(kg / KG_PER_POUND / FEET2_PER_M2), unit: 'lb/ft\u00b2' },
  { sign: 'kg', inUs: (kg) => figures(kg / KG_PER_POUND), unit: 'lb' },
];

/** Numbers joined by "to", "by", a cross or "and" share the unit that stands after the last. */
const PATTERNS = RULES.map(({ sign, inUs, unit }) => ({
  pattern: new RegExp(`${START}((?:(?:${NUMBER}) (?:to|by|and|\u00d7) )*)(${NUMBER})([ \u00a0])${sign}${END}`, 'gu'),
  inUs,
  unit,
}));

/** What says both already: "381 mm (15 in)", "30 in (762 mm)". */
const BOTH = new RegExp(String.raw`(?:${NUMBER}) mm \((${NUMBER}(?: \d+/\d+)?) in\)`, 'g');
const INCHES_FIRST = new RegExp(String.raw`(${NUMBER}(?: \d+/\d+)?) in \((?:${NUMBER}) mm\)`, 'g');
/** What the model says of a US kitchen, where pounds are usual. */
const POUNDS_PER_FOOT2 = new RegExp(`${START}(${NUMBER}) lb/ft\u00b2`, 'gu');
const ANY = /\d[ \u00a0](?:L|mm|cm|m|m2|m\u00b2|lx|lux|lm\/m|kg|kg\/m2|kg\/m\u00b2)(?![\p{L}\p{N}_])/u;

/** A sentence with its measures in the unit chosen. */
export function inUnit(text: string, unit: LengthUnit): string {
  if (unit === 'mm')
    return text.replace(
      POUNDS_PER_FOOT2,
      (_, lb: string) => `${figures((numberOf(lb) * KG_PER_POUND) / M_PER_FOOT ** 2)} kg/m\u00b2`,
    );
  if (!ANY.test(text)) return text;
  let out = text.replace(BOTH, '$1 in').replace(INCHES_FIRST, '$1 in');
  for (const rule of PATTERNS) {
    out = out.replace(rule.pattern, (_, before: string, last: string, space: string) => {
      const rest = before.replace(new RegExp(NUMBER, 'g'), (one) => rule.inUs(numberOf(one)));
      return `${rest}${rule.inUs(numberOf(last))}${rule.unit === '' ? '' : `${space}${rule.unit}`}`;
    });
  }
  return out;
}

const numberOf = (digits: string): number => Number(digits.replaceAll(',', ''));

/** Whole numbers from 10 on, tenths below; what is there is not none. */
function figures(value: number): string {
  const digits = value >= 9.95 ? 0 : value >= 0.095 || value === 0 ? 1 : 2;
  return new Intl.NumberFormat('en-US', { maximumFractionDigits: digits }).format(value);
}

/** From here on a length in meters is a rough one. */
const FEET_ALONE = 20;

/** Meters in feet and inches: "9 ft 10 in"; below two feet in inches. */
function feetText(m: number): string {
  const mm = m * 1000;
  const inches = Math.round(mm / MM_PER_INCH);
  if (inches < 2 * INCHES_PER_FOOT) return lengthWords(mm, 'in');
  if (inches >= FEET_ALONE * INCHES_PER_FOOT) return `${figures(inches / INCHES_PER_FOOT)} ft`;
  const rest = inches % INCHES_PER_FOOT;
  return `${Math.floor(inches / INCHES_PER_FOOT)} ft${rest === 0 ? '' : ` ${rest} in`}`;
}
