import { expect, it } from 'vitest';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import { isWordsOnly } from '../../../src/io/sheet/words-only';

const isText = (text: string): boolean => {
  const read = readSheet(new TextEncoder().encode(text), 'notes.txt');
  return read.ok && isWordsOnly(read.value);
};

it.each(['Dear diary', 'Dear diary\nToday we looked at tiles.\n', 'Call the shop\nMeasure the window\n'])(
  'is no table of finishes: %s',
  (text) => expect(isText(text)).toBe(true),
);

it.each([
  'Name;L*;a*;b*\nOat;80;1;9\n',
  'Name,Hex\nOat,#d9d4c8\n',
  'Oat,#d9d4c8\nBark,#554433\n',
  'Name\tLRV\nOat\t62\n',
])('is one: %s', (text) => expect(isText(text)).toBe(false));
