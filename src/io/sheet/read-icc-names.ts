import { failure, type Problem, type Result, success } from '../../engine/result';
import { MOST_ROWS } from './cut-rows';
import { counted, IF_RIGHT, sheetProblem } from './sheet-problem';
import type { Field, Sheet, SheetRow } from './types';

// Layout: ICC.1:2022, 7.2 (header), 7.3 (tag table), 10.17 (namedColor2Type). All numbers are big-endian.
const HEADER = 128;
const TAG = 12;
const NAMES_HEADER = 84;
const NAME = 32;
/** A name and three coordinates; the device's follow. */
const LEAST_ENTRY = NAME + 6;
const MOST_CHANNELS = 15;

/** D50 of the profile connection space (ICC.1, 6.3.4.3). */
const D50_XYZ = [0.9642, 1, 0.8249] as const;

/** What other profiles are, by their class. */
const CLASSES: Readonly<Record<string, string>> = {
  scnr: 'a scanner or a camera',
  mntr: 'a display',
  prtr: 'a printer',
  link: 'two devices linked',
  spac: 'a color space',
  abst: 'an effect',
};

/** Whether bytes are an ICC profile: 'acsp' at byte 36, and a length below 16 MB before it, which no text begins with. */
export const isIccProfile = (bytes: Uint8Array): boolean =>
  bytes.length > HEADER && bytes[0] === 0 && ascii(bytes, 36, 4) === 'acsp';

/**
 * Reads an ICC profile of named colors (class nmcl, tag ncl2) as a sheet. Its colors are of the profile connection space: D50 and
 * the 2° observer; L*, a*, b* of 16 bits are in the legacy encoding in all versions. A row's line is its number.
 * Problems: 'not-icc', 'icc-class', 'icc-version', 'icc-space', 'icc-damaged', 'no-rows', 'too-many-rows'.
 */
export function readIccNames(bytes: Uint8Array, file: string): Result<Sheet> {
  if (!isIccProfile(bytes)) return failure(sheetProblem('not-icc', 'The file is no ICC profile.', CHOOSE, file));
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const wrong = wrongProfile(bytes, file);
  if (wrong) return failure(wrong);
  const tags = tagsOf(bytes, data);
  if (!tags) return failure(damaged('its list of contents is longer than the file', file));
  const names = tags.get('ncl2');
  if (!names) return failure(damaged('it has no named colors (ncl2)', file));
  if (names.offset + names.size > bytes.length || names.size < NAMES_HEADER) {
    return failure(damaged('its named colors lie outside of the file', file));
  }
  const count = data.getUint32(names.offset + 12);
  const channels = data.getUint32(names.offset + 16);
  if (count === 0) return failure(sheetProblem('no-rows', 'The profile has no named colors.', CHOOSE, file));
  if (count > MOST_ROWS) {
    const text = `The profile says that it has ${count} colors; up to ${MOST_ROWS} can be read.`;
    return failure(sheetProblem('too-many-rows', text, 'Split it into several.', file));
  }
  const step = LEAST_ENTRY + 2 * channels;
  if (channels > MOST_CHANNELS || NAMES_HEADER + count * step > names.size) {
    return failure(damaged(`it says that it has ${counted(count, 'color')}, which would lie outside of it`, file));
  }
  const [before, after] = [20, 52].map((at) => ascii(bytes, names.offset + at, NAME));
  const isLab = ascii(bytes, 20, 4) === 'Lab ';
  const rows = Array.from({ length: count }, (_, i): SheetRow => {
    const at = names.offset + NAMES_HEADER + i * step;
    const name = `${before}${ascii(bytes, at, NAME)}${after}`.replace(/\s+/g, ' ').trim();
    const values = [0, 1, 2].map((k) => data.getUint16(at + NAME + 2 * k));
    return { line: i + 1, cells: [name, ...(isLab ? labOf(values) : xyzOf(values)).map((value) => value.toFixed(4))] };
  });
  const fields: readonly Field[] = isLab ? ['name', 'lab_l', 'lab_a', 'lab_b'] : ['name', 'xyz_x', 'xyz_y', 'xyz_z'];
  return success({
    format: 'icc',
    file,
    columns: fields.map((field) => ({ heading: '', field })),
    rows,
    said: { illuminant: 'D50', observer_deg: 2 },
    refused: [],
    notices: [...nameNotice(rows, file), ...whiteNotice(data, tags.get('wtpt'), file)],
  });
}

/** Legacy encoding of 16 bits: L* 100 is FF00, a* and b* 0 are 8000. */
const labOf = ([l, a, b]: readonly number[]): readonly number[] => [l! / 652.8, a! / 256 - 128, b! / 256 - 128];

/** u1Fixed15: 1 is 8000. */
const xyzOf = (values: readonly number[]): readonly number[] => values.map((value) => (100 * value) / 0x8000);

function wrongProfile(bytes: Uint8Array, file: string): Problem | null {
  const kind = ascii(bytes, 12, 4);
  const space = ascii(bytes, 20, 4);
  const version = bytes[8]!;
  if (kind !== 'nmcl') {
    const what = Object.hasOwn(CLASSES, kind) ? `of ${CLASSES[kind]}` : 'of an unknown class';
    return sheetProblem('icc-class', `The file is an ICC profile ${what}: it holds no finishes.`, CHOOSE, file);
  }
  if (version > 4) {
    const text = `The named colors are of ICC version ${version}, which is not read; versions 2 and 4 are.`;
    return sheetProblem('icc-version', text, 'Export them as CxF3 or as a table (CSV) with L*, a*, b*.', file);
  }
  if (space === 'Lab ' || space === 'XYZ ') return null;
  const text = 'The named colors are neither in Lab nor in XYZ.';
  return sheetProblem('icc-space', text, 'Export them as CxF3 or as a table (CSV) with L*, a*, b*.', file);
}

interface Tag {
  readonly offset: number;
  readonly size: number;
}

/** The first tag of each name; null where the list is longer than the file. */
function tagsOf(bytes: Uint8Array, data: DataView): ReadonlyMap<string, Tag> | null {
  if (bytes.length < HEADER + 4) return null;
  const count = data.getUint32(HEADER);
  if (count > (bytes.length - HEADER - 4) / TAG) return null;
  const tags = new Map<string, Tag>();
  for (let i = 0; i < count; i++) {
    const at = HEADER + 4 + i * TAG;
    const name = ascii(bytes, at, 4);
    if (!tags.has(name)) tags.set(name, { offset: data.getUint32(at + 4), size: data.getUint32(at + 8) });
  }
  const names = tags.get('ncl2');
  // What lies there has to say itself that it is one.
  if (names && names.offset + 4 <= bytes.length && ascii(bytes, names.offset, 4) !== 'ncl2') tags.delete('ncl2');
  return tags;
}

/** Text up to a zero, 7 bits to a letter; what has more cannot be known. */
function ascii(bytes: Uint8Array, from: number, length: number): string {
  let text = '';
  for (const byte of bytes.subarray(from, from + length)) {
    if (byte === 0) break;
    text += byte < 0x80 ? String.fromCharCode(byte) : '\uFFFD';
  }
  return text;
}

function nameNotice(rows: readonly SheetRow[], file: string): readonly Problem[] {
  const unread = rows.filter(({ cells }) => cells[0]!.includes('\uFFFD'));
  if (unread.length === 0) return [];
  const text = `${counted(unread.length, 'name')} ${unread.length === 1 ? 'has' : 'have'} letters that a profile cannot hold (7 bits); they are shown as \uFFFD.`;
  return [sheetProblem('name-letters', text, 'Correct the names after the import.', file)];
}

/** Colors may be relative to a white of paper; one that is not D50 itself tells that this may be so. */
function whiteNotice(data: DataView, white: Tag | undefined, file: string): readonly Problem[] {
  if (!white || white.size < 20 || white.offset + 20 > data.byteLength) return [];
  const xyz = [8, 12, 16].map((at) => data.getInt32(white.offset + at) / 0x10000);
  if (xyz.every((value, i) => Math.abs(value - D50_XYZ[i]!) < 0.002)) return [];
  const text = `The profile tells a white of its own (Y ${xyz[1]!.toFixed(3)}): its colors may be relative to it, and then too light.`;
  return [sheetProblem('icc-white', text, IF_RIGHT, file)];
}

const CHOOSE = 'Choose a profile of named colors, a CxF3 or CGATS file, or a table (CSV).';

const damaged = (what: string, file: string): Problem =>
  sheetProblem('icc-damaged', `The profile is damaged: ${what}.`, 'Fetch or export it again.', file);
