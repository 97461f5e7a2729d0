/** What a text is, by its beginning. */
export type TextKind =
  | { readonly is: 'csv' | 'cgats' | 'cxf' }
  | { readonly is: 'other'; readonly what: string; readonly remedy: string };

const other = (what: string, remedy: string): TextKind => ({ is: 'other', what, remedy });

/** Enough for a prolog with comments and the keywords of a header. */
const LOOKED_AT = 4000;

const LOOKED_AT_KEYWORDS = 64_000;

const MODEL = 'A 3D model holds no list of finishes: choose a table (CSV).';

const OTHERS: readonly (readonly [start: RegExp, what: string, remedy: string])[] = [
  [/^\s*\{[\s\S]*"upstand-project"/, 'a project of this program', 'Open it as a project; its finishes come with it.'],
  [
    /^\s*\{[\s\S]*"upstand-library"/,
    'a library of this program',
    'Open it as a library: nothing has to be read into columns.',
  ],
  [/^\s*\{[\s\S]*"asset"/, 'a 3D model (glTF)', MODEL],
  [/^\s*[[{]\s*(?:["{[\]}]|$)/, 'JSON', 'Save the list as a table (CSV).'],
  [/^#usda /, 'a 3D scene (USD)', MODEL],
  [/^\s*(?:IESNA|IES:LM-63)/, 'the beam of a lamp (IES LM-63)', 'Open it as the beam of a lamp, where lamps are set.'],
  [/^\s*(?:<!doctype html|<html)/i, 'a web page', 'Save the table as CSV; a web page mixes it with other text.'],
  [/^\{\\rtf/, 'a text document (RTF)', 'Save the table as CSV.'],
  [/^%!PS/, 'a page for a printer (PostScript)', 'Ask for the table itself (CSV).'],
];

/**
 * CxF by its root element, other XML with it, as its reader says what is wrong; CGATS by its first word or its keywords; then what is no
 * list of finishes; all else counts as a table.
 */
export function kindOfText(text: string): TextKind {
  const start = text.slice(0, LOOKED_AT);
  for (const [pattern, what, remedy] of OTHERS) if (pattern.test(start)) return other(what, remedy);
  if (/^\s*<[?!a-z]/i.test(start)) return { is: 'cxf' };
  if (/^\s*(?:CGATS|ISO\s?28178|IT8|ECI|LGOROWLENGTH)/i.test(start)) return { is: 'cgats' };
  // Files of 1 nm steps declare each band before they come to that.
  const header = text.slice(0, LOOKED_AT_KEYWORDS);
  return { is: /^[ \t]*(?:BEGIN_DATA_FORMAT|NUMBER_OF_FIELDS|NUMBER_OF_SETS)\b/m.test(header) ? 'cgats' : 'csv' };
}
