import { expect, it } from 'vitest';
import { parseFidelitySamples } from '../../src/io/fidelity-samples';

// Invented reflectances: sample k is the constant k / 100, or percent. The samples of CIE 224 may not be passed on.
const NM = Array.from({ length: 81 }, (_, i) => 380 + 5 * i);
const SAMPLES: readonly number[] = Array.from({ length: 99 }, (_, i) => (i + 1) / 100);

/** The samples with another fifth one. */
const withSample = (value: number | string): readonly (number | string)[] => [
  ...SAMPLES.slice(0, 4),
  value,
  ...SAMPLES.slice(5),
];

const down = (nm: readonly number[] = NM, samples: readonly (number | string)[] = SAMPLES) =>
  [['nm', ...samples.map((_, i) => i + 1)], ...nm.map((one) => [one, ...samples])]
    .map((row) => row.join(','))
    .join('\n');
const across = (head: readonly string[], label: (i: number) => readonly string[]) =>
  [[...head, ...NM], ...SAMPLES.map((value, i) => [...label(i), ...NM.map(() => value)])]
    .map((row) => row.join(';'))
    .join('\n');

const problemOf = (text: string) => {
  const parsed = parseFidelitySamples(text, 'samples.csv');
  return parsed.ok ? 'was read' : `${parsed.problem.code} ${parsed.problem.at?.line ?? '-'} ${parsed.problem.text}`;
};

it.each([
  ['down the first column', down(), 'read-as-factor'],
  [
    'in percent',
    down(
      NM,
      SAMPLES.map((value) => 100 * value),
    ),
    'read-as-percent',
  ],
  ['without headings', down().split('\n').slice(1).join('\n'), 'read-as-factor'],
  ['across the top', across(['CES'], (i) => [`CES${i + 1}`]), 'read-as-factor'],
  ['across the top without names', across([], () => []), 'read-as-factor'],
  ['across the top, two columns of names', across(['No', 'Name'], (i) => [`${i + 1}`, 'leaf']), 'read-as-factor'],
])('reads 99 samples written %s', (_, text, notice) => {
  const parsed = parseFidelitySamples(text);
  if (!parsed.ok) throw new Error(parsed.problem.text);
  expect(parsed.value).toHaveLength(99);
  // Constant in, constant out; 1e-12 for the division by 100.
  parsed.value.forEach((rho, i) => {
    for (const value of rho) expect(Math.abs(value - SAMPLES[i]!)).toBeLessThan(1e-12);
  });
  expect(parsed.notices?.map(({ code }) => code)).toEqual([notice]);
});

it.each([
  ['98 samples', down(NM, SAMPLES.slice(1)), 'sample-count - The file has 98 samples; CIE 224 has 99'],
  ['one sample', down(NM, [0.5]), 'sample-count'],
  [
    '98 rows',
    across(['CES'], (i) => [`${i}`])
      .split('\n')
      .slice(0, -1)
      .join('\n'),
    'sample-count',
  ],
  ['words only', 'the samples\nof the standard\n', 'no-samples -'],
  ['a short range', down(NM.slice(10)), 'spectrum-range 2'],
  ['a word', down(NM, withSample('leaf')), 'bad-row 2 Line 2: "leaf" is not a number'],
  ['a gap', down(NM, withSample('')), 'bad-row 2 Line 2: a value is missing'],
  ['a negative value', down(NM, withSample(-0.1)), 'out-of-range 2'],
  ['a value above one', down(NM, withSample(1.2)), 'out-of-range 2 Line 2: 1.2 is outside 0 to 1'],
  ['a value above 100%', down(NM, SAMPLES.map((value) => 100 * value).with(4, 120)), 'out-of-range 2'],
  ['an uneven step', down(NM.filter((nm) => nm !== 500)), 'uneven-steps 26 Line 26: 505 nm breaks the step of 5 nm'],
  ['disorder', down(NM.toReversed()), 'wavelength-order 3'],
])('refuses %s with the reason', (_, text, problem) => {
  expect(problemOf(text)).toContain(problem);
});
