import fc from 'fast-check';
import { expect, it } from 'vitest';
import { MOST_PICTURE_BYTES, readPictureFile } from '../../src/io/picture-file';
import { joined, pngChunk, uint32s } from '../../src/io/png-chunks';

const latin = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const png = (width: number, height: number, ...chunks: readonly Uint8Array[]) =>
  joined([
    latin('\x89PNG\r\n\x1a\n'),
    pngChunk('IHDR', joined([uint32s(width, height), Uint8Array.of(8, 2, 0, 0, 0)])),
    ...(chunks as Uint8Array<ArrayBuffer>[]),
    pngChunk('IDAT', latin('x') as Uint8Array<ArrayBuffer>),
    pngChunk('IEND', new Uint8Array(0)),
  ]);

/** A JPEG up to its frame header (ITU-T T.81): APP1 as cameras write it, a profile if any, SOF. */
function jpeg(width: number, height: number, profile = false): Uint8Array {
  const segment = (marker: number, body: readonly number[]) => [
    0xff,
    marker,
    (body.length + 2) >> 8,
    (body.length + 2) & 255,
    ...body,
  ];
  return Uint8Array.of(
    0xff,
    0xd8,
    ...segment(0xe1, [...latin('Exif\0\0II*\0GPS 47.37 N 8.54 E')]),
    ...(profile ? segment(0xe2, [...latin('ICC_PROFILE\0'), 1, 1, 0]) : []),
    ...segment(0xc0, [8, height >> 8, height & 255, width >> 8, width & 255, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1]),
    0xff,
    0xda,
  );
}

const webp = (name: string, body: readonly number[]) =>
  joined([
    latin('RIFF\0\0\0\0WEBP') as Uint8Array<ArrayBuffer>,
    latin(name) as Uint8Array<ArrayBuffer>,
    Uint8Array.of(10, 0, 0, 0, ...body),
  ]);

const read = (bytes: Uint8Array) => {
  const file = readPictureFile(bytes);
  return file.ok ? file.value : file.problem.code;
};

it('tells a picture by its content: kind, size, and whether it brings colors of its own', () => {
  expect(read(png(640, 480))).toEqual({ kind: 'png', width: 640, height: 480, space: 'srgb' });
  const cicp = (primaries: number) => pngChunk('cICP', Uint8Array.of(primaries, 13, 0, 1));
  expect(read(png(1, 1, cicp(12)))).toMatchObject({ space: 'display-p3' });
  // ITU-T H.273: 1 are the primaries of sRGB; cICP goes before iCCP (W3C PNG, third edition).
  const iccp = pngChunk('iCCP', latin('x') as Uint8Array<ArrayBuffer>);
  expect(read(png(1, 1, cicp(1), iccp))).toMatchObject({ space: 'srgb' });
  expect(read(png(1, 1, iccp))).toMatchObject({ space: 'display-p3' });
  expect(read(jpeg(4000, 3000))).toEqual({ kind: 'jpeg', width: 4000, height: 3000, space: 'srgb' });
  expect(read(jpeg(4000, 3000, true))).toMatchObject({ space: 'display-p3' });
  // RFC 9649: VP8X with the flag of a profile, sizes less one in 24 bits.
  expect(read(webp('VP8X', [0x20, 0, 0, 0, 0x7f, 2, 0, 0xdf, 1, 0]))).toEqual({
    kind: 'webp',
    width: 640,
    height: 480,
    space: 'display-p3',
  });
  expect(read(webp('VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, 0x80, 2, 0xe0, 1]))).toMatchObject({
    width: 640,
    height: 480,
    space: 'srgb',
  });
  expect(read(webp('VP8L', [0x2f, 0x7f, 0xc2, 0x77, 0, 0, 0, 0, 0, 0]))).toMatchObject({ width: 640, height: 480 });
});

it('says what is wrong with what is no picture, and what to do', () => {
  expect(read(new Uint8Array(0))).toBe('picture-empty');
  expect(read(latin('{"type":"upstand-project"}'))).toBe('picture-unknown');
  expect(read(latin('\0\0\0\x18ftypheic'))).toBe('picture-unknown');
  const heic = readPictureFile(latin('\0\0\0\x18ftypheic'));
  expect(heic.ok ? '' : heic.problem.remedy).toContain('JPEG');
  expect(read(png(640, 480).slice(0, 20))).toBe('picture-broken');
  expect(read(png(0, 480))).toBe('picture-broken');
  expect(read(jpeg(4000, 3000).slice(0, 30))).toBe('picture-broken');
  expect(read(Uint8Array.of(0xff, 0xd8, 0xff, 0xd9, 0, 0, 0, 0, 0, 0, 0, 0))).toBe('picture-broken');
  expect(read(png(20_000, 20_000))).toBe('picture-too-many-pixels');
  expect(read(new Uint8Array(MOST_PICTURE_BYTES + 1))).toBe('picture-too-large');
});

it('answers any bytes, also such that begin like a picture', () => {
  const heads = [png(9, 9), jpeg(9, 9), webp('VP8X', [0, 0, 0, 0, 1, 0, 0, 1, 0, 0]), new Uint8Array(0)];
  fc.assert(
    fc.property(fc.constantFrom(...heads), fc.nat(60), fc.uint8Array({ maxLength: 80 }), (head, keep, tail) => {
      const file = readPictureFile(Uint8Array.from([...head.slice(0, keep), ...tail]));
      if (file.ok) expect(file.value.width * file.value.height).toBeGreaterThan(0);
      else expect(file.problem.remedy).not.toBe('');
    }),
    { numRuns: 300 },
  );
});
