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
  ['uneven-steps', '400,0.5\n407,0.5\n414,0.5', 2],
  ['uneven-steps', `${table(400, 500, 10, () => '0.5')}\n520,0.5`, 12],
  ['bad-row', '400,0.5\n410,black\n420,0.5', 2],
  ['bad-row', '400,0.5\n410,\n420,0.5', 2],
  ['bad-row', 'a title\nanother\n400,0.5', 2],
  ['spectrum-too-short', table(400, 600, 10, () => '0.5'), undefined],
  ['out-of-range', table(450, 700, 10, () => '0.5'), undefined],
  ['out-of-range', table(400, 700, 10, () => '-0.5'), 1],
  ['out-of-range', table(400, 700, 10, () => '150'), 1],
])('refuses with %s: %j', (code, text, line) => {
  const read = parseSpectrumCsv(text, 's.csv');
  expect(read).toMatchObject({ ok: false, problem: { code, at: { file: 's.csv' } } });
  expect(!read.ok && read.problem.at?.line).toBe(line);
  expect(!read.ok && read.problem.remedy).not.toBe('');
});
