import { crc32 } from 'node:zlib';
import { expect } from '@playwright/test';

/** The types of the chunks of a PNG file in their order; each has the checksum it should (PNG, 5.3 and 5.4). */
export function soundChunks(file: Buffer): string[] {
  const types: string[] = [];
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    types.push(file.toString('latin1', at + 4, at + 8));
    expect(file.readUInt32BE(at + 8 + length)).toBe(crc32(file.subarray(at + 4, at + 8 + length)));
    at += 12 + length;
  }
  return types;
}
