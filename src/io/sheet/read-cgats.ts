import { failure, type Problem, type Result, success } from '../../engine/result';
import { placeIn } from '../place-problem';
import { cgatsColumns } from './cgats-columns';
import { cgatsConditions } from './cgats-conditions';
import { type CgatsPart, cgatsPart } from './cgats-part';
import {
  decimalComma,
  noColors,
  noRows,
  noTable,
  rgbOnly,
  tablesJoined,
  tooMany,
  unfinished,
  wrongFields,
  wrongSets,
} from './cgats-problems';
import { type CgatsRow, cgatsRows } from './cgats-rows';
import { type CgatsTable, cgatsTables } from './cgats-tables';
import { MOST_ROWS } from './cut-rows';
import { joinTables } from './join-tables';
import { CONDITIONS_BEST_FIRST, type MeasurementCondition } from './measurement-condition';
import { mergeTables } from './merge-tables';
import { scaleNotice, scaleOf } from './reflectance-scale';
import type { Field, RefusedRow, Sheet, SheetConditions } from './types';

const MOST_FIELDS = 2000;
const MOST_TABLES = 200;

const COMMA_NUMBER = /^[+-]?\d*,\d+$/;

interface ReadTable {
  readonly part: CgatsPart;
  readonly said: SheetConditions;
  readonly named: 'factor' | 'percent' | null;
  readonly line: number;
  readonly condition: MeasurementCondition | null;
}

/**
 * Reads a CGATS.17 / ISO 28178 text as a sheet: the rows of its tables one after another, with the columns of all. Tables without
 * a color are left out, rows that cannot be trusted are refused (see `cgatsRows`), both with their line.
 * Fails where no table has rows: 'no-table', 'no-rows', 'no-colors', 'device-colors-only', 'unfinished-table', 'too-many-rows'.
 */
export function readCgats(text: string, file: string): Result<Sheet> {
  const tables = cgatsTables(text);
  if (!tables) return failure(tooMany('a million lines, 16 million values or 4 million letters in a line', 1, file));
  if (tables.length === 0) return failure(noTable(file));
  if (tables.length > MOST_TABLES) return failure(tooMany(`${MOST_TABLES} tables`, tables[MOST_TABLES]!.line, file));
  const notices: Problem[] = [];
  const lost: Problem[] = [];
  const read: ReadTable[] = [];
  let said: SheetConditions = {};
  let condition: MeasurementCondition | null = null;
  let rows = 0;
  for (const table of tables) {
    // What a table does not say holds on from the one before.
    const conditions = cgatsConditions(table.keywords, file);
    said = { ...said, ...conditions.said };
    condition = conditions.condition ?? condition;
    notices.push(...conditions.notices);
    const made = readTable(table, said, rows + 1, notices, file);
    if (!('part' in made)) {
      lost.push(made);
      continue;
    }
    read.push({ ...made, condition });
    rows += made.part.rows.length + made.part.refused.length;
    if (rows > MOST_ROWS) return failure(tooMany(`${MOST_ROWS} rows`, table.line, file));
  }
  if (read.length === 0) return failure(lost[0]!, lost.slice(1));
  notices.unshift(...lost);
  const refused = read.flatMap(({ part }) => refusedRows(part));
  if (rows === 0) return failure(noRows(tables[0]!.line, file), notices);
  const ordered = read.toSorted((a, b) => rankOf(a) - rankOf(b));
  const parts = (tables: readonly ReadTable[]) => tables.map((one) => withConditions(one.part, one.said, read));
  const joined = refused.length === 0 ? joinTables(parts(ordered), isAlike(read)) : null;
  if (joined) notices.push(tablesJoined(ordered, file));
  const merged = joined ?? mergeTables(parts(read));
  if (!merged) return failure(tooMany('16 million cells', tables[0]!.line, file));
  const { columns, rows: sheetRows } = merged;
  const greatest = read.flatMap(({ part }) => part.greatest);
  const named = read.find((one) => one.named)?.named ?? null;
  const scale = scaleOf(greatest, named);
  if (scale) notices.push(scaleNotice(scale, greatest, named, file));
  const comma = sheetRows.find(({ cells }) => cells.some((cell) => COMMA_NUMBER.test(cell)));
  if (comma) notices.push(decimalComma(comma.line, file));
  const saidByAll = { ...(isAlike(read) ? read[0]!.said : {}), ...(scale && { scale }) };
  return success({
    format: 'cgats',
    file,
    columns,
    rows: sheetRows,
    said: saidByAll,
    decimalComma: true,
    refused,
    notices: unlike(notices),
  });
}

function readTable(
  table: CgatsTable,
  said: SheetConditions,
  firstRow: number,
  notices: Problem[],
  file: string,
): Omit<ReadTable, 'condition'> | Problem {
  const { line, fields, missing, isCut } = table;
  if (missing === 'END_DATA_FORMAT' || missing === 'BEGIN_DATA' || fields.length === 0) {
    return unfinished(line, missing ?? 'BEGIN_DATA_FORMAT', file);
  }
  if (fields.length > MOST_FIELDS) {
    return tooMany(`${MOST_FIELDS} fields`, line, file);
  }
  const columns = cgatsColumns(fields);
  if (columns.colors === 'none') {
    return noColors(line, fields, file);
  }
  const sets = countTold(table, 'NUMBER_OF_SETS');
  const rows = cgatsRows(table.data, fields.length, sets?.count ?? null, file);
  const part = cgatsPart(fields, columns, isCut ? withoutCut(rows, file) : rows, firstRow, file);
  const whole = rows.filter(({ problem }) => !problem).length;
  if (sets && sets.count !== whole) notices.push(wrongSets(sets, whole, file));
  const told = countTold(table, 'NUMBER_OF_FIELDS');
  if (told && told.count !== fields.length) notices.push(wrongFields(told, fields.length, file));
  if (missing) notices.push(unfinished(line, missing, file));
  if (columns.colors === 'rgb') notices.push(rgbOnly(line, file));
  return { part, said, named: columns.named, line };
}

/** Of a table that breaks off the last value may be cut in two, which nothing shows. */
function withoutCut(rows: readonly CgatsRow[], file: string): readonly CgatsRow[] {
  const last = rows.at(-1);
  if (!last || last.problem) return rows;
  const problem: Problem = {
    code: 'cut-off',
    text: `Line ${last.line}: the text ends within this row: its last value may be cut off.`,
    at: placeIn(file, last.line),
    remedy: 'Fetch or export the file again.',
  };
  return [...rows.slice(0, -1), { ...last, problem }];
}

function refusedRows({ columns, refused }: CgatsPart): readonly RefusedRow[] {
  const place = (field: Field) => columns.findIndex((column) => column.field === field);
  const [code, name] = [place('code'), place('name')];
  return refused.map(({ row, cells, problem }) => ({
    row,
    code: cells[code] || null,
    name: cells[name] || null,
    problem: problem!,
  }));
}

/** Where tables hold the same samples, those of the better measurement condition count, then the first. */
const rankOf = ({ condition }: ReadTable): number => (condition ? CONDITIONS_BEST_FIRST.indexOf(condition) : 1);

const isAlike = (read: readonly ReadTable[]): boolean =>
  read.every(
    ({ said }) => JSON.stringify(Object.entries(said).sort()) === JSON.stringify(Object.entries(read[0]!.said).sort()),
  );

/** Where tables differ in what they say, each row says it. */
function withConditions(part: CgatsPart, said: SheetConditions, read: readonly ReadTable[]): CgatsPart {
  if (isAlike(read)) return part;
  const added: readonly (readonly [Field, string])[] = [
    ['illuminant', said.illuminant ?? ''],
    ['observer_deg', said.observer_deg ? String(said.observer_deg) : ''],
    ['specular', said.specular ?? ''],
  ];
  return {
    ...part,
    columns: [...part.columns, ...added.map(([field]) => ({ heading: '', field }))],
    rows: part.rows.map((row) => ({ ...row, cells: [...row.cells, ...added.map(([, cell]) => cell)] })),
  };
}

/** The last number told before a table by a keyword. */
function countTold({ keywords }: CgatsTable, name: string): { readonly line: number; readonly count: number } | null {
  const told = keywords.findLast((one) => one.name === name);
  return told && /^\d+$/.test(told.value) ? { line: told.line, count: Number(told.value) } : null;
}

/** Tables that repeat a keyword repeat its notice. */
const unlike = (notices: readonly Problem[]): readonly Problem[] =>
  notices.filter(({ code, text }, i) => notices.findIndex((one) => one.code === code && one.text === text) === i);
