import { joined, pngChunk, uint32s } from './png-chunks';
import { filteredRows } from './png-filter';

export interface PngPicture {
  /** Pixels, at least 1 each. */
  readonly width: number;
  readonly height: number;
  /** sRGB, 8 bit, four bytes a pixel, rows from the top; what is transparent in it becomes opaque. */
  readonly rgba: Uint8Array | Uint8ClampedArray;
  readonly pixelsPerMeter: number;
  /** What the file says of itself: a keyword of 1-79 Latin letters, and any text. */
  readonly texts: readonly (readonly [keyword: string, text: string])[];
}

/** Compresses into a zlib stream (RFC 1950). */
type Deflate = (bytes: Uint8Array<ArrayBuffer>) => Promise<Uint8Array>;

const SIGNATURE = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);
const LANGUAGE = 'en-US';
const RGB_BYTES = 3;
const TRUECOLOR = 2;

/** Chromaticities of sRGB (IEC 61966-2-1) times 100000: white, red, green, blue. */
const SRGB_CHROMATICITIES = [31270, 32900, 64000, 33000, 30000, 60000, 15000, 6000] as const;
/** 1 / 2.2 times 100000, which the specification asks for beside sRGB. */
const SRGB_GAMMA = 45455;
/** ITU-T H.273: primaries of sRGB (1), its transfer function (13), RGB (0), full range (1). */
const SRGB_CODE_POINTS = [1, 13, 0, 1] as const;

/**
 * A PNG file (W3C specification, third edition, 2025) of an opaque picture in 8 bit truecolor that says in every way the format
 * has that its colors are sRGB. Throws a RangeError where the bytes do not fit the size.
 */
export async function pngFile(picture: PngPicture, deflate: Deflate): Promise<Uint8Array<ArrayBuffer>> {
  const { width, height, rgba, pixelsPerMeter, texts } = picture;
  if (width < 1 || height < 1 || rgba.length !== 4 * width * height) {
    throw new RangeError(`${rgba.length} bytes do not make a picture of ${width} by ${height} pixels.`);
  }
  const rgb = new Uint8Array(RGB_BYTES * width * height);
  for (let i = 0, j = 0; i < rgba.length; i += 4) {
    rgb[j++] = rgba[i]!;
    rgb[j++] = rgba[i + 1]!;
    rgb[j++] = rgba[i + 2]!;
  }
  const rows = filteredRows(rgb, height, RGB_BYTES);
  const perMeter = Math.round(pixelsPerMeter);
  return joined([
    SIGNATURE,
    pngChunk('IHDR', joined([uint32s(width, height), Uint8Array.of(8, TRUECOLOR, 0, 0, 0)])),
    // Rendering intent: relative colorimetric.
    pngChunk('sRGB', Uint8Array.of(1)),
    pngChunk('gAMA', uint32s(SRGB_GAMMA)),
    pngChunk('cHRM', uint32s(...SRGB_CHROMATICITIES)),
    pngChunk('cICP', Uint8Array.of(...SRGB_CODE_POINTS)),
    pngChunk('pHYs', joined([uint32s(perMeter, perMeter), Uint8Array.of(1)])),
    ...texts.map(([keyword, text]) => pngChunk('iTXt', internationalText(keyword, text))),
    pngChunk('IDAT', await deflate(rows as Uint8Array<ArrayBuffer>)),
    pngChunk('IEND', new Uint8Array(0)),
  ]);
}

/** Keyword, not compressed, language, no translated keyword, text in UTF-8. */
function internationalText(keyword: string, text: string): Uint8Array {
  const latin = Uint8Array.from(keyword, (letter) => letter.charCodeAt(0) & 0xff);
  const utf8 = new TextEncoder();
  return joined([latin, Uint8Array.of(0, 0, 0), utf8.encode(LANGUAGE), Uint8Array.of(0, 0), utf8.encode(text)]);
}
