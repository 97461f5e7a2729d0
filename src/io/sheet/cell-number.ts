/** A cell without a value: empty, or a dash as people write one. */
export const isBlank = (cell: string): boolean => /^\s*(?:[-\u2012-\u2015]\s*)?$/.test(cell);

/** What may follow a number without changing it. */
const UNIT = `(?:%|°|º|GU|units?|deg(?:rees?)?|pts?)`;

const POINT = new RegExp(String.raw`^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d{1,3})?)\s*${UNIT}?\.?$`, 'i');
const COMMA = new RegExp(String.raw`^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d{1,3})?)\s*${UNIT}?\.?$`, 'i');

/**
 * The number in a cell, with a sign like %, ° or GU after it; with `comma` a decimal comma is one, too. NaN for anything else: words,
 * thousands marks, an empty cell.
 */
export function numberInCell(cell: string, comma: boolean): number {
  const found = (comma ? COMMA : POINT).exec(cell.trim().replace(/[\u2212\u2013]/, '-'));
  return found ? Number(found[1]!.replace(',', '.')) : Number.NaN;
}
