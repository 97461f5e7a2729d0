/** One line of a text table, cut into its cells. */
export interface TableLine {
  readonly line: number;
  readonly cells: readonly string[];
}

const SPACES = ' ';

/** What may stand between cells. Spaces come last: they may stand inside of cells, too. */
export const SEPARATORS = [';', '\t', '|', ',', SPACES] as const;

/**
 * The lines of a text table: comma, semicolon, tab, bar or spaces between cells, found out from the text as a whole; cells
 * may stand in double quotes. Empty lines and lines that start with # are left out, so is what follows a # after numbers.
 */
export function tableLines(text: string): readonly TableLine[] {
  const lines = contentsOf(text).map(({ line, content }) => ({ line, content: withoutRemark(content) }));
  const mark = separatorOf(lines.map(({ content }) => content));
  return lines.map(({ line, content }) => ({ line, cells: cellsOf(content, mark) }));
}

/** The lines with a separator that is known; a # inside of a line is kept: it may stand in a name. */
export const linesSeparatedBy = (text: string, mark: (typeof SEPARATORS)[number]): readonly TableLine[] =>
  contentsOf(text).map(({ line, content }) => ({ line, cells: cellsOf(content, mark) }));

/** Lines that hold something, without a byte order mark. */
const contentsOf = (text: string): readonly { readonly line: number; readonly content: string }[] =>
  text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    // A tab at the start or end is an empty cell.
    .map((raw, i) => ({ line: i + 1, content: raw.replace(/^ +| +$/g, '') }))
    .filter(({ content }) => content.trim() !== '' && !content.trim().startsWith('#'));

/** The number in a cell, with a decimal point or a decimal comma; NaN for anything else, an empty cell too. */
export function cellNumber(cell: string): number {
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(cell) ? Number(cell.replace(',', '.')) : Number.NaN;
}

/** A heading may hold a #; after numbers it starts a remark. */
function withoutRemark(raw: string): string {
  const content = raw.trim();
  const remark = /^[\d.+-]/.test(content) ? content.indexOf('#') : -1;
  return remark < 0 ? content : content.slice(0, remark).trim();
}

/** What stands in most lines separates. A comma separates only where nothing else does: it may be a decimal comma. */
function separatorOf(lines: readonly string[]): string {
  const inMost = (has: (line: string) => boolean) => lines.filter(has).length * 2 > lines.length;
  const mark = [';', '\t', '|'].find((one) => inMost((line) => line.includes(one)));
  if (mark) return mark;
  return inMost(isSpaced) ? SPACES : ',';
}

/** Two or more words, none of which starts or ends with the comma of a list. */
function isSpaced(line: string): boolean {
  const words = line.split(/\s+/);
  return words.length > 1 && words.every((word) => !word.startsWith(',') && !word.endsWith(','));
}

function cellsOf(line: string, mark: string): readonly string[] {
  if (mark === SPACES) return (line.match(/"(?:[^"]|"")*"|\S+/g) ?? []).map(unquoted);
  const cells: string[] = [];
  let from = 0;
  let quoted = false;
  for (let i = 0; i <= line.length; i++) {
    if (line[i] === '"') quoted = !quoted;
    if (i < line.length && (quoted || line[i] !== mark)) continue;
    cells.push(unquoted(line.slice(from, i).trim()));
    from = i + 1;
  }
  return cells;
}

const unquoted = (cell: string): string =>
  cell.length > 1 && cell.startsWith('"') && cell.endsWith('"') ? cell.slice(1, -1).replaceAll('""', '"').trim() : cell;
