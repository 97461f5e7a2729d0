import { failure, type Problem, type Result, success } from '../engine/result';
import { readLampCgats } from './lamp-cgats';
import { readLampTable } from './lamp-table';
import { readLampTm27 } from './lamp-tm27';
import { placeIn } from './place-problem';
import type { ReadLamp } from './read-lamp';

/** A spectrum has some thousand numbers at most; a longer text is something else. */
const MOST_CHARACTERS = 5_000_000;

/**
 * Reads the spectra of lamps from a text: a table (comma, semicolon, tab or spaces; wavelengths in the first column, a lamp
 * in each further one), CGATS.17 / ISO 28178 with spectral fields, or IES TM-27 XML. Which one is found out from the text.
 * At least one lamp. Problems carry the file and the line.
 */
export function parseLampFile(text: string, file?: string): Result<readonly ReadLamp[]> {
  const refused = refuse(text, file);
  if (refused) return failure(refused);
  const read = readerOf(text)(text, file);
  if (!read.ok) return read;
  const names = new Set<string>();
  const lamps = read.value.map((lamp) => ({ ...lamp, name: unlike(lamp.name, names) }));
  return success(lamps, read.notices);
}

function readerOf(text: string): (text: string, file?: string) => Result<readonly ReadLamp[]> {
  if (/^\uFEFF?\s*</.test(text)) return readLampTm27;
  return /^\s*BEGIN_DATA_FORMAT\b/m.test(text) ? readLampCgats : readLampTable;
}

/** What cannot be a text of numbers, before anything is looked at. */
function refuse(text: string, file?: string): Problem | null {
  const at = placeIn(file);
  if (text.length > MOST_CHARACTERS) {
    return {
      code: 'file-too-large',
      text: `The file has ${text.length} characters; a lamp's spectrum has far fewer.`,
      at,
      remedy: 'Choose a file with the spectrum of a lamp only.',
    };
  }
  if (text.includes('\0') || text.includes('\uFFFD')) {
    return {
      code: 'not-a-text',
      text: 'The file is no plain text in UTF-8.',
      at,
      remedy: 'Save the table as CSV in UTF-8, not as a workbook or a picture.',
    };
  }
  return null;
}

/** Lamps are chosen by name, so no two may share one. */
function unlike(name: string, taken: Set<string>): string {
  let free = name;
  for (let count = 2; taken.has(free); count++) free = `${name} (${count})`;
  taken.add(free);
  return free;
}
