import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { readCgats } from '../../../src/io/sheet/read-cgats';
import { readCxf } from '../../../src/io/sheet/read-cxf';
import type { Field, Sheet } from '../../../src/io/sheet/types';
import { cxfObject, cxfSpecification, cxfText, lab, spectrum } from './cxf-text';

const sample = (name: string): string => readFileSync(`${import.meta.dirname}/samples/${name}`, 'utf8');

function read(text: string): Sheet {
  const result = readCxf(text, 'range.cxf');
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

const refused = (text: string): string => {
  const result = readCxf(text, 'range.cxf');
  return result.ok ? 'read' : `${result.problem.code} ${result.problem.at?.line}: ${result.problem.text}`;
};

/** Cells of the columns of some fields, row by row; undefined where there is no such column. */
const cells = ({ columns, rows }: Sheet, fields: readonly Field[]) =>
  rows.map((row) => fields.map((field) => row.cells[columns.findIndex((one) => one.field === field)]));

const refusals = (sheet: Sheet) => sheet.refused.map(({ row, problem: { code, at } }) => `${row} ${code} ${at?.line}`);
const codesOf = ({ notices }: Sheet) => notices.map(({ code }) => code);

it('reads objects by namespace, whatever the prefix: both samples are equal', () => {
  const prefixed = read(sample('cxf3-prefixed.cxf'));
  expect(read(sample('cxf3-default-namespace.cxf'))).toEqual(prefixed);
  const fields: readonly Field[] = ['code', 'name', 'lab_l', 'lab_a', 'lab_b', 'illuminant', 'observer_deg'];
  expect(cells(prefixed, fields)).toEqual([
    ['f1', 'Oat Linen', '86.178', '1.704', '10.530', 'D50', '2'],
    ['f2', 'Harbour Slate', '43.500', '-2.075', '-4.660', 'D50', '2'],
    ['f3', 'Moss Shelf', '52.764', '-12.490', '17.283', 'D50', '2'],
  ]);
  expect(cells(prefixed, ['gloss_60', 'supplier', 'specular', 'nm:400', 'nm:700'])).toEqual([
    ['10', 'Example & Co', 'excluded', '0.5356', '0.7557'],
    ['4', 'Example & Co', 'excluded', '0.1580', '0.1129'],
    ['25', 'Example & Co', 'excluded', '0.1107', '0.1425'],
  ]);
  expect(prefixed.rows.map(({ row, line }) => [row, line])).toEqual([
    [1, 10],
    [2, 18],
    [3, 26],
  ]);
  expect(prefixed.said).toEqual({ scale: 'factor' });
});

it('has the same colors and spectra as the CGATS samples of the same three finishes', () => {
  const cxf = read(sample('cxf3-prefixed.cxf'));
  const bands = Array.from({ length: 31 }, (_, i): Field => `nm:${400 + 10 * i}`);
  const of = (name: string, fields: readonly Field[]) => {
    const sheet = readCgats(sample(name), name);
    if (!sheet.ok) throw new Error(sheet.problem.text);
    return cells(sheet.value, fields).map((row) =>
      row.map((cell) => (Number.isNaN(Number(cell)) ? cell : Number(cell))),
    );
  };
  const numbers = (fields: readonly Field[]) =>
    cells(cxf, fields).map((row) =>
      row.map((cell) => (Number.isNaN(Number(cell)) ? cell : Number(Number(cell).toFixed(4)))),
    );
  expect(of('cgats-spectral-crlf.txt', ['name', ...bands])).toEqual(numbers(['name', ...bands]));
  const given = of('cgats-lab.txt', ['lab_l', 'lab_a', 'lab_b']).flat() as number[];
  numbers(['lab_l', 'lab_a', 'lab_b'])
    .flat()
    .forEach((value, i) => {
      // One has two decimals, the other three.
      expect(Math.abs((value as number) - given[i]!)).toBeLessThanOrEqual(0.0051);
    });
});

it('refuses each object whose specification is nowhere, with its line and name', () => {
  const sheet = read(sample('cxf3-bad-reference.cxf'));
  expect(sheet.rows).toEqual([]);
  expect(
    sheet.refused.map(({ row, code, name, problem }) => [row, code, name, problem.code, problem.at?.line]),
  ).toEqual([
    [1, 'f1', 'Oat Linen', 'bad-reference', 13],
    [2, 'f2', 'Harbour Slate', 'bad-reference', 21],
    [3, 'f3', 'Moss Shelf', 'bad-reference', 29],
  ]);
});

it('refuses the object alone whose reference points nowhere', () => {
  const objects = `${cxfObject('a', lab('s', 1, 2, 3))}\n${cxfObject('b', lab('t', 1, 2, 3))}\n${cxfObject('c', lab('s', 4, 5, 6))}`;
  const sheet = read(cxfText(objects, cxfSpecification('s')));
  expect(cells(sheet, ['code'])).toEqual([['a'], ['c']]);
  expect(sheet.rows.map(({ row }) => row)).toEqual([1, 3]);
  expect(refusals(sheet)).toEqual(['2 bad-reference 6']);
  const twice = read(cxfText(cxfObject('a', lab('s', 1, 2, 3)), cxfSpecification('s') + cxfSpecification('s')));
  expect(twice.refused[0]!.problem.text).toContain('more than once');
});

const M = (condition: string) =>
  cxfSpecification(condition, { device: `<DeviceIllumination>${condition}_X</DeviceIllumination>` });
const SPHERE = (part: string) =>
  cxfSpecification(part, {
    geometry: `<SphereGeometry><SpecularComponent>${part}</SpecularComponent></SphereGeometry>`,
  });

it.each([
  ['M0 M1 M2', 'M1', 'M1 was taken, M0 and M2 were left'],
  ['M3 M2 M0', 'M0', 'M0 was taken, M3 and M2 were left'],
  ['M3 M2', 'M2', 'M2 was taken, M3 was left'],
])('takes of %s the one that is most like daylight, and says what is left', (all, taken, words) => {
  const ids = all.split(' ');
  const values = ids.map((id, i) => spectrum(id, `0.${i} 0.${i} 0.${i}`)).join('');
  const sheet = read(cxfText(cxfObject('a', values), ids.map(M).join('')));
  expect(cells(sheet, ['nm:400'])).toEqual([[`0.${ids.indexOf(taken)}`]]);
  expect(codesOf(sheet)).toEqual(['measurement-condition', 'measurement-chosen']);
  expect(sheet.notices[1]!.text).toContain(words);
});

it.each([
  ['<Model>Meter M3</Model><DeviceIllumination>M1_Daylight</DeviceIllumination>', 'M1'],
  ['<DeviceFilter>Filter_None</DeviceFilter><DevicePolarization>true</DevicePolarization>', 'M3'],
  ['<DeviceFilter>Filter_UVExcluded</DeviceFilter><DevicePolarization>false</DevicePolarization>', 'M2'],
])('knows the measurement condition from %s', (device, condition) => {
  const sheet = read(cxfText(cxfObject('a', spectrum('s', '0.1 0.2 0.3')), cxfSpecification('s', { device })));
  expect(sheet.notices[0]!.text).toContain(`condition ${condition} of ISO 13655`);
});

it('says nothing of a condition where only the model is called so', () => {
  const device = '<Model>Meter M3</Model><DevicePolarization>false</DevicePolarization>';
  const sheet = read(cxfText(cxfObject('a', spectrum('s', '0.1 0.2 0.3')), cxfSpecification('s', { device })));
  expect(sheet.notices).toEqual([]);
});

it('takes the whole reflectance before one without the mirror-like part', () => {
  const values = spectrum('Excluded', '0.1 0.1 0.1') + spectrum('Included', '0.2 0.2 0.2');
  const colors = lab('Excluded', 1, 0, 0) + lab('Included', 2, 0, 0);
  const sheet = read(cxfText(cxfObject('a', values + colors), SPHERE('Excluded') + SPHERE('Included')));
  expect(cells(sheet, ['nm:400', 'specular', 'lab_l'])).toEqual([['0.2', 'included', '2']]);
  expect(sheet.notices[0]!.text).toContain('SCI was taken, SCE was left');
});

it('leaves a color out that was measured otherwise than the spectrum as to the mirror-like part', () => {
  const values = spectrum('Included', '0.2 0.2 0.2') + lab('Excluded', 1, 0, 0);
  const sheet = read(cxfText(cxfObject('a', values), SPHERE('Excluded') + SPHERE('Included')));
  expect(cells(sheet, ['nm:400', 'lab_l'])).toEqual([['0.2', undefined]]);
});

it('takes light and observer of each color from its own specification', () => {
  const objects =
    cxfObject('a', lab('s', 1, 2, 3)) + cxfObject('b', lab('t', 1, 2, 3)) + cxfObject('c', lab('u', 1, 2, 3));
  const specifications =
    cxfSpecification('s', { light: 'D65', observer: '10_Degree' }) +
    cxfSpecification('t', { light: 'F11' }) +
    cxfSpecification('u', { light: 'Custom', observer: '5_Degree' });
  expect(cells(read(cxfText(objects, specifications)), ['illuminant', 'observer_deg'])).toEqual([
    ['D65', '10'],
    ['FL11', '2'],
    ['', ''],
  ]);
});

it('reads XYZ, xyY and L*C*h, and screen colors where there is nothing else', () => {
  const triple = (name: string, children: string, values: readonly number[]) =>
    `<${name} ColorSpecification="s">${[...children].map((c, i) => `<${c}>${values[i]}</${c}>`).join('')}</${name}>`;
  const srgb = '<ColorSRGB ColorSpecification="s"><R>10</R><G>20</G><B>30</B></ColorSRGB>';
  const objects =
    cxfObject('xyz', triple('ColorCIEXYZ', 'XYZ', [41, 42, 43])) +
    cxfObject('xyy', triple('ColorCIExyY', 'xyY', [0.3127, 0.329, 50])) +
    cxfObject('lch', triple('ColorCIELCh', 'LCH', [50, 10, 90])) +
    cxfObject('rgb', srgb) +
    cxfObject('both', lab('s', 1, 2, 3) + srgb) +
    cxfObject('wide', '<ColorSRGB MaxRange="1023"><R>1023</R><G>0</G><B>511.5</B></ColorSRGB>');
  const sheet = read(cxfText(objects, cxfSpecification('s')));
  const xyz = cells(sheet, ['xyz_x', 'xyz_y', 'xyz_z']).map((row) => row.map(Number));
  // CIE 15: X = xY/y, Z = (1-x-y)Y/y.
  expect(xyz.slice(0, 2)).toEqual([
    [41, 42, 43],
    [expect.closeTo(47.5228, 4), 50, expect.closeTo(54.4529, 4)],
  ]);
  expect(cells(sheet, ['lch_l', 'lch_c', 'lch_h'])[2]).toEqual(['50', '10', '90']);
  expect(cells(sheet, ['rgb_r', 'rgb_g', 'rgb_b']).slice(3)).toEqual([
    ['10', '20', '30'],
    ['', '', ''],
    ['255', '0', '128'],
  ]);
});

it('puts spectra of different ranges into the columns of all', () => {
  const objects =
    cxfObject('a', spectrum('s', '0.1 0.2 0.3')) + cxfObject('b', spectrum('s', '0.4 0.5 0.6', ' StartWL="500"'));
  expect(cells(read(cxfText(objects, cxfSpecification('s'))), ['nm:400', 'nm:500', 'nm:600', 'nm:700'])).toEqual([
    ['0.1', '0.2', '0.3', ''],
    ['', '0.4', '0.5', '0.6'],
  ]);
});

it('takes tags for what their names mean, keeps others as columns, and gloss from the physical attributes', () => {
  const tags =
    '<TagCollection Name="t"><Tag Name="Gloss 60°" Value="12"/><Tag Name="Batch" Value="7"/><Tag Name="Article no" Value="EX-1"/></TagCollection>';
  const more =
    '<Comment>on card</Comment><PhysicalAttributes><Gloss><Gloss20>3</Gloss20><Gloss60>11</Gloss60></Gloss></PhysicalAttributes>';
  const sheet = read(
    cxfText(cxfObject('a', lab('s', 1, 2, 3), tags) + cxfObject('b', lab('s', 1, 2, 3), more), cxfSpecification('s')),
  );
  expect(cells(sheet, ['code', 'gloss_60', 'note'])).toEqual([
    ['EX-1', '12', ''],
    ['b', '11', 'on card'],
  ]);
  expect(sheet.columns.find(({ heading }) => heading === 'Batch')).toEqual({ heading: 'Batch', field: null });
});

const plainRange = '<WavelengthRange/>';

it.each([
  ['steps of its own', spectrum('s', '0.1 0.2 0.3', ' StartWL="400" Increment="100"'), plainRange],
  ['an end of its own', spectrum('s', '0.1 0.2 0.3', ' StartWL="400" EndWL="600"'), plainRange],
  ['no reference', '<ReflectanceSpectrum StartWL="400">0.1 0.2 0.3</ReflectanceSpectrum>', undefined],
])('reads the dialect with %s, and says so', (_, values, range) => {
  const sheet = read(cxfText(cxfObject('a', values), cxfSpecification('s', range ? { range } : {})));
  expect(cells(sheet, ['nm:400', 'nm:600'])).toEqual([['0.1', '0.3']]);
  expect(codesOf(sheet)).toEqual(['cxf-dialect']);
});

it('reads percent and objects without a date, and says so', () => {
  const sheet = read(
    cxfText(
      cxfObject('a', spectrum('s', '10 20 30')).replace(/<CreationDate>.*?<\/CreationDate>/, ''),
      cxfSpecification('s'),
    ),
  );
  expect(sheet.said).toEqual({ scale: 'percent' });
  expect(codesOf(sheet)).toEqual(['cxf-dialect', 'reflectance-scale']);
});

const LIGHT = { geometry: '<EmissiveMode/>', type: 'Spectrum_Emissive' };
const angled = (degrees: number) => ({
  geometry: `<SingleAngle><IlluminationAngle>45</IlluminationAngle><MeasurementAngle>${degrees}</MeasurementAngle></SingleAngle>`,
});

it.each([
  ['the light of a lamp', '<EmissiveSpectrum ColorSpecification="s">1 2 3</EmissiveSpectrum>', LIGHT, 'light-source'],
  ['a spectrum of light', spectrum('s', '1 2 3'), LIGHT, 'light-source'],
  ['many angles', spectrum('s', '1 2 3'), { geometry: '<MultiAngle/>' }, 'many-angles'],
  ['two angles', spectrum('s', '0.1 0.2 0.3') + spectrum('t', '0.1 0.2 0.3'), angled(25), 'many-angles'],
  ['what passes through', '<TransmittanceSpectrum>1 2 3</TransmittanceSpectrum>', {}, 'transmittance'],
  ['device colors', '<ColorCMYK ColorSpecification="s"><Cyan>1</Cyan></ColorCMYK>', {}, 'device-colors-only'],
  ['nothing', '', {}, 'no-color'],
  ['two values', spectrum('s', '0.1 0.2'), {}, 'bad-spectrum'],
  ['a word among values', spectrum('s', '0.1 o.2 0.3'), {}, 'bad-spectrum'],
  ['no steps', spectrum('s', '0.1 0.2 0.3'), { range: '' }, 'bad-spectrum'],
  ['steps of its own that differ', spectrum('s', '0.1 0.2 0.3', ' Increment="10"'), {}, 'bad-spectrum'],
  ['infrared', spectrum('s', '0.1 0.2 0.3', ' StartWL="800"'), {}, 'bad-spectrum'],
  [
    'a color with a number missing',
    '<ColorCIELab ColorSpecification="s"><L>1</L><A>2</A></ColorCIELab>',
    {},
    'bad-color',
  ],
])('refuses an object with %s, and keeps the others', (_, values, specified, code) => {
  const specifications =
    cxfSpecification('s', specified) + cxfSpecification('t', angled(75)) + cxfSpecification('good');
  const sheet = read(cxfText(`${cxfObject('a', values)}\n${cxfObject('b', lab('good', 1, 2, 3))}`, specifications));
  expect(refusals(sheet)).toEqual([`1 ${code} 5`]);
  expect(cells(sheet, ['code'])).toEqual([['b']]);
});

it('refuses an object with device values beside', () => {
  const object = cxfObject('a', '', '<DeviceColorValues><ColorCMYK/></DeviceColorValues>');
  expect(refusals(read(cxfText(object, cxfSpecification('s'))))).toEqual(['1 device-colors-only 5']);
});

it.each([
  [
    'version 2',
    cxfText('', '', 'http://colorexchangeformat.com/v2'),
    'cxf-version 2: Line 2: the file is CxF of version 2',
  ],
  [
    'an unknown namespace',
    cxfText('', '', 'urn:x'),
    'cxf-version 2: Line 2: the file is CxF of an unknown version (urn:x)',
  ],
  ['no namespace', '<CxF/>', 'cxf-version 1: Line 1: the file is CxF of no known version'],
  [
    'another root',
    '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'not-cxf 1: Line 1: this is no CxF file: its outermost element is svg.',
  ],
  ['no objects', cxfText('', cxfSpecification('s')), 'no-objects 2'],
  ['a document type', `<!DOCTYPE CxF [<!ENTITY a SYSTEM "file:///x">]>\n${cxfText('', '')}`, 'xml-doctype 1'],
  ['an entity', cxfText(cxfObject('a', '&a;'), ''), 'bad-xml 5'],
  ['depth', cxfText('<a>'.repeat(100_000), ''), 'bad-xml 5: Line 5: a lies too deep'],
])('refuses a file with %s', (_, text, problem) => {
  expect(refused(text)).toContain(problem);
});

it('does not let objects fill the memory with wavelengths', () => {
  const objects = Array.from({ length: 2400 }, (_, i) =>
    cxfObject(`${i}`, spectrum('s', '0.1 0.2 0.3', ` StartWL="${(360 + i / 100).toFixed(2)}"`)),
  );
  expect(refused(cxfText(objects.join(''), cxfSpecification('s')))).toContain('too-many-rows');
});
