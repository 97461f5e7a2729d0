import { failure, type Result, success } from '../../engine/result';
import { decodeText } from './decode-text';
import { readCgats } from './read-cgats';
import { readCsv } from './read-csv';
import { readCxf } from './read-cxf';
import { isIccProfile, readIccNames } from './read-icc-names';
import { sheetProblem } from './sheet-problem';
import { kindOfText } from './text-kind';
import type { Sheet } from './types';

/**
 * Reads a file of finishes, whatever its name ends in: CSV and its kin, CGATS (ISO 28178), CxF3 or an ICC profile of named colors, found out
 * by what is inside. What holds no finishes is refused by its name, with what to do.
 */
export function readSheet(bytes: Uint8Array, file: string): Result<Sheet> {
  if (isIccProfile(bytes)) return readIccNames(bytes, file);
  const text = decodeText(bytes, file);
  if (!text.ok) return text;
  const read = readSheetText(text.value, file);
  if (!read.ok || !text.notices) return read;
  return success({ ...read.value, notices: [...text.notices, ...read.value.notices] });
}

/** The same of a text that is decoded already. */
function readSheetText(text: string, file: string): Result<Sheet> {
  const kind = kindOfText(text);
  switch (kind.is) {
    case 'csv':
      return readCsv(text, file);
    case 'cgats':
      return readCgats(text, file);
    case 'cxf':
      return readCxf(text, file);
    case 'other':
      return failure(sheetProblem('not-a-sheet', `The file is ${kind.what}, not a table.`, kind.remedy, file));
  }
}
