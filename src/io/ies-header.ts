import { failure, type Problem, type Result, success } from '../engine/result';
import { type IesCursor, iesProblem, nextList, nextNumber } from './ies-numbers';
import { placeIn } from './place-problem';
import { fileStem } from './read-lamp';

/** What stands above the numbers of an IES LM-63 file. */
export interface IesHeader {
  readonly name: string;
  /** Editions of 1986 and 1991 have a ballast factor where later ones keep a place free or say how the file was made. */
  readonly isBefore1995: boolean;
  readonly notices: readonly Problem[];
}

const LONGEST_NAME = 120;
const MOST_TILTS = 1000;

/** Reads down to the end of the TILT part; the cursor then stands before the number of lamps. */
export function readIesHeader(cursor: IesCursor): Result<IesHeader> {
  const { text, file } = cursor;
  const tilt = /^[^\S\n]*TILT[^\S\n]*=([^\n]*)/im.exec(text);
  if (!tilt) return failure(noTilt(text, file));
  const lines = text.slice(0, tilt.index).split('\n');
  const isBefore1995 = !/^\s*IES(NA)?:/i.test(text);
  cursor.at = tilt.index + tilt[0].length;
  cursor.line = lines.length;
  const notices = readTilt(cursor, tilt[1]!.trim());
  return notices.ok ? success({ name: nameOf(lines, file), isBefore1995, notices: notices.value }) : notices;
}

/** What the output of a tilted lamp is depends on how it hangs; here lamps hang as they were measured. */
function readTilt(cursor: IesCursor, value: string): Result<readonly Problem[]> {
  const { line, file } = cursor;
  if (/^NONE$/i.test(value)) return success([]);
  if (!/^INCLUDE$/i.test(value)) {
    return failure(
      iesProblem(
        'tilt-file',
        line,
        value ? `how tilt changes the light stands in another file, ${value.slice(0, 60)}.` : 'TILT= has no value.',
        'If the lamp hangs as it was measured, write TILT=NONE in this line and read the file again.',
        file,
      ),
    );
  }
  const geometry = nextNumber(cursor, 'the position of the bulb in the lamp (after TILT=INCLUDE)');
  if (!geometry.ok) return geometry;
  const count = nextNumber(cursor, 'the number of tilt angles');
  if (!count.ok) return count;
  const { value: tilts } = count.value;
  if (!(Number.isInteger(tilts) && tilts >= 1 && tilts <= MOST_TILTS)) {
    const text = `${tilts} is no number of tilt angles.`;
    return failure(iesProblem('bad-count', count.value.line, text, 'Correct it, or write TILT=NONE.', file));
  }
  for (const what of ['tilt angle', 'tilt factor']) {
    const list = nextList(cursor, tilts, what);
    if (!list.ok) return list;
  }
  return success([
    iesProblem(
      'tilt-left-out',
      line,
      'how tilt changes the light was not used: the lamp is taken as hanging the way it was measured.',
      'Nothing to do for a lamp that is not tilted.',
      file,
    ),
  ]);
}

/** What a reader may know the lamp by: its description, its catalog number, else the first words of the file, else its name. */
function nameOf(lines: readonly string[], file?: string): string {
  const first = lines.find((line) => line.trim() !== '' && !/^\s*(\[|IES(NA)?[:\d])/i.test(line));
  const name = keyword(lines, 'LUMINAIRE') || keyword(lines, 'LUMCAT') || first || '';
  return clean(name) || fileStem(file);
}

/** The value of [KEY] with the [MORE] lines under it. */
function keyword(lines: readonly string[], key: string): string {
  const start = lines.findIndex((line) => line.trimStart().toUpperCase().startsWith(`[${key}]`));
  if (start < 0) return '';
  const parts = [lines[start]!];
  for (let i = start + 1; /^\s*\[MORE\]/i.test(lines[i] ?? ''); i++) parts.push(lines[i]!);
  return parts.map((part) => part.replace(/^\s*\[\w+\]/, '').trim()).join(' ');
}

const clean = (name: string): string =>
  name
    .replace(/[\p{Cc}\s]+/gu, ' ')
    .trim()
    .slice(0, LONGEST_NAME)
    .trim();

function noTilt(text: string, file?: string): Problem {
  const isIes = /^\s*IES(NA)?[:\d]/i.test(text);
  return {
    code: isIes ? 'no-tilt' : 'not-ies',
    text: isIes ? 'The file has no line TILT=, which comes before its numbers.' : 'This is no IES file (LM-63).',
    at: placeIn(file),
    remedy: isIes
      ? 'Fetch the file again; if its numbers are there, write TILT=NONE above them.'
      : 'Ask for the photometric file of the lamp in IES format, LM-63: its name ends in .ies.',
  };
}
