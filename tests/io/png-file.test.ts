import { deflateSync, inflateSync, crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { PNG } from 'pngjs';
import { expect, it } from 'vitest';
import { crc32 } from '../../src/io/crc32';
import { type PngPicture, pngFile } from '../../src/io/png-file';

// PNG specification, third edition (W3C Recommendation, 2025); checks: node:zlib, pngjs.

const deflate = async (bytes: Uint8Array) => new Uint8Array(deflateSync(bytes));

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
  readonly crc: number;
  readonly crcOfZlib: number;
}

function chunksOf(file: Uint8Array): readonly Chunk[] {
  const bytes = Buffer.from(file);
  const chunks: Chunk[] = [];
  for (let at = 8; at < bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    const end = at + 8 + length;
    chunks.push({
      type: bytes.toString('latin1', at + 4, at + 8),
      data: bytes.subarray(at + 8, end),
      crc: bytes.readUInt32BE(end),
      crcOfZlib: zlibCrc32(bytes.subarray(at + 4, end)),
    });
    at = end + 4;
  }
  return chunks;
}

const picture = (width: number, height: number, rgba: Uint8Array, more: Partial<PngPicture> = {}): PngPicture => ({
  width,
  height,
  rgba,
  pixelsPerMeter: 96 / 0.0254,
  texts: [],
  ...more,
});

/** Opaque pixels, so that what is decoded is the very same. */
const opaque = (bytes: Uint8Array): Uint8Array => bytes.map((value, i) => (i % 4 === 3 ? 255 : value));

it('has the CRC of node:zlib, and the check value of CRC-32 (ISO 3309): "123456789" gives CBF43926', () => {
  expect(crc32(Buffer.from('123456789'))).toBe(0xcbf43926);
  fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => crc32(bytes) === zlibCrc32(bytes)));
});

it('decodes to the pixels given (pngjs), whatever they are', async () => {
  const sizes = fc.record({ width: fc.integer({ min: 1, max: 23 }), height: fc.integer({ min: 1, max: 17 }) });
  await fc.assert(
    fc.asyncProperty(sizes, fc.infiniteStream(fc.nat(255)), async ({ width, height }, stream) => {
      const rgba = opaque(Uint8Array.from({ length: 4 * width * height }, () => stream.next().value!));
      const decoded = PNG.sync.read(Buffer.from(await pngFile(picture(width, height, rgba), deflate)));
      expect([decoded.width, decoded.height]).toEqual([width, height]);
      expect(Buffer.from(rgba).equals(decoded.data)).toBe(true);
    }),
    { numRuns: 60 },
  );
});

it('takes another filter for other rows, and even rows cost nearly nothing', async () => {
  const width = 64;
  const rows = [
    // Even; a ramp to the right; the same ramp again.
    (_: number) => 77,
    (x: number) => 4 * x,
    (x: number) => 4 * x,
  ];
  const rgba = opaque(
    Uint8Array.from({ length: 4 * width * 3 }, (_, i) => rows[Math.floor(i / 4 / width)]!((i >> 2) % width)),
  );
  const idat = chunksOf(await pngFile(picture(width, 3, rgba), deflate)).find(({ type }) => type === 'IDAT')!;
  const raw = inflateSync(idat.data);
  const stride = 1 + 3 * width;
  // Section 9.2: 1 Sub, 2 Up, 3 Average, 4 Paeth. A ramp equal to the one above differs from it by nothing.
  expect(raw[0]).toBeGreaterThan(0);
  expect(raw[stride]).toBe(1);
  expect(raw[2 * stride]).toBe(2);
  expect([...raw.subarray(2 * stride + 1)].every((value) => value === 0)).toBe(true);
});

it('says in every way the format has that its colors are sRGB, before the pixels, and each chunk has its CRC', async () => {
  const file = await pngFile(
    picture(2, 3, new Uint8Array(24).fill(255), {
      texts: [
        ['Title', 'Küche: one'],
        ['Description', 'L* 50\n±2'],
      ],
    }),
    deflate,
  );
  // Section 5.2.
  expect([...file.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  const chunks = chunksOf(file);
  expect(chunks.map(({ type }) => type)).toEqual([
    'IHDR',
    'sRGB',
    'gAMA',
    'cHRM',
    'cICP',
    'pHYs',
    'iTXt',
    'iTXt',
    'IDAT',
    'IEND',
  ]);
  for (const { crc, crcOfZlib } of chunks) expect(crc).toBe(crcOfZlib);
  const data = (type: string) => chunks.find((chunk) => chunk.type === type)!.data;
  // Width, height, depth 8, truecolor, the one compression, the one filter method, no interlace.
  expect([...data('IHDR')]).toEqual([0, 0, 0, 2, 0, 0, 0, 3, 8, 2, 0, 0, 0]);
  // Section 11.3.2.5 recommends these with sRGB: gamma 45455, chromaticities 31270 32900 64000 33000 30000 60000 15000 6000.
  expect(data('gAMA').readUInt32BE()).toBe(45455);
  expect(Array.from({ length: 8 }, (_, i) => data('cHRM').readUInt32BE(4 * i))).toEqual([
    31270, 32900, 64000, 33000, 30000, 60000, 15000, 6000,
  ]);
  // H.273, as the example for sRGB in section 11.3.2.6.
  expect([...data('cICP')]).toEqual([1, 13, 0, 1]);
  // 96 pixels an inch: 3780 a meter.
  expect([data('pHYs').readUInt32BE(0), data('pHYs').readUInt32BE(4), data('pHYs')[8]]).toEqual([3780, 3780, 1]);
  expect(chunks[6]!.data.toString('utf8')).toBe('Title\0\0\0en-US\0\0Küche: one');
  expect(chunks[7]!.data.toString('utf8')).toBe('Description\0\0\0en-US\0\0L* 50\n±2');
  expect(data('IEND').length).toBe(0);
});

it('refuses bytes that do not fit the size', async () => {
  await expect(pngFile(picture(2, 2, new Uint8Array(12)), deflate)).rejects.toThrow(RangeError);
  await expect(pngFile(picture(0, 2, new Uint8Array(0)), deflate)).rejects.toThrow(RangeError);
});
