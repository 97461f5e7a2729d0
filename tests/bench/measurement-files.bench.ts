import { readCgats } from '../../src/io/sheet/read-cgats';
import { readCxf } from '../../src/io/sheet/read-cxf';
import { median } from './timing';

// 10,000 finishes with spectra at 10 nm, and files of 30 MB. Budgets: two seconds; a few seconds.

const spectrum = (i: number): string =>
  Array.from({ length: 31 }, (_, k) => (0.1 + (((i * 31 + k) * 7) % 800) / 1000).toFixed(4)).join(' ');

function cgatsOf(rows: number): string {
  const fields = Array.from({ length: 31 }, (_, k) => `SPECTRAL_NM${400 + 10 * k}`).join('\t');
  const data = Array.from({ length: rows }, (_, i) => `${i}\t"Sample ${i}"\t${spectrum(i).replaceAll(' ', '\t')}`);
  return (
    `CGATS.17\nBEGIN_DATA_FORMAT\nSAMPLE_ID\tSAMPLE_NAME\t${fields}\nEND_DATA_FORMAT\nNUMBER_OF_SETS ${rows}\nBEGIN_DATA\n` +
    `${data.join('\n')}\nEND_DATA\n`
  );
}

function cxfOf(objects: number): string {
  const all = Array.from(
    { length: objects },
    (_, i) =>
      `      <cc:Object ObjectType="Standard" Name="Sample ${i}" Id="f${i}">\n` +
      '        <cc:CreationDate>2026-01-15T09:30:00Z</cc:CreationDate>\n        <cc:ColorValues>\n' +
      `          <cc:ReflectanceSpectrum Name="M1" StartWL="400" ColorSpecification="cs1">${spectrum(i)}</cc:ReflectanceSpectrum>\n` +
      '          <cc:ColorCIELab ColorSpecification="cs1"><cc:L>86.178</cc:L><cc:A>1.704</cc:A><cc:B>10.530</cc:B></cc:ColorCIELab>\n' +
      '        </cc:ColorValues>\n        <cc:TagCollection Name="Finish"><cc:Tag Name="Gloss60" Value="10"/></cc:TagCollection>\n' +
      '      </cc:Object>\n',
  );
  return (
    '<cc:CxF xmlns:cc="http://colorexchangeformat.com/CxF3-core"><cc:Resources><cc:ObjectCollection>\n' +
    `${all.join('')}</cc:ObjectCollection><cc:ColorSpecificationCollection><cc:ColorSpecification Id="cs1">` +
    '<cc:TristimulusSpec><cc:Illuminant>D50</cc:Illuminant><cc:Observer>2_Degree</cc:Observer></cc:TristimulusSpec>' +
    '<cc:MeasurementSpec><cc:WavelengthRange StartWL="400" Increment="10"/></cc:MeasurementSpec></cc:ColorSpecification>' +
    '</cc:ColorSpecificationCollection></cc:Resources></cc:CxF>'
  );
}

const megabytes = (text: string): string => `${(text.length / 1e6).toFixed(0)} MB`;

for (const [rows, budget_ms] of [
  [10_000, 2000],
  [100_000, 5000],
] as const) {
  const text = cgatsOf(rows);
  median(`CGATS, ${rows} rows, ${megabytes(text)}`, budget_ms, 3, () => readCgats(text, 'a.txt'));
}
for (const [objects, budget_ms] of [
  [10_000, 2000],
  [45_000, 5000],
] as const) {
  const text = cxfOf(objects);
  median(`CxF, ${objects} objects, ${megabytes(text)}`, budget_ms, 3, () => readCxf(text, 'a.cxf'));
}
