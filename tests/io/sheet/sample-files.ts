import { readdirSync, readFileSync } from 'node:fs';
import { finishesOf } from '../../../src/io/sheet/finishes-of';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import type { ImportChoices, ImportOutcome, Sheet } from '../../../src/io/sheet/types';

// The files in samples/ hold invented data: three finishes, two lamps, a door.

const FOLDER = `${import.meta.dirname}/samples`;

export const SAMPLE_FILES: readonly string[] = readdirSync(FOLDER);

export const sampleBytes = (name: string): Uint8Array => new Uint8Array(readFileSync(`${FOLDER}/${name}`));

/** What a person answers to all questions. */
export const ANSWERED: ImportChoices = {
  class: 'paint',
  gloss_gu: 10,
  conditions: { illuminant: 'D65', observer_deg: 10 },
};

export function sheetOf(bytes: Uint8Array | string, file = 'range.csv'): Sheet {
  const read = readSheet(typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes, file);
  if (!read.ok) throw new Error(`${read.problem.code}: ${read.problem.text}`);
  return read.value;
}

export const importOf = (bytes: Uint8Array | string, choices: ImportChoices = ANSWERED, file?: string): ImportOutcome =>
  finishesOf(sheetOf(bytes, file), choices);

/** Row, code and line of what was refused. */
export const refusals = ({ refused }: ImportOutcome): readonly string[] =>
  refused.map(({ row, problem: { code, at } }) => `${row} ${code} ${at?.line}`);

/** Codes of what was told of each finish that was kept. */
export const remarks = ({ kept }: ImportOutcome): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(kept.map(({ finish, notices }) => [finish.id, notices.map(({ code }) => code)]));
