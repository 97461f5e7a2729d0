import { failure, type Problem, type Result, success } from '../../engine/result';
import { placeIn } from '../place-problem';
import { binaryKind } from './binary-kinds';

/** More than any list of 100,000 finishes with spectra of 31 values needs. */
const MOST_BYTES = 64e6;

/** UTF-16 of western text has a zero in nearly every second byte. */
const ZEROS_OF_UTF16 = 0.4;

/**
 * The text in a file: UTF-8 with or without a byte order mark, UTF-16 by its mark (or by its zeros, said as a notice), else
 * Windows-1252, said as a notice. The mark is taken off. Problems: 'file-empty', 'file-too-large', and 'not-text' for pictures,
 * spreadsheets, profiles, ..., each by its name.
 */
export function decodeText(bytes: Uint8Array, file?: string): Result<string> {
  const at = placeIn(file);
  if (bytes.length === 0) {
    return failure({ code: 'file-empty', text: 'The file is empty.', at, remedy: 'Choose a file with a table.' });
  }
  if (bytes.length > MOST_BYTES) {
    return failure({
      code: 'file-too-large',
      text: `The file has ${Math.round(bytes.length / 1e6)} MB; up to ${MOST_BYTES / 1e6} MB can be read.`,
      at,
      remedy: 'Split it into several files.',
    });
  }
  const marked = markOf(bytes);
  if (marked) return success(new TextDecoder(marked).decode(bytes));
  const bare = bareUtf16(bytes);
  if (bare) return success(new TextDecoder(bare).decode(bytes), [encodingNotice('UTF-16', file)]);
  const binary = binaryKind(bytes);
  if (binary) {
    return failure({ code: 'not-text', text: `The file is ${binary.what}, not a table.`, at, remedy: binary.remedy });
  }
  try {
    return success(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return success(new TextDecoder('windows-1252').decode(bytes), [encodingNotice('Windows-1252', file)]);
  }
}

function markOf([first, second]: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  if (first === 0xff && second === 0xfe) return 'utf-16le';
  return first === 0xfe && second === 0xff ? 'utf-16be' : null;
}

/** UTF-16 without a mark: zeros in nearly all odd places or in nearly all even ones. */
function bareUtf16(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const start = bytes.subarray(0, 400);
  const zeros = [0, 0];
  for (const [i, byte] of start.entries()) if (byte === 0) zeros[i % 2]!++;
  const [even, odd] = zeros.map((count) => (2 * count) / start.length);
  if (odd! > 2 * ZEROS_OF_UTF16 && even! < 1 - 2 * ZEROS_OF_UTF16) return 'utf-16le';
  return even! > 2 * ZEROS_OF_UTF16 && odd! < 1 - 2 * ZEROS_OF_UTF16 ? 'utf-16be' : null;
}

const encodingNotice = (encoding: string, file?: string): Problem => ({
  code: 'encoding-taken',
  text: `The file does not say how its letters are written; it was read as ${encoding}.`,
  at: placeIn(file),
  remedy: 'Look at letters like ä, é, ñ: if they are wrong, save the file as UTF-8.',
});
