import fc from 'fast-check';
import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { fileWith } from './upstand';

const number = fc.oneof(
  fc.double(),
  fc.integer({ min: -20, max: 130 }),
  fc.constantFrom(Number.NaN, Infinity, -0, 1e308),
);
const usual = fc
  .tuple(
    fc.constantFrom('lab', 'lab(D50,10)', 'lab(A)', 'lab(FL11/10)'),
    fc.double({ min: 20, max: 95, noNaN: true }),
    fc.double({ min: -9, max: 9, noNaN: true }),
  )
  .map(([kind, l, a]) => `${kind}:${l},${a},${-a}`);
const value = fc.oneof(
  usual,
  usual,
  fc
    .tuple(
      fc.constantFrom(
        'lab',
        'lch',
        'xyz',
        'lab(D50,10)',
        'lch(A SCE)',
        'xyz(FL11/10)',
        'LAB(LED-B1)',
        'lab()',
        'lab((',
      ),
      fc.array(number, { minLength: 2, maxLength: 4 }),
      fc.constantFrom(',', ' ', ';', ', '),
    )
    .map(([kind, numbers, by]) => `${kind}:${numbers.join(by)}`),
  fc.tuple(number, number, number).map(([l, a, b]) => `L* ${l} a* ${a} b* ${b} D50/10° SCE LRV ${l}`),
  fc
    .tuple(number, fc.constantFrom('R', 'Y', 'PB', 'Q'), number, number)
    .map(([h, f, v, c]) => `munsell:${h}${f} ${v}/${c}`),
  fc.tuple(fc.constantFrom('#', 'p3:#', 'hex:', ''), fc.nat(0xffffff)).map(([head, n]) => `${head}${n.toString(16)}`),
  fc.tuple(number, fc.constantFrom('gray', 'white', '', 'blue', 'constructor')).map(([n, word]) => `lrv:${n} ${word}`),
  fc.constantFrom(
    '',
    ' ',
    '.',
    '..',
    'src',
    '\0',
    'a\0.csv',
    '-',
    '--',
    '~',
    '/dev/null',
    'nowhere.csv',
    'lab:',
    ':',
    '%00',
  ),
  fc.string(),
);
const option = fc.oneof(
  fc.tuple(fc.constantFrom('--illuminant', '--observer', '--specular', '--class', '--gloss', '--lrv'), fc.string()),
  fc.tuple(fc.constant('--gloss'), number.map(String)),
  fc.tuple(fc.constant('--lrv'), number.map(String)),
  fc.tuple(fc.constant('--illuminant'), fc.constantFrom('D50', 'a', 'F11', 'D60')),
  fc.tuple(fc.constant('--observer'), fc.constantFrom('2', '10°', '5')),
  fc.tuple(fc.constant('--specular'), fc.constantFrom('included', 'Excluded', 'SCI')),
  fc.tuple(fc.constant('--class'), fc.constantFrom('wood', 'metal', 'solid surface', 'marble')),
  fc.tuple(fc.constant('--light'), fc.constantFrom('D50', 'FL11', '', 'src', '\0')),
  fc.constantFrom(['--json'], ['--nonsense'], ['--gloss']),
);

it('ends with 0 or 2 and a message, whatever is typed', () => {
  let done = 0;
  fc.assert(
    fc.property(value, fc.array(option, { maxLength: 3 }), (typed, options) => {
      const { exit, out, messages } = run(['color', typed, ...options.flat()]);
      if (exit === 0) {
        done++;
        expect(out).not.toMatch(/NaN|Infinity|undefined/);
      } else {
        expect([exit, out]).toEqual([2, '']);
        expect(messages.length).toBeGreaterThan(20);
      }
    }),
    { numRuns: 800 },
  );
  // Some of it must get through, or this test looks at refusals only.
  expect(done).toBeGreaterThan(50);
});

it('ends with 0 or 2 and a message, whatever the spectrum file holds', () => {
  const cell = fc.oneof(number.map(String), fc.string({ maxLength: 6 }), fc.constantFrom('', 'nm', '%', '"', '#'));
  const rows = fc.array(
    fc.array(cell, { maxLength: 3 }).map((cells) => cells.join(',')),
    { maxLength: 50 },
  );
  const table = fc
    .tuple(
      fc.integer({ min: 350, max: 420 }),
      fc.double({ min: 0.5, max: 26, noNaN: true }),
      fc.array(number, { maxLength: 300 }),
    )
    .map(([start, step, values]) => values.map((one, i) => `${start + i * step};${one}`));
  const usable = fc
    .tuple(
      fc.integer({ min: 380, max: 400 }),
      fc.array(fc.double({ min: -0.01, max: 1.01, noNaN: true }), { minLength: 33, maxLength: 60 }),
    )
    .map(([start, values]) => values.map((one, i) => `${start + 10 * i};${one}`));
  fc.assert(
    fc.property(fc.oneof(rows, table, usable), (lines) => {
      const { exit, out, messages } = run(['color', fileWith('any.csv', lines.join('\n')), '--gloss', '60']);
      if (exit === 0) expect(out).not.toMatch(/NaN|Infinity|undefined/);
      else expect(messages).toMatch(/any\.csv/);
    }),
    { numRuns: 200 },
  );
});
