import { expect, it } from 'vitest';
import { finishesOf } from '../../../src/io/sheet/finishes-of';
import { readCsv } from '../../../src/io/sheet/read-csv';
import { idOfCode, noIds, takeId } from '../../../src/io/sheet/row-ids';
import { writeCsv } from '../../../src/io/sheet/write-csv';

function imported(text: string) {
  const sheet = readCsv(text, 'range.csv');
  if (!sheet.ok) throw new Error(sheet.problem.text);
  return finishesOf(sheet.value, { class: 'paint', gloss_gu: 5 });
}

it('numbers ids of codes that differ in marks only, around those that are taken', () => {
  const ids = noIds();
  const wanted = ['a?b', 'a!b', 'a-b-2', 'a&b', 'a b'].map(idOfCode);
  expect(wanted.map((one) => takeId(ids, one))).toEqual(['a-b', 'a-b-2', 'a-b-2-2', 'a-b-3', 'a-b-4']);
});

it('gives back the same finishes where names are missing or only say the code again', () => {
  const { kept } = imported('code,name,hex\n1,,#aabbcc\nEX 4,EX 4,#aabbcc\nEX-5,EX-5,#aabbcc\nEX-6,Oat,#aabbcc\n');
  const finishes = kept.map(({ finish }) => finish);
  expect(finishes.map(({ label }) => label)).toEqual(['1', 'EX 4', 'EX-5', 'Oat, EX-6']);
  expect(imported(writeCsv(finishes).text).kept.map(({ finish }) => finish)).toEqual(finishes);
});

it('says of a long notation that it is none', () => {
  const { refused } = imported(`code,munsell\n1,${'9'.repeat(4000)}\n`);
  expect(refused).toHaveLength(1);
  expect(refused[0]!.problem.text.length).toBeLessThan(300);
});
