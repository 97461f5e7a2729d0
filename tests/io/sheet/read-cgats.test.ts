import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readCgats } from '../../../src/io/sheet/read-cgats';
import type { Field, Sheet } from '../../../src/io/sheet/types';

const sample = (name: string): string => readFileSync(`${import.meta.dirname}/samples/${name}`, 'utf8');

function read(text: string): Sheet {
  const result = readCgats(text, 'range.txt');
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

/** Cells of the columns of some fields, row by row. */
const cells = ({ columns, rows }: Sheet, fields: readonly Field[]) =>
  rows.map((row) => fields.map((field) => row.cells[columns.findIndex((one) => one.field === field)]));

const numbers = (sheet: Sheet, fields: readonly Field[]) =>
  cells(sheet, fields).map((row) => row.map((cell) => Number(cell?.replace(',', '.'))));

const codes = (sheet: Sheet) => cells(sheet, ['code']).flat();
const refusals = ({ refused }: Sheet) => refused.map(({ row, problem: { code, at } }) => `${row} ${code} ${at?.line}`);
const notices = (sheet: Sheet) => sheet.notices.map(({ code, at }) => `${code} ${at?.line ?? '-'}`);

const table = (fields: string, data: string, keywords = '') =>
  `CGATS.17\n${keywords}BEGIN_DATA_FORMAT\n${fields}\nEND_DATA_FORMAT\nBEGIN_DATA\n${data}\nEND_DATA\n`;
const LAB = 'SAMPLE_ID LAB_L LAB_A LAB_B';

it('reads L*a*b* with quoted names, its light, observer and geometry', () => {
  const sheet = read(sample('cgats-lab.txt'));
  expect(cells(sheet, ['code', 'name', 'lab_l', 'lab_a', 'lab_b'])).toEqual([
    ['1', 'Oat Linen', '86.18', '1.70', '10.53'],
    ['2', 'Harbour Slate', '43.50', '-2.08', '-4.66'],
    ['3', 'Moss Shelf', '52.76', '-12.49', '17.28'],
  ]);
  expect(sheet.rows.map(({ line }) => line)).toEqual([16, 17, 18]);
  // ISO 13655, where M1 comes from, knows 45:0 and 0:45 only: no mirror-like part.
  expect(sheet.said).toEqual({ illuminant: 'D50', observer_deg: 2, specular: 'excluded' });
  expect(notices(sheet)).toEqual(['measurement-condition 6']);
});

const nm = (from: number, to: number, step: number): readonly Field[] =>
  Array.from({ length: (to - from) / step + 1 }, (_, i): Field => `nm:${from + i * step}`);

it('reads a spectrum with one column for each band: CRLF, tabs, remarks', () => {
  const sheet = read(sample('cgats-spectral-crlf.txt'));
  const bands = sheet.columns.flatMap(({ field }) => (field?.startsWith('nm:') ? [field] : []));
  expect(bands).toEqual(nm(400, 700, 10));
  expect(cells(sheet, ['name', 'nm:400', 'nm:700'])[2]).toEqual(['Moss Shelf', '0.1107', '0.1425']);
  expect(sheet.rows.map(({ line }) => line)).toEqual([43, 44, 45]);
  expect(sheet.said).toEqual({ scale: 'factor' });
  expect(notices(sheet)).toEqual(['reflectance-scale -']);
});

it('reads pairs in percent with decimal commas: the same numbers as in columns', () => {
  const pairs = read(sample('cgats-spectral-pairs-percent-comma.txt'));
  const bands = nm(400, 700, 20);
  expect(pairs.said).toEqual({ scale: 'percent' });
  expect(notices(pairs)).toEqual(['reflectance-scale -', 'decimal-comma 10']);
  const columns = numbers(read(sample('cgats-spectral-crlf.txt')), bands).slice(0, 2);
  expect(numbers(pairs, bands).map((row) => row.map((value) => value / 100))).toEqual(
    columns.map((row) => row.map((value) => expect.closeTo(value, 10))),
  );
});

it('keeps what is whole where the count is too large and the last row short, and says both with their lines', () => {
  const sheet = read(sample('cgats-bad-count.txt'));
  expect(codes(sheet)).toEqual(['1']);
  expect(sheet.refused).toMatchObject([{ row: 2, code: '2', problem: { code: 'short-row', at: { line: 10 } } }]);
  expect(notices(sheet)).toEqual(['set-count 7']);
});

it.each([
  ['a short row', '1 1 2 3\n2 1 2\n3 1 2 3', ['1', '3'], ['2 short-row 7']],
  ['a long row', '1 1 2 3\n2 1 2 3 4\n3 1 2 3', ['1', '3'], ['2 long-row 7']],
  ['a name without quotes', '1 1 2 3\nOat Linen 1 2 3\n3 1 2 3', ['1', '3'], ['2 long-row 7']],
  ['an open quote', '1 1 2 3\n"2 1 2 3\n3 1 2 3', ['1', '3'], ['2 open-quote 7']],
  ['rows over two lines', '1 1\n2 3\n2 1\n2 3', ['1', '2'], []],
  ['one row over two lines', '1 1 2 3\n2 1\n2 3\n3 1 2 3', ['1', '2', '3'], []],
  ['two rows on a line', '1 1 2 3\n2 1 2 3 3 1 2 3\n4 1 2 3', ['1', '2', '3', '4'], []],
  ['rows that begin anywhere', '1 1 2 3 2 1\n2 3 3 1 2 3', ['1', '2', '3'], []],
  ['a remark among rows', '1 1 2 3\n# half way\n2 1 2 3 # good', ['1', '2'], []],
  ['a quote within a word', '3"x6" 1 2 3\n"3""x6""" 1 2 3', ['3"x6"', '3"x6"'], []],
  // Rows on two lines each: after the short one no row can be told.
  ['a short row among wrapped ones', '1 1\n2 3\n2 1\n2\n3 1\n2 3', ['1'], ['2 long-row 8']],
  ['all on one line and a value too few', '1 1 2 3 2 1 2 3 1 2 3', [], ['1 long-row 6']],
])('reads data with %s', (_, data, kept, refused) => {
  const sheet = read(table(LAB, data));
  expect(codes(sheet)).toEqual(kept);
  expect(refusals(sheet)).toEqual(refused);
});

it('says how many lines are left out where rows cannot be told', () => {
  const sheet = read(table(LAB, '1 1\n2 3\n2 1\n2\n3 1\n2 3'));
  expect(sheet.refused[0]!.problem.text).toContain('4 lines from here');
});

it('keeps names without quotes and empty cells apart where tabs part the columns', () => {
  const fields = 'SAMPLE_ID\tSAMPLE_NAME\tLAB_L\tLAB_A\tLAB_B';
  const sheet = read(table(fields, '1\tOat Linen\t1\t2\t3\n2\t\t1\t2\t3\n\t"Moss ""S"""\t1\t2\t3'));
  expect(cells(sheet, ['code', 'name', 'lab_b'])).toEqual([
    ['1', 'Oat Linen', '3'],
    ['2', '', '3'],
    ['', 'Moss "S"', '3'],
  ]);
});

it.each(['\n', '\r\n', '\r'])('counts lines that end with %j', (end) => {
  const sheet = read(table(LAB, '1 1 2 3\n\n2 1 2 3').replaceAll('\n', end));
  expect(sheet.rows.map(({ line }) => line)).toEqual([6, 8]);
});

it('numbers rows among all of the file, refused ones too', () => {
  const sheet = read(`${table(LAB, '1 1 2 3\n2 1 2\n3 1 2 3')}${table(LAB, '4 1 2 3')}`);
  expect(sheet.rows.map(({ row }) => row)).toEqual([1, 3, 4]);
});

it('reads tables one after the other with the columns of all', () => {
  const more = table('SAMPLE_NAME SAMPLE_ID LAB_L LAB_A LAB_B NOTE', '"Oat" 2 4 5 6 "kept dry"');
  const sheet = read(table(LAB, '1 1 2 3') + more);
  expect(cells(sheet, ['code', 'name', 'lab_l', 'note'])).toEqual([
    ['1', '', '1', ''],
    ['2', 'Oat', '4', 'kept dry'],
  ]);
});

it('lets each row say its light where tables differ in it', () => {
  const light = (id: string) => `WEIGHTING_FUNCTION "ILLUMINANT, ${id}"\nWEIGHTING_FUNCTION "OBSERVER, 10 degree"\n`;
  const sheet = read(table(LAB, '1 1 2 3', light('D50')) + table(LAB, '2 1 2 3', light('D65')));
  expect(cells(sheet, ['illuminant', 'observer_deg'])).toEqual([
    ['D50', '10'],
    ['D65', '10'],
  ]);
  expect(sheet.said).toEqual({});
});

const BANDS = 'SAMPLE_ID NM_400 NM_410 NM_420';
const under = (condition: string) => `MEASUREMENT_SOURCE "MeasurementCondition=${condition}"\n`;

it('reads tables of the same samples as one: colors from one, spectra from the next', () => {
  const sheet = read(table(LAB, '1 50 2 3\n2 60 2 3') + table(BANDS, '1 0.1 0.2 0.3\n2 0.4 0.5 0.6'));
  expect(cells(sheet, ['code', 'lab_l', 'nm:420'])).toEqual([
    ['1', '50', '0.3'],
    ['2', '60', '0.6'],
  ]);
  expect(notices(sheet)).toEqual(['tables-joined 2', 'reflectance-scale -']);
});

it('takes of tables of the same samples the one whose light is most like daylight', () => {
  const sheet = read(table(BANDS, '1 0.1 0.2 0.3', under('M0')) + table(BANDS, '1 0.4 0.5 0.6', under('M1')));
  expect(cells(sheet, ['code', 'nm:400'])).toEqual([['1', '0.4']]);
  expect(sheet.notices.find(({ code }) => code === 'tables-joined')!.text).toContain(
    'what the table of M1, line 11 gives goes before that of M0, line 3',
  );
});

it('takes no color of another light into such a table', () => {
  const light = (id: string) => `WEIGHTING_FUNCTION "ILLUMINANT, ${id}"\n`;
  const sheet = read(
    table(LAB, '1 50 2 3', light('D50')) + table('SAMPLE_ID XYZ_X XYZ_Y XYZ_Z', '1 40 41 42', light('D65')),
  );
  expect(cells(sheet, ['lab_l', 'illuminant', 'xyz_x'])).toEqual([['50', 'D50', undefined]]);
});

it('leaves out a table of device colors, and says so', () => {
  const sheet = read(table('SAMPLE_ID CMYK_C CMYK_M CMYK_Y CMYK_K', '1 0 0 0 0') + table(LAB, '1 1 2 3'));
  expect(sheet.rows).toHaveLength(1);
  expect(notices(sheet)).toEqual(['device-colors-only 2']);
});

it('takes RGB for a screen color only where there is nothing better', () => {
  const alone = read(table('SAMPLE_ID RGB_R RGB_G RGB_B', '1 10 20 30'));
  expect(cells(alone, ['rgb_r', 'rgb_g', 'rgb_b'])).toEqual([['10', '20', '30']]);
  expect(notices(alone)).toEqual(['screen-colors 2']);
  const beside = read(table(`${LAB} RGB_R RGB_G RGB_B`, '1 1 2 3 10 20 30'));
  expect(beside.columns.filter(({ field }) => field?.startsWith('rgb'))).toEqual([]);
});

it('makes XYZ of xyY (CIE 15: X = xY/y, Z = (1-x-y)Y/y)', () => {
  const sheet = read(table('SAMPLE_ID XYY_X XYY_Y XYY_CAPY', '1 0,3127 0,3290 50\n2 0.3 0 20\n3 0 0 0'));
  expect(numbers(sheet, ['xyz_x', 'xyz_y', 'xyz_z'])).toEqual([
    [expect.closeTo(47.5228, 4), 50, expect.closeTo(54.4529, 4)],
    [0, 0, 0],
  ]);
  expect(refusals(sheet)).toEqual(['2 bad-chromaticity 7']);
});

it.each([
  ['LAB_L LAB_C LAB_H', ['lch_l', 'lch_c', 'lch_h']],
  ['LAB_L LAB_A LAB_B LAB_C LAB_H', ['lab_l', 'lab_a', 'lab_b', null, null]],
  ['XYZ_X XYZ_Y XYZ_Z', ['xyz_x', 'xyz_y', 'xyz_z']],
  ['LAB_L LAB_A LAB_B GLOSS_60 SUPPLIER STDEV_DE', ['lab_l', 'lab_a', 'lab_b', 'gloss_60', 'supplier', null]],
  ['nm400 nm410 nm420', ['nm:400', 'nm:410', 'nm:420']],
  ['NM_400 NM_410 NM_420', ['nm:400', 'nm:410', 'nm:420']],
  ['SPECTRAL_400 SPECTRAL_410 SPECTRAL_420', ['nm:400', 'nm:410', 'nm:420']],
  ['R_400nm R_410nm R_420nm', ['nm:400', 'nm:410', 'nm:420']],
  ['380.00 390.00 400.00', ['nm:380', 'nm:390', 'nm:400']],
  ['SPEC_400 SPEC_410 SPEC_420 STDEV_400 STDEV_410 STDEV_420', ['nm:400', 'nm:410', 'nm:420', null, null, null]],
])('knows the fields %s', (fields, known) => {
  const data = fields.replace(/\S+/g, '0.5');
  expect(read(table(fields, data)).columns.map(({ field }) => field)).toEqual(known);
});

it.each([
  [
    'WEIGHTING_FUNCTION "ILLUMINANT,D65"\nWEIGHTING_FUNCTION "OBSERVER,10 degree"',
    { illuminant: 'D65', observer_deg: 10 },
  ],
  ['ILLUMINATION_NAME "D50"\nOBSERVER_ANGLE "2"', { illuminant: 'D50', observer_deg: 2 }],
  ['WEIGHTING_FUNCTION "ILLUMINANT, F11"', { illuminant: 'FL11' }],
  ['WEIGHTING_FUNCTION "ILLUMINANT, CUSTOM"', {}],
  ['MEASUREMENT_GEOMETRY "d/8 SCI"', { specular: 'included' }],
  ['MEASUREMENT_GEOMETRY "de:8"', { specular: 'excluded' }],
  ['MEASUREMENT_GEOMETRY "0/45"', { specular: 'excluded' }],
  ['INSTRUMENTATION "Sphere 45000"', {}],
])('takes from %s what it says', (keywords, said) => {
  expect(read(table(LAB, '1 1 2 3', `${keywords}\n`)).said).toEqual(said);
});

it('says under which measurement condition and on what backing it was measured', () => {
  const sheet = read(table(LAB, '1 1 2 3', 'MEASUREMENT_SOURCE "MeasurementCondition=M3"\nSAMPLE_BACKING "Black"\n'));
  expect(sheet.notices.map(({ text }) => text)).toEqual([
    'Measured on a black backing.',
    'Measured under condition M3 of ISO 13655: polarized light without ultraviolet.',
  ]);
});

it('is not moved by one number without its decimal point, nor by white that fluoresces', () => {
  const rows = Array.from({ length: 20 }, (_, i) => `${i} 0.5 ${i === 7 ? '53' : '1.2'} 0.5`);
  expect(read(table('SAMPLE_ID NM_400 NM_410 NM_420', rows.join('\n'))).said.scale).toBe('factor');
});

it('says when the file names its reflectances otherwise', () => {
  const named = read(table('SPECTRAL_NM SPECTRAL_DEC SPECTRAL_NM SPECTRAL_DEC', '400 50 410 60'));
  expect(named.said.scale).toBe('percent');
  expect(named.notices[0]!.text).toContain('although the file names them factors');
});

it('refuses the last row of a text that breaks off within it, and keeps those before', () => {
  const cut = read(table(LAB, '1 1 2 3\n2 1 2 3.5').replace('.5\nEND_DATA\n', ''));
  expect(codes(cut)).toEqual(['1']);
  expect(refusals(cut)).toEqual(['2 cut-off 7']);
  expect(notices(cut)).toEqual(['unfinished-table 2']);
});

it.each([
  ['a wavelength twice', '400 0.1 400 0.2', 'bad-pair'],
  ['a word for a wavelength', 'red 0.1 410 0.2', 'bad-pair'],
])('refuses a row with %s', (_, row, code) => {
  const sheet = read(table('SPECTRAL_NM SPECTRAL_DEC SPECTRAL_NM SPECTRAL_DEC', `400 0.1 410 0.2\n${row}`));
  expect(refusals(sheet)).toEqual([`2 ${code} 7`]);
});

it.each([
  ['no table', 'CGATS.17\nORIGINATOR "x"\n', 'no-table 1'],
  ['a table without an end of its names', 'CGATS.17\nBEGIN_DATA_FORMAT\nLAB_L\n', 'unfinished-table 2'],
  ['a table without data', 'CGATS.17\nBEGIN_DATA_FORMAT\nLAB_L\nEND_DATA_FORMAT\n', 'unfinished-table 2'],
  ['data without names', 'CGATS.17\nBEGIN_DATA\n1 2 3\nEND_DATA\n', 'unfinished-table 2'],
  ['no rows', table(LAB, ''), 'no-rows 2'],
  ['no colors', table('SAMPLE_ID NOTE', '1 x'), 'no-colors 2'],
  ['ink only', table('SAMPLE_ID CMYK_C CMYK_M', '1 2 3'), 'device-colors-only 2'],
  ['too many fields', table(`LAB_L ${'x '.repeat(2000)}`, '1'), 'too-many-rows 2'],
  ['too many rows', table('LAB_L LAB_A LAB_B', '1 2 3\n'.repeat(100_001)), 'too-many-rows 2'],
  ['too many lines', table('LAB_L LAB_A LAB_B', '1\n'.repeat(1_000_002)), 'too-many-rows 1'],
  ['too long a line', table('LAB_L LAB_A LAB_B', '1 '.repeat(2_000_001)), 'too-many-rows 1'],
])('refuses a file with %s', (_, text, problem) => {
  const result = readCgats(text, 'range.txt');
  expect(result.ok ? 'read' : `${result.problem.code} ${result.problem.at?.line}`).toBe(problem);
});
