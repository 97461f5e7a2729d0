import type { PictureSpace } from '../engine/photo/linear-picture';
import { failure, type Problem, type Result, success } from '../engine/result';

/** What a picture file says of itself before it is decoded. Nothing else in it is looked at: no place, time or camera. */
export interface PictureFile {
  readonly kind: 'png' | 'jpeg' | 'webp';
  /** Pixels as stored; a picture taken upright may be turned when it is decoded. */
  readonly width: number;
  readonly height: number;
  /** Where it is to be decoded to: wide where it brings a profile of its own, else sRGB. */
  readonly space: PictureSpace;
}

/** Files of photographs are smaller; larger ones are scans or no pictures. */
export const MOST_PICTURE_BYTES = 60_000_000;
/** A browser holds four bytes for each. */
const MOST_PIXELS = 80_000_000;

const KIND_REMEDY = 'Choose a photo in JPEG, PNG or WebP format.';

/**
 * Tells a picture by its content, whatever its name is. Problems: 'picture-too-large', 'picture-empty', 'picture-unknown' (no
 * PNG, JPEG or WebP), 'picture-broken' (it ends or contradicts itself before its size is told), 'picture-too-many-pixels'.
 */
export function readPictureFile(bytes: Uint8Array): Result<PictureFile> {
  if (bytes.length > MOST_PICTURE_BYTES) return failure(pictureTooLarge(bytes.length));
  if (bytes.length === 0) return failure(problem('picture-empty', 'The file is empty.', KIND_REMEDY));
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const reader = READERS.find(({ starts }) => starts(bytes));
  if (!reader) return failure(unknown(bytes));
  const read = reader.read(view);
  if (!read || read.width < 1 || read.height < 1) {
    const text = `The file begins like a ${reader.name} picture but is broken.`;
    return failure(problem('picture-broken', text, 'Copy it from the camera again, or save it anew.'));
  }
  if (read.width * read.height > MOST_PIXELS) {
    const megapixels = Math.round((read.width * read.height) / 1e6);
    const text = `The picture has ${megapixels} megapixels; up to ${MOST_PIXELS / 1e6} are read.`;
    return failure(problem('picture-too-many-pixels', text, 'Save it smaller, or cut out card and sample together.'));
  }
  return success(read);
}

export const pictureTooLarge = (bytes: number): Problem =>
  problem(
    'picture-too-large',
    `The file has ${Math.round(bytes / 1e6)} MB; pictures up to ${MOST_PICTURE_BYTES / 1e6} MB are read.`,
    'Choose the photo as the camera saved it, or save it smaller.',
  );

const problem = (code: string, text: string, remedy: string): Problem => ({ code, text, remedy });

/** ISO 14496-12: a box of type 'ftyp', then the brand; HEIC and AVIF are such. */
function unknown(bytes: Uint8Array): Problem {
  if (ascii(bytes, 4, 4) === 'ftyp') {
    const text = 'The picture is in HEIC, AVIF or a like format, which is not read here.';
    return problem('picture-unknown', text, 'Export it as JPEG, or set the camera to “most compatible”.');
  }
  return problem('picture-unknown', 'The file is no picture this page can read.', KIND_REMEDY);
}

const ascii = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));

interface Reader {
  readonly name: string;
  readonly starts: (bytes: Uint8Array) => boolean;
  readonly read: (view: DataView) => PictureFile | null;
}

const READERS: readonly Reader[] = [
  {
    name: 'PNG',
    starts: (bytes) => ascii(bytes, 0, 8) === '\x89PNG\r\n\x1a\n',
    read: readPng,
  },
  { name: 'JPEG', starts: (bytes) => bytes[0] === 0xff && bytes[1] === 0xd8, read: readJpeg },
  {
    name: 'WebP',
    starts: (bytes) => ascii(bytes, 0, 4) === 'RIFF' && ascii(bytes, 8, 4) === 'WEBP',
    read: readWebp,
  },
];

/** PNG (W3C, third edition): IHDR first; cICP and iCCP, of which the first wins, stand before the picture's data. */
function readPng(view: DataView): PictureFile | null {
  if (view.byteLength < 33 || tag(view, 12) !== 'IHDR') return null;
  let space: PictureSpace = 'srgb';
  for (let at = 33; at + 12 <= view.byteLength; ) {
    const length = view.getUint32(at);
    const name = tag(view, at + 4);
    if (name === 'IDAT' || name === 'IEND') break;
    // ITU-T H.273: primaries 1 are those of sRGB.
    if (name === 'cICP' && length === 4) {
      space = view.getUint8(at + 8) === 1 ? 'srgb' : 'display-p3';
      break;
    }
    if (name === 'iCCP') space = 'display-p3';
    at += 12 + length;
  }
  return { kind: 'png', width: view.getUint32(16), height: view.getUint32(20), space };
}

/** JPEG (ITU-T T.81): segments FF xx with their length, up to the frame header, which has the size. APP2 holds a profile. */
function readJpeg(view: DataView): PictureFile | null {
  let space: PictureSpace = 'srgb';
  for (let at = 2; at + 9 < view.byteLength; ) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    // Fill bytes, and markers that stand alone.
    if (marker === 0xff || marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) {
      at += marker === 0xff ? 1 : 2;
      continue;
    }
    if (marker === 0xd9 || marker === 0xda) return null;
    const isFrame = marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
    if (isFrame) return { kind: 'jpeg', width: view.getUint16(at + 7), height: view.getUint16(at + 5), space };
    if (marker === 0xe2 && at + 15 < view.byteLength && tag(view, at + 4, 11) === 'ICC_PROFILE') space = 'display-p3';
    const length = view.getUint16(at + 2);
    if (length < 2) return null;
    at += 2 + length;
  }
  return null;
}

/** WebP container (RFC 9649): VP8X with flags and size, or one VP8 or VP8L picture. */
function readWebp(view: DataView): PictureFile | null {
  if (view.byteLength < 30) return null;
  const name = tag(view, 12);
  const three = (at: number) => view.getUint16(at, true) + 65536 * view.getUint8(at + 2);
  if (name === 'VP8X') {
    const hasProfile = (view.getUint8(20) & 0x20) !== 0;
    const space = hasProfile ? 'display-p3' : 'srgb';
    return { kind: 'webp', width: 1 + three(24), height: 1 + three(27), space };
  }
  if (name === 'VP8 ') {
    const [width, height] = [view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff];
    return { kind: 'webp', width, height, space: 'srgb' };
  }
  if (name === 'VP8L') {
    const bits = view.getUint32(21, true);
    return { kind: 'webp', width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff), space: 'srgb' };
  }
  return null;
}

function tag(view: DataView, at: number, length = 4): string {
  let text = '';
  for (let i = 0; i < length; i++) text += String.fromCharCode(view.getUint8(at + i));
  return text;
}
