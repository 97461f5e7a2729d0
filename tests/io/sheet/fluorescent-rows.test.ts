import { expect, it } from 'vitest';
import { readCgats } from '../../../src/io/sheet/read-cgats';
import { readCxf } from '../../../src/io/sheet/read-cxf';
import { cxfObject, cxfSpecification, cxfText, lab, spectrum } from './cxf-text';
import { ANSWERED, importOf, refusals, remarks, sheetOf } from './sample-files';

// Invented whites; the one that glows sends back 106 % about 460 nm, as papers and paints with brighteners do.

const NM = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);
const plain = NM.map(() => '0.88');
const glowing = NM.map((nm) => (nm > 430 && nm < 480 ? '1.06' : '0.88'));
const head = `code,L*,a*,b*,light,${NM.join()}`;

it('takes the numbers beside a spectrum that glows, and says why', () => {
  const found = importOf(`${head}\n1,95.2,-0.5,1,D65/10,${glowing.join()}\n2,,,,,${glowing.join()}`);
  expect(found.kept[0]!.finish.components[0]!.color).toMatchObject({ kind: 'lab', lab: [95.2, -0.5, 1] });
  expect(found.kept[0]!.notices[0]!.text).toMatch(/^106\.0% at 440 nm: .*optical brightener\. Its numbers were taken/);
  expect(refusals(found)).toEqual(['2 spectrum-above-one 3']);
  expect(remarks(importOf(`${head}\n1,95.2,0,0.1,D65/10,${plain.join()}`))['1']).toEqual([]);
});

const wide = (id: string, device: string) =>
  cxfSpecification(id, { device: `<DeviceIllumination>${device}</DeviceIllumination>` }).replace(
    /<WavelengthRange[^>]*>/,
    '<WavelengthRange StartWL="400" Increment="10"/>',
  );

it('takes of an object the measurement without ultraviolet where that with it glows', () => {
  const values = spectrum('M1', glowing.join(' ')) + spectrum('M2', plain.join(' ')) + lab('M1', 95, 0, 0);
  const read = readCxf(cxfText(cxfObject('a', values), wide('M1', 'M1_Daylight') + wide('M2', 'M2_UVcut')), 'a.cxf');
  expect(read.ok && read.value.rows[0]!.cells).toContain('0.88');
  expect(read.ok && read.value.rows[0]!.cells).not.toContain('1.06');
  const told = read.ok ? read.value.notices.map(({ text }) => text) : [];
  expect(told.join()).toMatch(/M2 was taken, M1 was left; M1 sends back more light than falls on it/);
});

const cgats = (keywords: string, fields: string, data: string) =>
  `CGATS.17\n${keywords}BEGIN_DATA_FORMAT\nSAMPLE_ID ${fields}\nEND_DATA_FORMAT\nBEGIN_DATA\n1 ${data}\nEND_DATA\n`;

// ISO 13655: M0 a filament's light with its ultraviolet, M1 like D50, M2 without ultraviolet, M3 polarized as well.
it.each([
  ['FILTER "UV included"', 'M0'],
  ['FILTER "None"', 'M0'],
  ['FILTER "No"', 'M0'],
  ['FILTER "UVcut"', 'M2'],
  ['FILTER "UV excluded"', 'M2'],
  ['FILTER "UV-cut filter"', 'M2'],
  ['FILTER "no UV"', 'M2'],
  ['FILTER "UV"', 'M2'],
  ['FILTER "Pol"', 'M3'],
  ['FILTER "M1"', 'M1'],
  ['POLARIZATION "yes"', 'M3'],
  ['MEASUREMENT_SOURCE "Illumination=D50 ObserverAngle=2 Filter=UVcut"', 'M2'],
  ['FILTER "D65"', null],
  ['FILTER "no polarizer"', null],
])('reads %s as %s', (keyword, condition) => {
  const read = readCgats(cgats(`${keyword}\n`, 'LAB_L LAB_A LAB_B', '50 0 0'), 'a.txt');
  const texts = read.ok ? read.value.notices.map(({ text }) => text) : ['?'];
  expect(texts.map((text) => /condition (M\d)/.exec(text)?.[1])).toEqual(condition ? [condition] : []);
});

it('asks for the scale of a dark spectrum in percent, in CGATS as in a table', () => {
  const text = cgats('', NM.map((nm) => `SPECTRAL_NM${nm}`).join(' '), NM.map(() => '2.0').join(' '));
  const open = importOf(text, { class: 'paint', gloss_gu: 10 }, 'a.txt');
  expect(open.questions).toEqual([{ about: 'scale', rows: 1, usual: { scale: 'percent' } }]);
  expect(open.refused[0]!.problem.remedy).toMatch(/percent/);
  const said = importOf(text, { ...ANSWERED, scale: 'percent' }, 'a.txt');
  expect(said.kept[0]!.finish.components[0]!.color).toMatchObject({ reflectance: NM.map(() => 0.02) });
});

it('takes a file that names its values percent at its word where they could be either', () => {
  const pairs = NM.map((nm) => `${nm} 2.0`).join(' ');
  const sheet = sheetOf(cgats('', NM.map(() => 'SPECTRAL_NM SPECTRAL_PCT').join(' '), pairs), 'a.txt');
  expect(sheet.said.scale).toBe('percent');
});
