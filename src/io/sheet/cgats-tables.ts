import { type CgatsWord, linesOf, wordsOfLine } from '../cgats-words';
import { MOST_CELLS } from './merge-tables';

/** A keyword outside of tables with what stands after it on its line. */
export interface CgatsKeyword {
  readonly line: number;
  /** In capitals. */
  readonly name: string;
  readonly value: string;
}

/** The values of data that stand on one line. */
export interface DataLine {
  readonly line: number;
  readonly cells: readonly string[];
  /** A quote is never closed on it. */
  readonly isOpen: boolean;
  /** The line as it stands, where it has tabs and nothing but data. */
  readonly tabbed?: string;
}

export interface CgatsTable {
  /** Line of BEGIN_DATA_FORMAT, or of BEGIN_DATA where the format is that of the table before. */
  readonly line: number;
  /** Those before the table and after the one before it. */
  readonly keywords: readonly CgatsKeyword[];
  readonly fields: readonly string[];
  readonly data: readonly DataLine[];
  /** What the text lacks of it; null where it is whole. */
  readonly missing: 'END_DATA_FORMAT' | 'BEGIN_DATA' | 'END_DATA' | null;
  /** The text ends within a line of it. */
  readonly isCut: boolean;
}

/** No header says more; more data lines than this are not 100,000 rows, wrapped as they may be. */
const MOST_KEYWORDS = 10_000;
const MOST_LINES = 1e6;
const MOST_LETTERS_IN_LINE = 4e6;

type Part = 'keywords' | 'format' | 'data';

const MARKS: Readonly<Record<string, Part>> = {
  BEGIN_DATA_FORMAT: 'format',
  END_DATA_FORMAT: 'keywords',
  BEGIN_DATA: 'data',
  END_DATA: 'keywords',
};

/**
 * Takes a CGATS text apart into its tables, as they stand: counts and rows are for others to check. Null where it has more data than
 * can be kept.
 */
export function cgatsTables(text: string): readonly CgatsTable[] | null {
  const tables: CgatsTable[] = [];
  let part = 'keywords' as Part;
  let keywords: CgatsKeyword[] = [];
  let format: { line: number; readonly fields: string[]; isClosed: boolean } | null = null;
  let data: DataLine[] = [];
  let words: CgatsWord[] = [];
  let line = 0;
  let began = 0;
  let lines = 0;
  let cells = 0;

  const finish = (missing: CgatsTable['missing'], isCut = false) => {
    const fields = format?.fields ?? tables.at(-1)?.fields ?? [];
    tables.push({ line: format?.line ?? began, keywords, fields, data, missing, isCut });
    keywords = [];
    format = null;
    data = [];
  };
  /** What was gathered up to a mark or the end of the line belongs to the part it stands in. */
  const place = (tabbed?: string) => {
    if (words.length === 0) return;
    if (part === 'data') {
      lines++;
      cells += words.length;
      data.push({
        line,
        cells: words.map(({ text: cell }) => cell),
        isOpen: words.at(-1)?.open === true,
        ...(tabbed !== undefined && { tabbed }),
      });
    } else if (part === 'format') for (const { text: field } of words) format?.fields.push(field);
    else if (keywords.length < MOST_KEYWORDS) keywords.push(keywordOf(words));
    words = [];
  };
  const pass = (mark: string) => {
    if (mark === 'BEGIN_DATA_FORMAT') {
      if (part === 'data') finish('END_DATA');
      else if (format) finish(format.isClosed ? 'BEGIN_DATA' : 'END_DATA_FORMAT');
      format = { line, fields: [], isClosed: false };
    }
    if (mark === 'END_DATA_FORMAT' && format) format.isClosed = true;
    if (mark === 'BEGIN_DATA' && part === 'data') finish('END_DATA');
    if (mark === 'BEGIN_DATA') began = line;
    if (mark === 'END_DATA' && part === 'data') finish(null);
    part = MARKS[mark]!;
  };

  for (const raw of linesOf(text)) {
    line++;
    if (lines > MOST_LINES || cells > MOST_CELLS || raw.length > MOST_LETTERS_IN_LINE) return null;
    let isMarked = false;
    for (const word of wordsOfLine(raw, line)) {
      const mark = word.quoted ? '' : word.text.toUpperCase();
      if (!Object.hasOwn(MARKS, mark)) {
        words.push(word);
        continue;
      }
      place();
      pass(mark);
      isMarked = true;
    }
    place(!isMarked && part === 'data' && raw.includes('\t') ? raw : undefined);
  }
  if (part === 'data') finish('END_DATA', !/[\r\n]\s*$/.test(text.slice(-100)));
  else if (format) finish((format as { isClosed: boolean }).isClosed ? 'BEGIN_DATA' : 'END_DATA_FORMAT');
  return tables;
}

const keywordOf = ([first, ...rest]: readonly CgatsWord[]): CgatsKeyword => ({
  line: first!.line,
  name: first!.text.toUpperCase(),
  value: rest.map(({ text }) => text).join(' '),
});
