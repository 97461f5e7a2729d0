import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseSpectrumCsv } from '../../src/io/spectrum-file';

const table = (from: number, to: number, step: number, value: (nm: number) => string, mark = ',') => {
  const rows: string[] = [];
  for (let nm = from; nm <= to; nm += step) rows.push(`${nm}${mark}${value(nm)}`);
  return rows.join('\n');
};

it.each([
  ['comma', table(400, 700, 10, () => '0.5'), 10, 31],
  ['comment and heading', `# a sample\nnm,reflectance\n${table(380, 780, 5, () => '0.5')}`, 5, 81],
  ['spaces', table(380, 730, 10, () => '0.5', '  '), 10, 36],
  ['tab and decimal comma', table(400, 700, 20, () => '0,5', '\t'), 20, 16],
  ['spaces and decimal comma', table(400, 700, 20, () => '0,5', ' '), 20, 16],
  [
    'semicolon, decimal comma, byte order mark, CRLF',
    `\uFEFFnm;R\n${table(360, 740, 10, () => '0,5', ';')}`.replaceAll('\n', '\r\n'),
    10,
    39,
  ],
  ['comma and space', table(400, 700, 1, () => '0.5', ', '), 1, 301],
])('reads %s', (_, text, step_nm, count) => {
  const read = parseSpectrumCsv(text, 's.csv');
  expect(read).toMatchObject({ ok: true, value: { kind: 'spectrum', step_nm }, notices: [{ code: 'read-as-factor' }] });
  expect(read.ok && read.value.reflectance).toEqual(new Array(count).fill(0.5));
});

it('takes values over 3 as percent and says so', () => {
  const read = parseSpectrumCsv(table(400, 700, 10, (nm) => (nm < 410 ? '2.5' : '50')));
  expect(read).toMatchObject({ ok: true, notices: [{ code: 'read-as-percent' }] });
  expect(read.ok && read.value.reflectance.slice(0, 2)).toEqual([0.025, 0.5]);
});

it.each([
  ['no-spectrum', '', undefined],
  ['no-spectrum', '# nothing here\nnm,value', undefined],
  ['spectrum-range', '400,0.5\n407,0.5\n414,0.5', undefined],
  ['spectrum-step', table(400, 725, 25, () => '0.5'), undefined],
  ['uneven-steps', `${table(400, 500, 10, () => '0.5')}\n520,0.5`, 12],
  ['bad-row', '400,0.5\n410,black\n420,0.5', 2],
  ['bad-row', '400,0.5\n410,\n420,0.5', 2],
  ['bad-row', '400,black\n410,0.5\n420,0.5', 1],
  ['no-spectrum', 'a title\nanother\n400,0.5', undefined],
  ['wavelength-order', table(400, 700, 10, () => '0.5').replace('500,', '490,'), 11],
  ['wavelength-order', `${table(400, 700, 10, () => '0.5')}\n650,0.5`, 32],
  ['spectrum-range', table(400, 600, 10, () => '0.5'), undefined],
  ['spectrum-range', table(450, 700, 10, () => '0.5'), undefined],
  ['out-of-range', table(400, 700, 10, () => '-0.5'), 1],
  ['out-of-range', table(400, 700, 10, () => '150'), 1],
])('refuses with %s: %j', (code, text, line) => {
  const read = parseSpectrumCsv(text, 's.csv');
  expect(read).toMatchObject({ ok: false, problem: { code, at: { file: 's.csv' } } });
  expect(!read.ok && read.problem.at?.line).toBe(line);
  expect(!read.ok && read.problem.remedy).not.toBe('');
});

it('reads a table from long to short wavelengths, with lines of headings above', () => {
  const rows = table(400, 700, 10, (nm) => String(nm / 1000))
    .split('\n')
    .toReversed()
    .join('\n');
  const read = parseSpectrumCsv(`an instrument\nserial number 7\nnm,R\n${rows}`);
  expect(read).toMatchObject({ ok: true, value: { start_nm: 400, step_nm: 10 } });
  expect(read.ok && [read.value.reflectance[0], read.value.reflectance[30]]).toEqual([0.4, 0.7]);
  expect(read.ok && read.notices?.map(({ code }) => code)).toEqual(['read-as-factor', 'lines-left-out']);
});

it('takes thirds of 10 nm printed as whole numbers or with two digits for what they are', () => {
  const thirds = (digits: number) =>
    Array.from({ length: 105 }, (_, i) => `${(380 + (i * 10) / 3).toFixed(digits)},0.5`).join('\n');
  for (const digits of [0, 2]) {
    const read = parseSpectrumCsv(thirds(digits));
    expect(read.ok && read.value.step_nm).toBeCloseTo(10 / 3, 2);
    expect(read.ok && read.value.reflectance).toHaveLength(105);
  }
});

it('evens out the slowly changing steps of an array instrument: a smooth curve stays within 0.0015, and says so', () => {
  const curve = (nm: number) => 0.4 + 0.3 * Math.sin(nm / 50);
  for (const [count, bend] of [
    [1024, 20],
    [300, 20],
    [70, 12],
  ] as const) {
    // Wavelengths of a grating on an array of pixels run along a parabola.
    const rows = Array.from({ length: count }, (_, i) => {
      const t = i / (count - 1);
      const nm = Number((378 + 410 * t + bend * t * (1 - t)).toFixed(3));
      return `${nm};${curve(nm).toFixed(6)}`;
    });
    const read = parseSpectrumCsv(rows.join('\n'));
    expect(read.ok && read.notices?.map(({ code }) => code)).toContain('steps-evened');
    if (!read.ok) continue;
    const { start_nm, step_nm, reflectance } = read.value;
    expect(start_nm + step_nm * (reflectance.length - 1)).toBeGreaterThan(779);
    for (const [i, value] of reflectance.entries()) {
      // The mean of two or three values may lie 0.2 nm aside; the curve rises by 0.006 per nm.
      expect(Math.abs(value - curve(start_nm + i * step_nm))).toBeLessThan(1.5e-3);
    }
  }
});

it('takes a dark sample as percent where the heading says so, and noise about black for what it is', () => {
  const dark = parseSpectrumCsv(`nm,R %\n${table(400, 700, 10, () => '2.5')}`);
  expect(dark.ok && dark.value.reflectance[0]).toBeCloseTo(0.025, 12);
  expect(parseSpectrumCsv(table(400, 700, 10, () => '2.5')).ok).toBe(false);
  expect(parseSpectrumCsv(table(400, 700, 10, (nm) => (nm === 400 ? '-0.001' : '0.03'))).ok).toBe(true);
});

const NM_10 = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

/** Wavelengths across the top, a row a sample. */
const across = (
  heading: (nm: number) => string,
  names: readonly string[],
  value: (i: number) => string,
  mark = ',',
): string =>
  [
    ['No', 'Name', ...NM_10.map(heading), 'L*', 'a*'].join(mark),
    ...names.map((name, i) => [String(i + 1), name, ...NM_10.map(() => value(i)), '80', '0'].join(mark)),
  ].join('\n');

it.each([
  ['numbers', across(String, ['Wall'], () => '0.5')],
  [
    'R400',
    across(
      (nm) => `R${nm}`,
      ['Wall #2, left'],
      () => '0.5',
      ';',
    ),
  ],
  [
    '400 nm',
    across(
      (nm) => `${nm} nm`,
      ['Wall'],
      () => '0.5',
    ),
  ],
  [
    'decimal commas',
    across(
      (nm) => `${nm}nm`,
      ['Wall'],
      () => '0,5',
      ';',
    ),
  ],
  [
    'decimal commas and tabs',
    across(
      (nm) => `${nm},0`,
      ['Wall'],
      () => '0,5',
      '\t',
    ),
  ],
  ['spaces', across(String, ['Wall'], () => '0.5', ' ')],
  [
    'a CGATS table',
    `CGATS.17\nORIGINATOR "x"\nBEGIN_DATA_FORMAT\n${across(
      (nm) => `SPECTRAL_NM${nm}`,
      ['"a b"'],
      () => '0.5',
      '\t',
    ).replace('\n', '\nEND_DATA_FORMAT\nNUMBER_OF_SETS 1\nBEGIN_DATA\n')}\nEND_DATA`,
  ],
  ['long to short', `Name,${NM_10.toReversed().join(',')}\nWall,${NM_10.map(() => '0.5').join(',')}`],
  ['nothing but numbers', `${NM_10.join(',')}\n${NM_10.map(() => '0.5').join(',')}`],
  ['lines above', `Instrument report\nDate;today\n${across(String, ['Wall'], () => '0.5', ';')}`],
])('reads one sample a row with wavelengths across: %s', (_, text) => {
  const read = parseSpectrumCsv(text, 's.csv');
  expect(read).toMatchObject({
    ok: true,
    value: { start_nm: 400, step_nm: 10 },
    notices: [{ code: 'read-as-factor' }],
  });
  expect(read.ok && read.value.reflectance).toEqual(new Array(31).fill(0.5));
});

it('of several rows refuses to choose, names them, and reads the one that is named', () => {
  const text = across(String, ['Door', 'Wall', 'Wall'], (i) => String(10 * (i + 1)));
  const read = parseSpectrumCsv(text, 's.csv');
  expect(read).toMatchObject({ ok: false, problem: { code: 'several-samples', at: { file: 's.csv' } } });
  expect(!read.ok && read.problem.text).toBe('The file has 3 samples: Door, Wall, Wall (2).');
  for (const [name, value] of [
    ['door', 0.1],
    ['Wall', 0.2],
    ['wall (2)', 0.3],
  ] as const) {
    const one = parseSpectrumCsv(text, 's.csv', name);
    expect(one).toMatchObject({ ok: true, notices: [{ code: 'read-as-percent' }] });
    expect(one.ok && one.value.reflectance[7]).toBeCloseTo(value, 12);
  }
  const none = parseSpectrumCsv(text, 's.csv', 'floor');
  expect(none).toMatchObject({ ok: false, problem: { code: 'unknown-sample' } });
  expect(!none.ok && none.problem.remedy).toContain('Door, Wall');
});

it('takes the scale of a dark row from the other rows of the file', () => {
  const read = parseSpectrumCsv(
    across(String, ['Black', 'White'], (i) => (i === 0 ? '0.5' : '90')),
    's.csv',
    'Black',
  );
  expect(read.ok && read.value.reflectance[3]).toBeCloseTo(0.005, 12);
});

it('refuses a row across that misses a value, with its line', () => {
  const text = across(String, ['Door', 'Wall'], () => '0.5').replace(/0\.5,80,0$/, 'x,80,0');
  expect(parseSpectrumCsv(text, 's.csv', 'Door')).toMatchObject({
    ok: false,
    problem: { code: 'bad-row', at: { line: 3 } },
  });
  expect(
    parseSpectrumCsv(
      across(String, [], () => ''),
      's.csv',
    ),
  ).toMatchObject({ ok: false, problem: { code: 'no-spectrum' } });
});

it('reads a named column of a table with wavelengths down the side', () => {
  const text = `nm,door,wall\n${table(400, 700, 10, () => '0.5,0.25')}`;
  const read = parseSpectrumCsv(text, 's.csv', 'Wall');
  expect(read.ok && read.value.reflectance[0]).toBe(0.25);
  expect(parseSpectrumCsv(text, 's.csv', 'floor')).toMatchObject({ ok: false, problem: { code: 'unknown-sample' } });
});

it('calls a brightener by its name, with line and wavelength', () => {
  const read = parseSpectrumCsv(
    table(400, 700, 10, (nm) => (nm === 420 ? '103.274' : '90')),
    's.csv',
  );
  expect(read).toMatchObject({ ok: false, problem: { code: 'spectrum-above-one', at: { line: 3 } } });
  expect(!read.ok && read.problem.text).toMatch(/103\.3% at 420 nm: .*optical brightener/);
});

it('never throws and never lets in what is no number, whatever the text', () => {
  const cell = fc.oneof(
    fc.constantFrom('', 'nm', '1e999', '-0', 'NaN', 'Infinity', '0x1F', '1e-400', '#', '"', '%', '4 00'),
    fc.double().map(String),
    fc.integer({ min: 300, max: 900 }).map(String),
  );
  const row = fc
    .array(cell, { maxLength: 4 })
    .chain((cells) => fc.constantFrom(',', ';', '\t', ' ').map((by) => cells.join(by)));
  const text = fc.oneof(
    fc.string(),
    fc.array(row, { maxLength: 40 }).map((rows) => rows.join('\n')),
  );
  const withTable = fc
    .tuple(text, fc.array(fc.double(), { minLength: 31, maxLength: 31 }))
    .map(([head, values]) => `${head}\n${values.map((value, i) => `${400 + 10 * i};${value}`).join('\n')}`);
  const withRows = fc
    .tuple(text, fc.array(fc.array(cell, { minLength: 29, maxLength: 34 }), { maxLength: 3 }))
    .map(([head, rows]) => [head, `n;${NM_10.join(';')}`, ...rows.map((cells) => cells.join(';'))].join('\n'));
  fc.assert(
    fc.property(fc.oneof(text, withTable, withRows), (any) => {
      const read = parseSpectrumCsv(any);
      if (read.ok) expect(read.value.reflectance.every((value) => value > -0.005 && value < 1.005)).toBe(true);
      else expect(read.problem.remedy).not.toBe('');
    }),
    { numRuns: 300 },
  );
});
