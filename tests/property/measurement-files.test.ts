import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Problem, Result } from '../../src/engine/result';
import { readCgats } from '../../src/io/sheet/read-cgats';
import { readCxf } from '../../src/io/sheet/read-cxf';
import { readIccNames } from '../../src/io/sheet/read-icc-names';
import type { Sheet } from '../../src/io/sheet/types';
import { cxfObject, cxfSpecification, cxfText, lab, spectrum } from '../io/sheet/cxf-text';

// Files of measurements, mutated: whatever stands in them, a reader answers with a sheet that holds together or with a problem that
// says what to do. Mutants come from one seed; UPSTAND_SEED=N explores others.

const FILES = 10_000;

const folder = `${import.meta.dirname}/../io/sheet/samples`;
const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(`${folder}/${name}`));

/** Mulberry32: numbers from 0 to below 1, the same for the same seed. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Pieces that matter to one format or the other. */
const PIECES = [
  '"',
  '#',
  '\t',
  '\n',
  '\r',
  ' ',
  ',',
  '0',
  '-1',
  '1e999',
  'NaN',
  '99999999999999999999',
  'END_DATA',
  'BEGIN_DATA',
  'BEGIN_DATA_FORMAT',
  'END_DATA_FORMAT',
  'NUMBER_OF_SETS 0',
  'SPECTRAL_NM',
  'LAB_L',
  '__proto__',
  'constructor',
  '<',
  '>',
  '/>',
  '</',
  '&',
  '&#x110000;',
  '&a;',
  ']]>',
  '<![CDATA[',
  '<!--',
  '<!DOCTYPE a>',
  '<?x?>',
  'Increment="0"',
  'StartWL="1"',
  'Id="cs1"',
  'xmlns=""',
  'ColorSpecification="toString"',
  '\0',
  '\uD800',
  '\uFEFF',
  'ä',
];

function mutatedText(text: string, random: () => number): string {
  let mutant = text;
  const times = 1 + Math.floor(random() * 6);
  for (let i = 0; i < times; i++) {
    const at = Math.floor(random() * (mutant.length + 1));
    const length = Math.floor(random() ** 4 * 400);
    const piece = PIECES[Math.floor(random() * PIECES.length)]!;
    const from = Math.floor(random() * mutant.length);
    const copied = mutant.slice(from, from + length);
    const put = [piece, '', copied, copied.repeat(3), [...copied].reverse().join('')][Math.floor(random() * 5)]!;
    mutant = mutant.slice(0, at) + put + mutant.slice(at + (random() < 0.5 ? length : 0));
  }
  return random() < 0.1 ? mutant.slice(0, Math.floor(random() * mutant.length)) : mutant;
}

function mutatedBytes(bytes: Uint8Array, random: () => number): Uint8Array {
  const mutant = bytes.slice(0, random() < 0.2 ? Math.floor(random() * bytes.length) : bytes.length);
  const times = 1 + Math.floor(random() * 8);
  for (let i = 0; i < times && mutant.length > 4; i++) {
    // Most of what matters stands at the beginning and before the names.
    const at = Math.floor((random() < 0.5 ? random() * 180 : random() * mutant.length) % mutant.length);
    const kind = random();
    if (kind < 0.4) mutant[at] = Math.floor(random() * 256);
    else if (kind < 0.7) mutant[at] = [0, 1, 0x7f, 0x80, 0xff][Math.floor(random() * 5)]!;
    else mutant.copyWithin(at, Math.floor(random() * mutant.length), Math.floor(random() * mutant.length));
  }
  return mutant;
}

const isProblem = ({ code, text, remedy }: Problem): boolean => code !== '' && text !== '' && remedy !== '';

/** What does not hold together in an answer; null where all does. */
function flaw(result: Result<Sheet>): string | null {
  if (!result.ok) return isProblem(result.problem) && (result.more ?? []).every(isProblem) ? null : 'an empty problem';
  const { columns, rows, refused, notices } = result.value;
  if (rows.length + refused.length === 0) return 'no rows at all';
  if (rows.some(({ cells }) => cells.length !== columns.length)) return 'a row of another length than the columns';
  if (rows.some(({ cells }) => cells.some((cell) => typeof cell !== 'string'))) return 'a cell that is no text';
  if (rows.some(({ line }) => !(Number.isInteger(line) && line > 0))) return 'a row without a line';
  const fields = columns.flatMap(({ field }) => (field ? [field] : []));
  if (new Set(fields).size !== fields.length) return 'a field twice';
  const numbers = [...rows, ...refused].flatMap(({ row }) => (row === undefined ? [] : [row]));
  if (new Set(numbers).size !== numbers.length) return 'a row number twice';
  if (![...refused.map(({ problem }) => problem), ...notices].every(isProblem)) return 'an empty notice';
  return null;
}

/** The flaws of mutants, each with the mutant's number. A mutant that throws fails the test by itself. */
function flawsOf(seed: number, read: (random: () => number, number: number) => Result<Sheet>) {
  const random = randomFrom((Number(process.env.UPSTAND_SEED) || 1964) + seed);
  const flaws: string[] = [];
  const outcomes = { read: 0, refused: 0 };
  for (let i = 0; i < FILES; i++) {
    const result = read(random, i);
    outcomes[result.ok ? 'read' : 'refused']++;
    const found = flaw(result);
    if (found) flaws.push(`${i}: ${found}`);
  }
  return { flaws, outcomes };
}

const texts = (names: readonly string[]) => names.map((name) => new TextDecoder().decode(bytesOf(name)));

it('answers mutated CGATS', () => {
  const samples = texts([
    'cgats-lab.txt',
    'cgats-bad-count.txt',
    'cgats-spectral-pairs-percent-comma.txt',
    'cgats-spectral-crlf.txt',
  ]);
  samples.push(`${samples[0]}${samples[2]!.slice(8)}`);
  const { flaws, outcomes } = flawsOf(1, (random, i) =>
    readCgats(mutatedText(samples[i % samples.length]!, random), 'a.txt'),
  );
  expect(flaws).toEqual([]);
  // Mutants that are all refused, or all read, would test little.
  expect(Math.min(outcomes.read, outcomes.refused)).toBeGreaterThan(FILES / 50);
});

/** All that the reader knows, in a text that is soon read. */
const smallCxf = (): string =>
  cxfText(
    cxfObject('a', spectrum('s', '0.1 0.2 0.3') + spectrum('t', '0.2 0.3 0.4', ' EndWL="600"') + lab('s', 50, 1, 2)) +
      cxfObject(
        'b',
        spectrum('u', '1 2 3'),
        '<DeviceColorValues/><TagCollection><Tag Name="Batch" Value="1"/></TagCollection>',
      ) +
      cxfObject('c', '<ColorCIExyY ColorSpecification="t"><x>0.3</x><y>0.3</y><Y>40</Y></ColorCIExyY>') +
      cxfObject(
        'd',
        '<ColorSRGB><R>1</R><G>2</G><B>3</B></ColorSRGB>',
        '<PhysicalAttributes><Gloss>9</Gloss></PhysicalAttributes>',
      ),
    cxfSpecification('s', { device: '<DeviceIllumination>M1_Daylight</DeviceIllumination>' }) +
      cxfSpecification('t', {
        geometry: '<SphereGeometry>Included</SphereGeometry>',
        light: 'D65',
        observer: '10_Degree',
      }) +
      cxfSpecification('u', { geometry: '<MultiAngle/>' }),
  );

it('answers mutated CxF', () => {
  const samples = [smallCxf(), smallCxf(), smallCxf(), ...texts(['cxf3-prefixed.cxf'])];
  const { flaws, outcomes } = flawsOf(2, (random, i) =>
    readCxf(mutatedText(samples[i % samples.length]!, random), 'a.cxf'),
  );
  expect(flaws).toEqual([]);
  expect(Math.min(outcomes.read, outcomes.refused)).toBeGreaterThan(FILES / 50);
});

it('answers mutated ICC profiles', () => {
  const samples = [bytesOf('named-colours.icc'), bytesOf('named-colours.icc'), bytesOf('display-p3-like.icc')];
  const { flaws, outcomes } = flawsOf(3, (random, i) =>
    readIccNames(mutatedBytes(samples[i % samples.length]!, random), 'a.icc'),
  );
  expect(flaws).toEqual([]);
  expect(Math.min(outcomes.read, outcomes.refused)).toBeGreaterThan(FILES / 50);
});
