/** Control characters but for tabs and line breaks, and what turns the order of a text (bidi controls, UAX 9). */
const UNPRINTABLE = /(?![\t\n])[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;

/** A text that does nothing to a terminal but stand there: names in files can hold commands to it. JSON stays the same JSON. */
export const printable = (text: string): string =>
  text.replace(UNPRINTABLE, (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`);
