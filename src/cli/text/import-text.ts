import type { Problem } from '../../engine/result';
import { counted } from '../../io/sheet/sheet-problem';
import type { ImportOutcome, ImportQuestion, KeptRow, MaterialWord, RefusedRow } from '../../io/sheet/types';
import { wrapped } from './figures';

/** Rows that are printed at most. */
const MOST_ROWS = 20;

/** Plain data of an import. `code` of what is refused is that of the reason; `finish` the code the row gives. */
export const importRecord = (
  { kept, refused, questions, notices, words }: ImportOutcome,
  files: readonly string[],
) => ({
  kept: kept.map(({ row, finish, notices: told }) => ({ row, id: finish.id, finish, notices: told.map(said) })),
  refused: refused.map(({ row, code, name, problem }) => ({
    row,
    line: problem.at?.line ?? null,
    finish: code,
    name,
    code: problem.code,
    reason: problem.text,
    remedy: problem.remedy,
  })),
  questions,
  materials: words,
  notices: notices.map(said),
  written: files,
});

const said = ({ code, text, at }: Problem) => ({ code, text, ...(at?.line !== undefined && { line: at.line }) });

/** The same in words: how many were kept, what was refused, what is open. */
export function importText(outcome: ImportOutcome, headings: readonly string[], files: readonly string[]): string {
  const { kept, refused, questions, words } = outcome;
  const told = kept.filter(({ notices }) => notices.length > 0);
  return [
    `${kept.length} kept, ${refused.length} refused.`,
    ...(headings.length > 0 && kept.length === 0
      ? ['', 'Columns:', ...headings.slice(0, MOST_ROWS).map((one) => `  ${one}`)]
      : []),
    ...list('Refused:', refused, refusedLine),
    ...list('Open:', questions, questionLine),
    ...list('Materials, as understood (--class-of changes one):', words, wordLine),
    ...list('Kept, with remarks:', told, keptLine),
    ...(files.length > 0 ? ['', ...files.map((file) => `Written: ${file}`)] : []),
  ].join('\n');
}

function list<T>(title: string, items: readonly T[], lineOf: (item: T) => string): readonly string[] {
  if (items.length === 0) return [];
  const more = items.length > MOST_ROWS ? [`  ... and ${items.length - MOST_ROWS} more.`] : [];
  return ['', title, ...items.slice(0, MOST_ROWS).map((item) => wrapped(lineOf(item), '  ')), ...more];
}

function refusedLine({ row, code, name, problem }: RefusedRow): string {
  const place = problem.at?.line === undefined ? `row ${row}` : `line ${problem.at.line}`;
  const what = [code, name].filter((part) => part !== null).join(', ');
  return `${place}${what ? ` (${what})` : ''}: ${problem.text.replace(/^Line \d+: /, '')} ${problem.remedy}`;
}

const wordLine = ({ word, class: kind, rows }: MaterialWord): string =>
  `${word}: ${kind ?? 'not understood'} (${counted(rows, 'row')})`;

const keptLine = ({ finish, notices }: KeptRow): string => `${finish.id}: ${notices.map(({ text }) => text).join(' ')}`;

const ASKED: { readonly [A in ImportQuestion['about']]: string } = {
  class: 'without what it is made of: --class.',
  conditions: 'without the light and observer of its numbers: --illuminant, --observer.',
  gloss: 'without gloss: --gloss.',
  columns: 'without a color in any column that is understood: --column.',
  scale: 'with reflectances that could be factors or percent: --scale.',
};

function questionLine({ about, rows, usual }: ImportQuestion): string {
  const { conditions, gloss_gu } = usual ?? {};
  const hint = conditions
    ? ` Usual here: ${conditions.illuminant} and ${conditions.observer_deg}°.`
    : gloss_gu === undefined
      ? ''
      : ` Taken: what is usual, ${gloss_gu === 'usual' ? 'for the class of each' : `${gloss_gu} gloss units`}.`;
  return `${counted(rows, 'row')} ${ASKED[about]}${hint}`;
}
