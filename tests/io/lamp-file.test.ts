import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseLampFile } from '../../src/io/lamp-file';

/** What was read, or the problem as one line. */
function read(text: string, file = 'pendant.csv') {
  const parsed = parseLampFile(text, file);
  return parsed.ok ? parsed.value : `${parsed.problem.code} ${parsed.problem.at?.line ?? '-'}: ${parsed.problem.text}`;
}

const two = [
  { name: 'warm', nm: [380, 385, 390], power: [0.1, 0.2, 0.35] },
  { name: 'cool', nm: [380, 385, 390], power: [0.5, 0.6, 0.7] },
];

it.each([
  ['commas and points', 'wavelength_nm,warm,cool\n380,0.1,0.5\n385,0.2,0.6\n390,0.35,0.7\n'],
  ['semicolons and decimal commas', 'nm;warm;cool\n380;0,1;0,5\n385;0,2;0,6\n390;0,35;0,7'],
  ['a byte order mark and CRLF', '\uFEFFnm;warm;cool\r\n380;0.1;0.5\r\n385;0.2;0.6\r\n390;0.35;0.7\r\n'],
  ['tabs', 'nm\twarm\tcool\n380\t0,1\t0,5\n385\t0,2\t0,6\n390\t0,35\t0,7\n'],
  ['spaces', 'nm warm cool\n380 0.1 0.5\n385 0.2 0.6\n390 0.35 0.7\n'],
  ['quotes', '"nm","warm","cool"\n"380","0,1","0,5"\n"385","0,2","0,6"\n"390","0,35","0,7"\n'],
  ['remarks', '# two lamps\nnm,warm,cool\n380,0.1,0.5 # dim\n\n# half way\n385,0.2,0.6\n390,0.35,0.7\n'],
  ['units and exponents', 'nm,warm,cool\n380 nm,1e-1,5.0E-1\n385nm,.2,0.6\n390 nm,35e-2,+0.7\n'],
  ['falling wavelengths', 'nm,warm,cool\n390,0.35,0.7\n385,0.2,0.6\n380,0.1,0.5\n'],
  ['empty columns at the end', 'nm,warm,cool,,\n380,0.1,0.5,,\n385,0.2,0.6,,\n390,0.35,0.7,,\n'],
])('reads a table with %s', (_, text) => {
  expect(read(text)).toEqual(two);
});

it('takes the name of the file where a heading names no lamp, and numbers lamps without headings', () => {
  expect(read('Wavelength (nm);Relative spectral power\n380;1\n390;2')).toMatchObject([{ name: 'pendant' }]);
  expect(read('380,1\n390,2', '/home/me/hall lamp.v2.txt')).toMatchObject([{ name: 'hall lamp.v2' }]);
  expect(read('380,1,3\n390,2,4')).toMatchObject([{ name: 'column 2' }, { name: 'column 3' }]);
  expect(read('nm,a,a\n380,1,3\n390,2,4')).toMatchObject([{ name: 'a' }, { name: 'a (2)' }]);
});

it('leaves out what stands above the table, and says so', () => {
  const parsed = parseLampFile('Report of 2026\nCCT [K],2700\nnm,warm,remark\n380,1,good\n390,2,good\n', 'a.csv');
  expect(parsed).toMatchObject({ ok: true, value: [{ name: 'warm', power: [1, 2] }] });
  expect(parsed.ok && parsed.notices?.map(({ code, at }) => [code, at?.line])).toEqual([
    ['lines-left-out', 1],
    ['column-left-out', undefined],
  ]);
});

it.each([
  ['nothing', '', 'no-spectrum -'],
  ['words', 'a lamp\nfrom the shop\n', 'no-spectrum -'],
  ['one line', '550,1\n', 'no-spectrum 1'],
  ['a letter in a number', 'nm,warm\n380,0.1\n385,o.2\n', 'bad-row 3: Line 3: "o.2" is not a number'],
  [
    'a letter in the first wavelength',
    'nm,warm\n38O,0.1\n385,0.2\n390,1\n',
    'bad-row 2: Line 2: "38O" is no wavelength',
  ],
  ['a gap', 'nm,warm,cool\n380,0.1,1\n385,,2\n', 'bad-row 3: Line 3: "warm" has no value'],
  ['a short row', 'nm,warm,cool\n380,0.1,1\n385,3\n', 'bad-row 3: Line 3: "cool" has no value'],
  ['a wavelength twice', '380,1\n385,1\n385,2\n', 'wavelength-order 3'],
  ['wavelengths in disorder', '380,1\n390,1\n385,2\n395,1\n', 'wavelength-order 3'],
  ['micrometers', '0.38,1\n0.39,1\n', 'wavelength-range 1'],
  ['angstroms', '3800,1\n3900,1\n5100,2\n', 'wavelength-range 3'],
  ['commas for two things', '380,0,0014\n385,0,0018\n390,0,0024\n', 'comma-twice 1'],
  ['a foot under the table', '380,1\n385,1\nend of report\n', 'bad-row 3: Line 3: "end of report" is no wavelength'],
  ['a workbook', 'PK\u0003\u0004\0\0', 'not-a-text -'],
  ['too many samples', Array.from({ length: 10_001 }, (_, i) => `${200 + i / 10},1`).join('\n'), 'too-many-samples 1'],
  ['too long a text', 'x'.repeat(5_000_001), 'file-too-large -'],
])('refuses %s', (_, text, problem) => {
  expect(read(text)).toContain(problem);
});

// CGATS.17 / ISO 28178: keywords, a data format, data; rows may run over lines.
const cgats = (format: string, data: string, fields: number, sets: number, first = 'CGATS.17') =>
  `${first}\r\nORIGINATOR "Invented for this test"\r\n# remark\r\nNUMBER_OF_FIELDS ${fields}\r\nBEGIN_DATA_FORMAT\r\n${format}\r\n` +
  `END_DATA_FORMAT\r\nNUMBER_OF_SETS ${sets}\r\nBEGIN_DATA\r\n${data}\r\nEND_DATA\r\n`;

it('reads CGATS with one column for each band, rows over several lines, quoted names', () => {
  const text = cgats(
    'SAMPLE_ID SAMPLE_NAME SPECTRAL_NM380 SPECTRAL_NM390\r\nSPECTRAL_NM400',
    '1 "Hall lamp" 0.1\r\n0.2 0.3\r\n2 "Desk, old" 1 2 3',
    5,
    2,
  );
  expect(read(text)).toEqual([
    { name: 'Hall lamp', nm: [380, 390, 400], power: [0.1, 0.2, 0.3] },
    { name: 'Desk, old', nm: [380, 390, 400], power: [1, 2, 3] },
  ]);
});

it.each(['nm380 nm390', 'NM_380 NM_390', 'SPEC_380 SPEC_390', 'R_380nm R_390nm'])(
  'knows the fields %s for bands',
  (fields) => {
    expect(read(cgats(fields, '1 2', 2, 1), 'strip.txt')).toEqual([{ name: 'strip 1', nm: [380, 390], power: [1, 2] }]);
  },
);

it('reads CGATS in pairs, percent and decimal commas (ISO 28178)', () => {
  const text = cgats(
    'SAMPLE_ID SPECTRAL_NM SPECTRAL_PCT SPECTRAL_NM SPECTRAL_PCT',
    'strip 400 53,56 420 54,35',
    5,
    1,
    'ISO28178',
  );
  expect(read(text)).toEqual([{ name: 'strip', nm: [400, 420], power: [53.56, 54.35] }]);
});

it.each([
  ['more sets than rows', cgats('NM_380 NM_390', '1 2', 2, 3), 'set-count 8'],
  ['a short row', cgats('NM_380 NM_390', '1 2\r\n3', 2, 2), 'short-row 11'],
  ['another count of fields', cgats('NM_380 NM_390', '1 2', 3, 1), 'field-count 4'],
  ['a word for a number', cgats('NM_380 NM_390', '1 x', 2, 1), 'bad-row 10'],
  ['no spectra', cgats('LAB_L LAB_A', '1 2', 2, 1), 'no-spectrum 1'],
  ['no end', cgats('NM_380 NM_390', '1 2', 2, 1).replace('END_DATA\r\n', ''), 'unfinished-table 5'],
])('refuses CGATS with %s', (_, text, problem) => {
  expect(read(text)).toContain(problem);
});

// IES TM-27-14: a header, then the distribution with one SpectralData for each wavelength.
const tm27 = (data: string, quantity = 'relative', head = '<?xml version="1.0" encoding="utf-8"?>') =>
  `${head}\n<IESTM2714 xmlns="iestm2714" version="1.0">\n<Header>\n<Description>Pendant &amp; strip</Description>\n</Header>\n` +
  `<SpectralDistribution>\n<SpectralQuantity>${quantity}</SpectralQuantity>\n${data}\n</SpectralDistribution>\n</IESTM2714>\n`;
const samples =
  '<SpectralData wavelength="380.0">0.1</SpectralData>\n<SpectralData wavelength=\'390\'> 2e-1 </SpectralData>';

it.each([
  ['a default namespace', tm27(samples)],
  ['remarks', tm27(`<!-- <SpectralData> -->${samples}`)],
  ['a byte order mark', `\uFEFF${tm27(samples)}`],
  [
    'a prefix',
    tm27(samples)
      .replace('xmlns=', 'xmlns:t=')
      .replace(/<(\/?)([A-Z])/g, '<$1t:$2'),
  ],
])('reads IES TM-27 with %s', (_, text) => {
  expect(read(text, 'a.spdx')).toEqual([{ name: 'Pendant & strip', nm: [380, 390], power: [0.1, 0.2] }]);
});

it.each([
  [
    'a document type',
    tm27(samples, 'relative', '<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/passwd">]>'),
    'xml-doctype 1',
  ],
  ['an entity of its own', tm27('<SpectralData wavelength="380">&e;</SpectralData>'), 'bad-xml 8'],
  [
    'an element left open',
    tm27(samples).replace('</SpectralDistribution>', ''),
    'bad-xml 11: Line 11: </IESTM2714> where </SpectralDistribution> of line 6',
  ],
  ['a text that stops', tm27(samples).replace('</SpectralDistribution>\n</IESTM2714>\n', ''), 'bad-xml 6'],
  ['a lone mark', tm27('<SpectralData wavelength="380">< 1</SpectralData>'), 'bad-xml 8'],
  ['depth', tm27('<a>'.repeat(40) + '</a>'.repeat(40)), 'bad-xml 8: Line 8: a lies too deep'],
  ['reflectances', tm27(samples, 'reflectance'), 'not-a-lamp 6'],
  ['no wavelength', tm27('<SpectralData>1</SpectralData>'), 'bad-row 8'],
  ['no data', tm27(''), 'no-spectrum -'],
  [
    'another document',
    '<svg xmlns="http://www.w3.org/2000/svg"/>',
    'no-spectrum 1: Line 1: svg has no SpectralDistribution',
  ],
])('refuses XML with %s', (_, text, problem) => {
  expect(read(text, 'a.xml')).toContain(problem);
});

it('answers every text with lamps or with a problem that says what to do, and never stops', () => {
  const texts = ['nm;warm\n380;0,1\n390;2\n', cgats('NM_380 NM_390', '1 2', 2, 1), tm27(samples)];
  const cut = fc.record({ base: fc.constantFrom(...texts), at: fc.nat(600), length: fc.nat(8), put: fc.string() });
  const damaged = cut.map(({ base, at, length, put }) => base.slice(0, at) + put + base.slice(at + length));
  fc.assert(
    fc.property(fc.oneof(fc.string(), damaged), (text) => {
      const parsed = parseLampFile(text);
      if (!parsed.ok) return parsed.problem.text !== '' && parsed.problem.remedy !== '';
      return (
        parsed.value.length > 0 && parsed.value.every(({ nm, power }) => nm.length > 1 && nm.length === power.length)
      );
    }),
    { numRuns: 500 },
  );
});

it('reads CGATS of very many rows without running out of stack', () => {
  const parsed = parseLampFile(cgats('NM_380 NM_390', '1 2\n'.repeat(130_000), 2, 130_000));
  expect(parsed.ok && parsed.value.length).toBe(130_000);
});
