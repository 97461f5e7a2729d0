import Papa from 'papaparse';
import { expect, it } from 'vitest';
import { guardedText, plainText } from '../../src/io/sheet/cell-text';
import { writeCsv } from '../../src/io/sheet/write-csv';
import { terrace } from '../ui/terrace';

// Where a spreadsheet divides cells at semicolons, what stands behind one in a text begins a cell of its own: it could be a formula. Wide
// forms of the signs that begin one, taken for them in some countries, were not looked at either.

const FORMULA = /^["\s]*[=+\-@\uff1d\uff0b\uff0d\uff20]/;
const HOSTILE = [
  "Birch;=cmd|'/C calc'!A1",
  'Birch; @SUM(1)',
  'Birch;"=1+1"',
  "Birch;'=1",
  'Birch\n=1+1',
  'Birch\t=1+1',
  '\uff1d1+1',
  '\uff0b1',
  '\uff0d1',
  '\uff20A1',
  "'=1",
  ';=1',
  'x;;-1;+2',
];

it.each(HOSTILE)('%j makes no formula, at whatever a spreadsheet divides cells', (label) => {
  const [first] = terrace().library;
  const { text } = writeCsv([{ ...first!, label, note: label }], { mark: true });
  for (const delimiter of [',', ';', '\t']) {
    const divided = Papa.parse<string[]>(text, { delimiter, quoteChar: delimiter === ',' ? '"' : '\0' }).data;
    for (const cell of divided.flat()) if (!/^-?[\d.]+("?,.*)?$/s.test(cell)) expect(cell).not.toMatch(FORMULA);
  }
});

it('the text is read again as it was', () => {
  for (const label of HOSTILE) {
    expect(plainText(guardedText(label)).text).toBe(
      plainText(label.replace(/(^|[;\t\n]["\s]*)'(?='*[=+\-@])/g, "$1''")).text,
    );
  }
});
