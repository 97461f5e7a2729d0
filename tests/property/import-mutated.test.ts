import { expect, it } from 'vitest';
import { mulberry32 } from '../../src/engine/random';
import { finishesOf } from '../../src/io/sheet/finishes-of';
import { readSheet } from '../../src/io/sheet/read-sheet';
import { checkFinish } from '../../src/model/check-finish';
import { ANSWERED, SAMPLE_FILES, sampleBytes } from '../io/sheet/sample-files';

/** Files that are made of the samples. */
const FILES = 10_000;

const SEED = Number(process.env.UPSTAND_SEED) || 1964;

type Random = () => number;
type Mutation = (bytes: Uint8Array, random: Random) => Uint8Array;

const below = (random: Random, count: number): number => Math.floor(random() * count);

const joined = (...parts: readonly Uint8Array[]): Uint8Array => {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
};

/** The text with each byte as a letter, so that nothing is lost on the way back. */
const onText =
  (change: (text: string, random: Random) => string): Mutation =>
  (bytes, random) => {
    const text = change(String.fromCharCode(...bytes), random);
    return Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  };

const WORDS = [
  '',
  '-',
  '0',
  '1e999',
  '-1',
  '104',
  'NaN',
  '1,5',
  '1.234,5',
  '"',
  '#',
  'D65',
  '=1+1',
  '\t',
  '\r',
  '\xe9',
  '999999',
  '400',
  ';',
];

const MUTATIONS: readonly Mutation[] = [
  (bytes, random) => bytes.map((byte) => (random() < 0.01 ? below(random, 256) : byte)),
  (bytes, random) => bytes.slice(0, below(random, bytes.length)),
  (bytes, random) => bytes.slice(below(random, bytes.length)),
  (bytes, random) => {
    const from = below(random, bytes.length);
    const to = from + below(random, bytes.length - from);
    return joined(bytes.slice(0, to), bytes.slice(from));
  },
  (bytes, random) => {
    const from = below(random, bytes.length);
    return joined(bytes.slice(0, from), bytes.slice(from + below(random, 40)));
  },
  onText((text, random) =>
    text.replaceAll([',', ';', '\t', '.'][below(random, 4)]!, [',', ';', '\t', '|', ' '][below(random, 5)]!),
  ),
  onText((text, random) =>
    text.replace(/-?\d+(?:[.,]\d+)?/g, (number) => (random() < 0.1 ? WORDS[below(random, WORDS.length)]! : number)),
  ),
  onText((text, random) => text.replaceAll('\n', ['\r', '\r\n', '\n\n', ' '][below(random, 4)]!)),
  onText((text, random) =>
    text
      .split('\n')
      .sort(() => random() - 0.5)
      .join('\n'),
  ),
  onText((text, random) =>
    text.replace(/[a-z]+/gi, (word) => (random() < 0.05 ? WORDS[below(random, WORDS.length)]! : word)),
  ),
  (bytes) => joined(Uint8Array.of(0xff, 0xfe), Uint8Array.from([...bytes].flatMap((byte) => [byte, 0]))),
];

it(`reads ${FILES} broken files without an exception, and keeps nothing that is no finish`, () => {
  const random = mulberry32(SEED);
  const samples = SAMPLE_FILES.map((name) => ({ name, bytes: sampleBytes(name) }));
  const counts = { kept: 0, refused: 0, wrong: 0 };
  for (let i = 0; i < FILES; i++) {
    const { name, bytes } = samples[below(random, samples.length)]!;
    let mutated = bytes;
    for (let k = below(random, 3); k >= 0; k--) mutated = MUTATIONS[below(random, MUTATIONS.length)]!(mutated, random);
    const read = readSheet(mutated, name);
    if (!read.ok) {
      counts.wrong++;
      if (!read.problem.text || !read.problem.remedy) throw new Error(`file ${i}: a problem without words`);
      continue;
    }
    const { kept, refused } = finishesOf(read.value, ANSWERED);
    counts.kept += kept.length;
    counts.refused += refused.length;
    for (const { finish } of kept) {
      const [problem] = checkFinish(finish, 'finish');
      if (problem) throw new Error(`file ${i}, ${name}: ${problem.text}`);
    }
    if (new Set(kept.map(({ finish }) => finish.id)).size < kept.length)
      throw new Error(`file ${i}: an id stands twice`);
    if (refused.some(({ problem }) => !problem.text || !problem.remedy))
      throw new Error(`file ${i}: a refusal without words`);
  }
  // That the files were neither all whole nor all nonsense.
  expect(Math.min(...Object.values(counts))).toBeGreaterThan(1000);
});
