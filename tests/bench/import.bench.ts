import { finishesOf } from '../../src/io/sheet/finishes-of';
import { readSheet } from '../../src/io/sheet/read-sheet';
import { writeCsv } from '../../src/io/sheet/write-csv';
import { inventedLibrary } from './library';
import { median } from './timing';

// Tables of 10,000 finishes, from bytes to finishes with every color looked at; and files that are none.

const COUNT = 10_000;
const PAINT = { class: 'paint', gloss_gu: 10, conditions: { illuminant: 'D65', observer_deg: 10 } } as const;

const colors = inventedLibrary(COUNT).map(({ color, finishClass }, i) => {
  const [l, a, b] = color.kind === 'lab' ? color.lab : [50, 0, 0];
  return { code: `EX-${i}`, kind: finishClass, lab: [l, a, b].map((value) => value.toFixed(2)) };
});

const bytesOf = (text: string) => new TextEncoder().encode(text);

const labs = [
  'code,name,class,L*,a*,b*,LRV,hex,price,availability,tags',
  ...colors.map(
    ({ code, kind, lab }, i) =>
      `${code},"Invented, ${i}",${kind},${lab.join(',')},,,${'$'.repeat(1 + (i % 3))},In stock,one; two`,
  ),
].join('\r\n');

const spectra = [
  `code,name,${Array.from({ length: 31 }, (_, i) => `R_${400 + 10 * i}nm`).join(',')}`,
  ...colors.map(({ code, lab }, i) => {
    const level = Number(lab[0]) / 110;
    return `${code},Invented ${i},${Array.from({ length: 31 }, (__, k) => (level * (0.9 + 0.003 * k)).toFixed(4)).join(',')}`;
  }),
].join('\n');

function imported(text: string): number {
  const sheet = readSheet(bytesOf(text), 'range.csv');
  if (!sheet.ok) throw new Error(sheet.problem.text);
  return finishesOf(sheet.value, PAINT).kept.length;
}

const kept = median(`${COUNT} rows of L*a*b* (D65, 10 degrees)`, 3000, 3, () => imported(labs));
console.log(`  ${kept} kept, ${(labs.length / 1e6).toFixed(1)} MB`);
const measured = median(`${COUNT} rows of spectra`, 3000, 3, () => imported(spectra));
console.log(`  ${measured} kept, ${(spectra.length / 1e6).toFixed(1)} MB`);

const sheet = readSheet(bytesOf(labs), 'range.csv');
if (sheet.ok) {
  const finishes = finishesOf(sheet.value, PAINT).kept.map(({ finish }) => finish);
  median(`writing ${COUNT} finishes as CSV`, null, 3, () => writeCsv(finishes));
}

/** 50 MB of something else; refused, and how. */
function refused(name: string, text: string): void {
  const bytes = bytesOf(text);
  const before = process.memoryUsage().rss;
  const read = median(`50 MB: ${name}`, 3000, 1, () => readSheet(bytes, 'range.csv'));
  const grown = Math.round((process.memoryUsage().rss - before) / 1e6);
  console.log(`  ${read.ok ? `${read.value.rows.length} rows` : read.problem.code}, ${grown} MB more in memory`);
}

const SIZE = 50e6;
refused('rows of a table', labs.repeat(Math.ceil(SIZE / labs.length)));
refused('one line', 'a,'.repeat(SIZE / 2));
refused('a quote that never closes', `code,name\n"${'x,y\n'.repeat(SIZE / 4)}`);
refused('empty lines', '\n'.repeat(SIZE));
refused('short lines', '1\n'.repeat(SIZE / 2));
refused('line breaks in quotes', `code,name\n${'"\n",'.repeat(SIZE / 4)}`);
