/** Characters that show nothing, break a line of a list, or turn the order of what follows (bidi controls, UAX 9); joiners stay. */
const UNSEEN = /(?![\t\n\r\u200c\u200d])[\p{Cc}\p{Cf}\u2028\u2029]/gu;
const HAS_UNSEEN = new RegExp(UNSEEN.source, 'u');

/** A half of a character that has two, alone. */
const HALF = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

/** What a spreadsheet takes for a formula; wide forms are taken for it in some countries. */
const FORMULA = /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/;

/** The apostrophe that this program and others put before such a text. */
const GUARDED = /^'(?='*[=+\-@\t\r\uff1d\uff0b\uff0d\uff20])/;

/**
 * The same within a text: where a spreadsheet divides cells at semicolons (in much of Europe) or lines without regard to quotation marks,
 * what stands behind one begins a cell.
 */
const FORMULA_WITHIN = /([;\t\r\n]["\s]*)(?='*[=+\-@\uff1d\uff0b\uff0d\uff20])/g;
const GUARDED_WITHIN = /([;\t\r\n]["\s]*)'(?='*[=+\-@\uff1d\uff0b\uff0d\uff20])/g;

/** Text of a cell as one line without what cannot be seen. */
export interface PlainText {
  readonly text: string;
  /** It begins as a formula does. */
  readonly isFormula: boolean;
  /** Something that cannot be seen was taken out. */
  readonly isCleaned: boolean;
}

/** Text of a cell as it is kept: nothing is evaluated, unseen characters are taken out, spaces and line breaks are one space. */
export function plainText(cell: string): PlainText {
  const unguarded = cell.replace(GUARDED, '').replace(GUARDED_WITHIN, '$1');
  const isCleaned = HAS_UNSEEN.test(unguarded);
  const seen = isCleaned ? unguarded.replace(UNSEEN, '') : unguarded;
  return {
    text: seen.replace(HALF, '\ufffd').replace(/\s+/g, ' ').trim(),
    isFormula: FORMULA.test(cell),
    isCleaned,
  };
}

/** Text for a cell of a table that a spreadsheet may open: with an apostrophe wherever it would be taken for a formula. */
export function guardedText(text: string): string {
  const within = text.replace(FORMULA_WITHIN, "$1'");
  return FORMULA.test(text) || GUARDED.test(text) ? `'${within}` : within;
}
