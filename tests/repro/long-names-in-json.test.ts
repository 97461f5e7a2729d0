import { crc32, deflateRawSync } from 'node:zlib';
import { expect, it } from 'vitest';
import type { JsonLines } from '../../src/io/json-lines';
import { locateJson } from '../../src/io/json-text';
import { DICTIONARY_1 } from '../../src/io/link/dictionary-1.data';
import { readFragment } from '../../src/io/link/option-link';

// The line of a value was kept by its whole path: a long name over a long list filled memory and time with copies of the name, so that
// a link of some 1,700 characters hung the page.

const linkOf = (text: string) => {
  const head = Buffer.alloc(4);
  head.writeUInt32BE(crc32(text));
  const packed = deflateRawSync(Buffer.from(text), { level: 9, dictionary: Buffer.from(DICTIONARY_1) });
  return `#o1.${Buffer.concat([head, packed]).toString('base64url')}`;
};

it('a small link that inflates to a long name over a long list is refused', () => {
  const link = linkOf(`{"${'k'.repeat(500_000)}":[${'0,'.repeat(249_000)}0]}`);
  expect(link.length).toBeLessThan(2000);
  const read = readFragment(link);
  expect(!read.ok && read.problem).toMatchObject({ code: 'not-json', at: { line: 1 } });
  expect(!read.ok && read.problem.text.length).toBeLessThan(200);
});

it('lines take as much room as the text has values, however long the names above them', () => {
  const names = Array.from({ length: 60 }, () => 'k'.repeat(200));
  const text = `${names.map((name) => `{"${name}":`).join('')}[${'0,'.repeat(99_999)}0]${'}'.repeat(names.length)}`;
  const read = locateJson(text);
  if (!read.ok) throw new Error(read.problem.text);
  const size = sizeOf(read.value.lines);
  expect(size.values).toBe(100_000 + 61);
  expect(size.letters).toBe(60 * 200);
});

/** How many lines are kept, and letters to find them by. */
function sizeOf(lines: JsonLines): { values: number; letters: number } {
  const size = { values: 1, letters: 0 };
  if (typeof lines === 'number') return size;
  for (const [key, one] of lines.below.entries()) {
    const below = sizeOf(one);
    size.values += below.values;
    size.letters += below.letters + (typeof key === 'string' ? key.length : 0);
  }
  return size;
}
