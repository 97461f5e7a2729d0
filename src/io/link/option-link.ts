import { deflateSync, inflateSync } from 'fflate';
import { failure, type Problem, type Result } from '../../engine/result';
import { optionAlone } from '../../model/option-alone';
import type { Option, Project } from '../../model/project';
import { crc32 } from '../crc32';
import { compactProjectText, parseProject } from '../project-file';
import { fromBase64Url, toBase64Url } from './base64url';
import { DICTIONARY_1 } from './dictionary-1.data';

/**
 * One option as the fragment of an address, `#o1.` and base64url: the CRC-32 of a project file's text, high byte first, then that text
 * deflated (RFC 1951) with the preset dictionary of the number after the `o`. The text is a project of the version it says, so that old
 * links open as old files do.
 */
const VERSION = 1;
const HEAD = `#o${VERSION}.`;

/** More characters than this are no link anybody made; photometric files of lamps take some thousands. */
const MOST_CHARACTERS = 200_000;
/** A text may not be longer inflated: an option with many lamps and spectra has a tenth. */
const MOST_BYTES = 1_000_000;
const CRC_BYTES = 4;

const dictionary = (): Uint8Array => new TextEncoder().encode(DICTIONARY_1);

/** The fragment that holds an option whole; the same option always gives the same one. */
export function optionFragment(project: Project, option: Option): string {
  const text = new TextEncoder().encode(compactProjectText(optionAlone(project, option)));
  const packed = deflateSync(text, { level: 9, mem: 12, dictionary: dictionary() });
  const bytes = new Uint8Array(CRC_BYTES + packed.length);
  new DataView(bytes.buffer).setUint32(0, crc32(text));
  bytes.set(packed, CRC_BYTES);
  return HEAD + toBase64Url(bytes);
}

/** What a fragment brings: a project and the text it was read from. Refused where it is damaged, newer or far too large. */
export function readFragment(fragment: string): Result<{ readonly project: Project; readonly text: string }> {
  const version = Number(/^#o(\d+)\./.exec(fragment)?.[1] ?? 0);
  if (version > VERSION) return failure(NEWER);
  // An address may have megabytes: nothing is done to it before its length is known.
  if (fragment.length > 2 * MOST_CHARACTERS) return failure(TOO_LARGE);
  const digits = withoutMail(fragment.slice(HEAD.length));
  if (digits.length > MOST_CHARACTERS) return failure(TOO_LARGE);
  const bytes = version === VERSION ? fromBase64Url(digits) : null;
  if (!bytes || bytes.length <= CRC_BYTES) return failure(DAMAGED);
  const inflated = inflate(bytes.subarray(CRC_BYTES));
  if (!inflated) return failure(DAMAGED);
  if (inflated.length > MOST_BYTES) return failure(TOO_LARGE);
  if (crc32(inflated) !== new DataView(bytes.buffer).getUint32(0)) return failure(DAMAGED);
  const text = new TextDecoder().decode(inflated);
  const parsed = parseProject(text);
  return parsed.ok ? { ...parsed, value: { project: parsed.value, text } } : parsed;
}

/** Without what mail programs put into long addresses and behind them. */
function withoutMail(digits: string): string {
  const whole = digits.replace(/\s|%20|%0[ad]/gi, '');
  let end = whole.length;
  while (end > 0 && BEHIND.includes(whole[end - 1]!)) end--;
  return whole.slice(0, end);
}

const BEHIND = '.,;:)>]\'"';

/** Null where the bytes are no deflated text. Never more than one byte over the most: what is beyond is not written. */
function inflate(packed: Uint8Array): Uint8Array | null {
  try {
    return inflateSync(packed, { out: new Uint8Array(MOST_BYTES + 1), dictionary: dictionary() });
  } catch {
    return null;
  }
}

const NEWER: Problem = {
  code: 'newer-link',
  text: 'This link was made by a newer version of the program.',
  remedy: 'Reload the page to get the newest version, then open the link again.',
};
const DAMAGED: Problem = {
  code: 'damaged-link',
  text: 'This link is not whole: characters are missing or were changed.',
  remedy:
    'Copy it again from its first character to its last, or ask for it again. Some mail programs cut long addresses.',
};
const TOO_LARGE: Problem = {
  code: 'link-too-large',
  text: 'This link holds more than an option can have.',
  remedy: 'Ask for the project as a file instead.',
};
