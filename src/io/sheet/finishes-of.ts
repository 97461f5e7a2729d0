import type { FinishClass } from '../../engine/finish/types';
import type { Problem } from '../../engine/result';
import { columnNotices } from './column-notices';
import { columnsOf } from './columns';
import { leadTimeNotice } from './lead-time-notice';
import { type Making, makeRow, type RowOutcome } from './make-row';
import { materialWords } from './material-words';
import { priceNotices } from './price-notices';
import { askedOf } from './questions-of';
import { readingOf } from './reading-of';
import { noIds } from './row-ids';
import { counted, sheetProblem } from './sheet-problem';
import type { ImportChoices, ImportOutcome, KeptRow, RefusedRow, Sheet } from './types';

/** How many rows are done. */
export interface ImportProgress {
  readonly done: number;
  readonly rows: number;
}

/** Rows between two looks at the clock: some ten milliseconds. */
const ROWS_AT_ONCE = 100;

/**
 * Makes finishes of the rows of a sheet, each kept with what has to be told of it or refused with its line, the reason and what to do; in
 * the order of the file. Nothing is guessed silently: where class or light and observer are missing the rows are refused and asked for
 * (`questions`), a missing gloss is that usual for the class, told and asked for. Yields every hundred rows, so that whoever runs
 * it can show how far it is, and stop by not going on.
 */
export function* makingFinishes(sheet: Sheet, choices: ImportChoices): Generator<ImportProgress, ImportOutcome> {
  const columns = columnsOf(sheet, choices);
  const { reading, notices, scaleOpen } = readingOf(sheet, columns, choices);
  const making: Making = { reading, choices, ids: noIds(), file: sheet.file };
  const kept: KeptRow[] = [];
  const refused: RefusedRow[] = [...sheet.refused];
  const told = { usualTexture: 0 };
  const asked = { class: 0, conditions: 0, gloss: 0, classes: new Set<FinishClass>() };
  const materials = materialWords(columns);
  for (const [i, row] of sheet.rows.entries()) {
    if (i % ROWS_AT_ONCE === 0) yield { done: i, rows: sheet.rows.length };
    if (row.cells.every((cell) => cell === '')) continue;
    const made: RowOutcome = makeRow(making, row, i);
    materials.add(row, made.kind);
    if (made.needs.class) asked.class++;
    if (made.needs.conditions) asked.conditions++;
    if (made.needs.gloss) asked.gloss++;
    if (made.needs.gloss && made.kind) asked.classes.add(made.kind);
    if (made.usualTexture) told.usualTexture++;
    if (made.kept) kept.push(made.kept);
    else refused.push(made.refused);
  }
  refused.sort((a, b) => a.row - b.row);
  return {
    kept,
    refused,
    words: materials.list(),
    questions: askedOf(sheet, asked, refused, scaleOpen, reading.said),
    notices: [
      ...columnNotices(sheet, choices),
      ...notices,
      ...priceNotices(columns, sheet.rows, sheet.file),
      ...leadTimeNotice(columns, sheet.rows, sheet.file),
      ...(told.usualTexture > 0 ? [usualTexture(told.usualTexture, sheet.file)] : []),
    ],
  };
}

/** The same in one go. */
export function finishesOf(sheet: Sheet, choices: ImportChoices): ImportOutcome {
  const steps = makingFinishes(sheet, choices);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const usualTexture = (rows: number, file: string): Problem =>
  sheetProblem(
    'usual-for-class',
    `${counted(rows, 'finish', 'finishes')} of one plain color; how pieces differ is taken as usual for the class.`,
    'Change it on the finish, where it matters.',
    file,
  );
