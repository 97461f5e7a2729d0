import { localeNow } from './spoken';

/** Digits are grouped and parted alike in the US and the UK. */
const LOCALE = 'en-US';
const MINUS = '\u2212';

const whole = new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 0 });
const tenth = new Intl.NumberFormat(LOCALE, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
const hundredth = new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 2 });
const given = new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 4 });
const lists = {
  'en-US': new Intl.ListFormat('en-US', { type: 'conjunction' }),
  'en-GB': new Intl.ListFormat('en-GB', { type: 'conjunction' }),
};

const signed = (text: string) => (/^-0(\.0)?$/.test(text) ? text.slice(1) : text.replace('-', MINUS));

/** A number without decimals, with a true minus sign. */
export const integer = (value: number): string => signed(whole.format(value));

/** A number with one decimal, with a true minus sign. */
export const decimal = (value: number): string => signed(tenth.format(value));

/** A number as short as it can be said, two decimals at most. */
export const brief = (value: number): string => signed(hundredth.format(value));

/** A number as it was given, four decimals at most. */
export const exact = (value: number): string => signed(given.format(value));

/** A share 0-1 in percent. */
export const percent = (share: number): string => `${whole.format(share * 100)}%`;

/** A share of what is seen: what is there, however little, is not none. */
export const seenShare = (share: number): string => (share > 0 && share < 0.005 ? 'under 1%' : percent(share));

/** L*, a*, b* side by side. */
export const labText = (lab: readonly [number, number, number]): string =>
  `${decimal(lab[0])}, ${decimal(lab[1])}, ${decimal(lab[2])}`;

/** A screen color as style sheets write it. */
export const rgbText = ([r, g, b]: readonly [number, number, number]): string => `rgb(${r}, ${g}, ${b})`;

/** "a, b, and c"; in the UK "a, b and c". */
export const listed = (words: readonly string[]): string => lists[localeNow()].format(words);

/** First letter large, the rest as it is. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
