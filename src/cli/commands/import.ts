import { basename } from 'node:path';
import { FINISH_CLASSES } from '../../engine/finish/types';
import { failure, type Result, success } from '../../engine/result';
import { libraryText } from '../../io/library-file';
import { writeCsv } from '../../io/sheet/write-csv';
import { finishNames } from '../../model/given-names';
import { newLibrary } from '../../model/library';
import type { Finish } from '../../model/project';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { importChoices } from '../import-choices';
import { openRange } from '../open-range';
import { importRecord, importText } from '../text/import-text';
import { checkApart, checkWritable, writeText } from '../write-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  class: { type: 'string' },
  gloss: { type: 'string' },
  illuminant: { type: 'string' },
  observer: { type: 'string' },
  provenance: { type: 'string' },
  scale: { type: 'string' },
  column: { type: 'string', multiple: true },
  'class-of': { type: 'string', multiple: true },
  name: { type: 'string' },
  out: { type: 'string' },
  csv: { type: 'string' },
} as const;

/** `import FILE`: finishes from a table, CGATS, CxF3, ICC or library, row by row. */
export const importFinishes: Command = {
  name: 'import',
  usage:
    'import FILE [--class CLASS] [--class-of WORD=CLASS ...] [--gloss GU] [--illuminant ID --observer 2|10] [--provenance HOW] [--scale factor|percent] ' +
    '[--column N=FIELD ...] [--name NAME] [--out LIBRARY.json] [--csv FILE] [--json]',
  summary:
    'Finishes from a table (CSV), CGATS, CxF3, ICC named colors, a library or a project: what is kept, what is refused and why, and what ' +
    `the file leaves open. --class (${FINISH_CLASSES.join(', ')}), --gloss, light and observer hold for rows that say none; ` +
    '--class-of says what a word of the file for a material means (Feinsteinzeug=porcelain); ' +
    '--column says what a column is, by its number (2=name, 3=nm:400, 4=none). --out and --csv write what was kept.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const choices = importChoices(values);
    if (!choices.ok) return choices;
    for (const target of [values.out, values.csv]) {
      const writable = target === undefined ? success(null) : checkWritable(target, file);
      if (!writable.ok) return writable;
    }
    const { out, csv } = values;
    const apart = out === undefined || csv === undefined ? success(null) : checkApart(csv, out);
    if (!apart.ok) return apart;
    const opened = openRange(file, choices.value);
    if (!opened.ok) return opened;
    const { outcome, headings, library } = opened.value;
    const finishes = outcome.kept.map(({ finish }) => finish);
    const wrote = finishes.length > 0 ? write(library ?? called(file), finishes, values) : success([], []);
    if (!wrote.ok) return wrote;
    return success({
      json: importRecord(outcome, wrote.value),
      text: importText(outcome, headings, wrote.value),
      notices: [...outcome.notices, ...(wrote.notices ?? [])],
      names: [...finishNames(finishes), ...headings],
      exit: finishes.length > 0 ? 0 : 2,
    });
  },
};

interface Targets {
  readonly name?: string | undefined;
  readonly out?: string | undefined;
  readonly csv?: string | undefined;
}

/** Writes what was asked for; gives the names of the files. */
function write(
  kept: { readonly id: string; readonly name: string },
  finishes: readonly Finish[],
  { name, out, csv }: Targets,
): Result<readonly string[]> {
  const title = name?.trim() || kept.name;
  const id = title === kept.name ? kept.id : idOf(title);
  const table = writeCsv(finishes);
  const library = newLibrary({ id, name: title, note: '', finishes });
  const texts: readonly (readonly [string, () => string])[] = [
    ...(out === undefined ? [] : [[out, () => libraryText(library)] as const]),
    ...(csv === undefined ? [] : [[csv, () => table.text] as const]),
  ];
  for (const [target, text] of texts) {
    const wrote = writeText(target, text());
    if (!wrote.ok) return failure(wrote.problem);
  }
  return success(
    texts.map(([target]) => target),
    csv === undefined ? [] : table.notices,
  );
}

/** A library of a table is called as its file is. */
function called(file: string) {
  const name = basename(file).replace(/\.[^.]+$/, '');
  return { id: idOf(name), name };
}

const idOf = (title: string): string =>
  title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'library';
