import { lengthText, parseLength } from '../../model/length-text';
import { footCandles, M_PER_FOOT } from '../../model/unit-words';
import { FIELD } from '../words/daylight';
import { unitNow } from '../words/spoken';

/** How a number of the document stands in its field, in the units chosen, and how it is read there. */
export interface Measure {
  readonly unit: () => string;
  readonly text: (value: number) => string;
  /** Null where the text is no such number. */
  readonly read: (text: string) => number | null;
  /** What to type, where nothing can be made of a text. */
  readonly wrong: () => string;
}

const MINUS = '\u2212';

/** A number as people type it: with a point or a comma, and either minus; null where it is none. */
function numberIn(text: string): number | null {
  const plain = text.trim().replace(',', '.').replace(MINUS, '-');
  const number = Number(plain);
  return plain !== '' && Number.isFinite(number) ? number : null;
}

const isUs = (): boolean => unitNow() === 'in';

/** What the number is in US units, and back; typed and shown to tenths there. */
const inUs = (us: () => string, metric: () => string, factor: number): Measure => ({
  unit: () => (isUs() ? us() : metric()),
  text: (value) => String(isUs() ? tenth(value * factor) : value),
  read: (text) => {
    const number = numberIn(text);
    return number === null || !isUs() ? number : tenth(number / factor);
  },
  wrong: () => FIELD.notNumber,
});

const tenth = (value: number): number => Math.round(10 * value) / 10;

/** A length, mm. */
export const LENGTH: Measure = {
  unit: () => FIELD.lengthUnits[unitNow()],
  text: (mm) => lengthText(mm, unitNow()),
  read: (text) => parseLength(text, unitNow()),
  wrong: () => FIELD.notLength[unitNow()],
};

/** Light that falls, lx. */
export const LUX: Measure = inUs(
  () => FIELD.fc,
  () => FIELD.lx,
  footCandles(1),
);

/** Light of a strip by its length, lm/m. */
export const LUMENS_PER_M: Measure = inUs(
  () => FIELD.lmPerFt,
  () => FIELD.lmPerM,
  M_PER_FOOT,
);

/** A plain number. */
export const PLAIN: Measure = { unit: () => '', text: String, read: numberIn, wrong: () => FIELD.notNumber };
