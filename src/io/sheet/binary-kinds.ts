/** A file that is no text, by what it is, and what to do with it. */
export interface BinaryKind {
  /** With its article: "a PDF". */
  readonly what: string;
  readonly remedy: string;
}

const SAVE_AS_CSV = 'Open it in the program it was made with and save the table as CSV.';
const PICTURE = 'A picture holds no list of finishes: take one color from it as a photo, or choose a table (CSV).';
const MODEL = 'A 3D model holds no list of finishes: choose a table (CSV).';
const PACKED = 'Unpack it and choose the table inside (CSV).';

/** First bytes as Latin-1 text; '?' stands for any byte. From the formats' own specifications. */
const SIGNATURES: readonly (readonly [signature: string, what: string, remedy: string])[] = [
  ['\x89PNG\r\n\x1a\n', 'a picture (PNG)', PICTURE],
  ['\xff\xd8\xff', 'a picture (JPEG)', PICTURE],
  ['GIF8', 'a picture (GIF)', PICTURE],
  ['RIFF????WEBP', 'a picture (WebP)', PICTURE],
  ['BM????\0\0\0\0', 'a picture (BMP)', PICTURE],
  ['II*\0', 'a picture (TIFF)', PICTURE],
  ['MM\0*', 'a picture (TIFF)', PICTURE],
  ['????ftyp', 'a picture or a film (HEIF, MP4)', PICTURE],
  ['%PDF', 'a PDF', 'Ask for the table itself (CSV, CxF): numbers copied out of a PDF lose their columns.'],
  ['\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1', 'a spreadsheet or a document of an old office program', SAVE_AS_CSV],
  ['glTF', 'a 3D model (glTF)', MODEL],
  ['PXR-USDC', 'a 3D scene (USD)', MODEL],
  ['ASEF', 'a set of swatches for drawing programs', 'Export the colors as a table (CSV) with L*, a*, b*.'],
  ['SQLite format 3\0', 'a database', SAVE_AS_CSV],
  ['\x1f\x8b', 'a packed file (gzip)', PACKED],
  ['7z\xbc\xaf\x27\x1c', 'a packed file (7z)', PACKED],
  ['Rar!\x1a\x07', 'a packed file (RAR)', PACKED],
  ['BZh', 'a packed file (bzip2)', PACKED],
  ['\xfd7zXZ\0', 'a packed file (xz)', PACKED],
  ['\x7fELF', 'a program', 'Choose a table (CSV).'],
];

/** What names inside of a zip archive say about it. */
const ZIPS: readonly (readonly [name: RegExp, what: string, remedy: string])[] = [
  [/xl\/|opendocument\.spreadsheet|Index\/Tables/, 'a spreadsheet', SAVE_AS_CSV],
  [/word\/|ppt\/|opendocument\./, 'a document of an office program', SAVE_AS_CSV],
  [/\.usd[acz]?/, 'a 3D scene (USDZ)', MODEL],
];

/** Enough to see the names of the first files of an archive. */
const LOOKED_AT_BYTES = 4096;

/** A text has hardly any zeros; so many in this many first bytes are numbers. */
const MOST_ZEROS = 1 / 100;

/** Texts have tabs, line ends, form feeds and an end mark of old systems; of random bytes a tenth are other controls. */
const MOST_CONTROLS = 1 / 50;
/** A short text may have a few stray ones, which are taken out of its cells. */
const LEAST_CONTROLS = 10;
function controlsIn(start: string): number {
  let controls = 0;
  for (let i = 0; i < start.length; i++) {
    const code = start.charCodeAt(i);
    if (code === 127 || (code < 32 && code > 0 && !KEPT.includes(code))) controls++;
  }
  return controls;
}
const KEPT: readonly number[] = [9, 10, 12, 13, 26, 27];

/** What a file is by its signature, where it is no text; null where it may be one. UTF-16 has zeros: ask after its mark. */
export function binaryKind(bytes: Uint8Array): BinaryKind | null {
  const start = latin1(bytes.subarray(0, LOOKED_AT_BYTES));
  for (const [signature, what, remedy] of SIGNATURES) {
    if (isStart(signature, start)) return { what, remedy };
  }
  // ICC.1:2022, 7.2: bytes 36 to 39 of every profile.
  if (start.slice(36, 40) === 'acsp') return iccKind(start.slice(12, 16));
  if (start.startsWith('PK\x03\x04') || start.startsWith('PK\x05\x06')) {
    const found = ZIPS.find(([name]) => name.test(start));
    return found ? { what: found[1], remedy: found[2] } : { what: 'a packed file (zip)', remedy: PACKED };
  }
  const zeros = start.split('\0').length - 1;
  const isNoText =
    zeros > MOST_ZEROS * start.length || controlsIn(start) > Math.max(LEAST_CONTROLS, MOST_CONTROLS * start.length);
  return isNoText ? { what: 'no text', remedy: 'Choose a table (CSV), CGATS or CxF.' } : null;
}

const iccKind = (deviceClass: string): BinaryKind =>
  deviceClass === 'nmcl'
    ? {
        what: 'an ICC profile of named colors',
        remedy: 'Export the colors as CxF or as a table (CSV) with L*, a*, b*.',
      }
    : { what: 'an ICC profile of a device', remedy: 'A profile of a device holds no finishes: choose a table (CSV).' };

const isStart = (signature: string, start: string): boolean =>
  start.length >= signature.length && [...signature].every((letter, i) => letter === '?' || letter === start[i]);

const latin1 = (bytes: Uint8Array): string => Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
