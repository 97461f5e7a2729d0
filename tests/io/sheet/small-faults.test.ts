import { expect, it } from 'vitest';
import { mulberry32 } from '../../../src/engine/random';
import { readCxf } from '../../../src/io/sheet/read-cxf';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import { cxfObject, cxfSpecification, cxfText, lab } from './cxf-text';
import { importOf, refusals, remarks } from './sample-files';

const failed = (bytes: Uint8Array, name = 'range.csv') => {
  const read = readSheet(bytes, name);
  return read.ok ? null : read.problem.code;
};

it('keeps gloss above that of black glass with a remark, and refuses what only a mirror reads', () => {
  // Fresnel at 60 degrees: smooth glass of index 1.6 reads 105 of the 100 units of black glass, with both faces 190.
  const found = importOf('code,class,L*,a*,b*,light,gloss\n1,glass,80,0,5,D65/10,104\n2,glazed,80,0,5,D65/10,240', {});
  expect(remarks(found)).toEqual({ 1: ['gloss-over-glass'] });
  expect(refusals(found)).toEqual(['2 out-of-range 3']);
});

it('says of bytes of a program or a picture that they are no text, whatever the file is called', () => {
  const random = mulberry32(7);
  const bytes = Uint8Array.from({ length: 3000 }, () => 1 + Math.floor(random() * 255));
  expect([failed(bytes), failed(bytes, 'range.cxf')]).toEqual(['not-text', 'not-text']);
});

it('says of a table of headings that it has no rows', () => {
  expect(failed(new TextEncoder().encode('code,name,L*,a*,b*\n'))).toBe('no-rows');
});

it('knows lights by the trade names of their lamps, and names those whose tables are not held', () => {
  const cells = ['TL84/10', 'CWF', 'D60', 'E/2'];
  const rows = cells.map((cell, i) => `${i},80,0,5,${cell},2`);
  const found = importOf(`code,L*,a*,b*,illuminant,observer\n${rows.join('\n')}`, { class: 'paint', gloss_gu: 10 });
  expect(found.kept.map(({ finish }) => finish.components[0]!.color)).toMatchObject([
    { illuminant: 'FL11' },
    { illuminant: 'FL2' },
  ]);
  expect(refusals(found)).toEqual(['3 unknown-illuminant 4', '4 unknown-illuminant 5']);
  expect(found.refused[0]!.problem.text).toContain('table is not held here');
});

it.each(['±0.5', '+/- 0.5', '0.5'])('reads %s as an uncertainty', (cell) => {
  const found = importOf(`code,L*,a*,b*,light,uncertainty\n1,80,0,0,D65/10,${cell}`);
  expect(found.kept[0]!.finish.uncertainty_de00).toBe(0.5);
});

// The elements for gloss are not of one kind in the files there are.
it.each([
  ['<Gloss><Geometry>20</Geometry><Gloss>35</Gloss></Gloss>', null],
  ['<GlossAttributes><Gloss><Angle>20</Angle><Value>35</Value></Gloss></GlossAttributes>', null],
  ['<Gloss Angle="85">35</Gloss>', null],
  ['<Gloss><Geometry>60</Geometry><Value>35</Value></Gloss>', '35'],
  ['<Gloss>35</Gloss>', '35'],
  ['<Gloss Angle="20">80</Gloss><Gloss Angle="60">35</Gloss>', '35'],
])('takes of %s the gloss at 60 degrees only', (gloss, value) => {
  const object = cxfObject('a', lab('s', 50, 0, 0), `<PhysicalAttributes>${gloss}</PhysicalAttributes>`);
  const read = readCxf(cxfText(object, cxfSpecification('s')), 'a.cxf');
  if (!read.ok) throw new Error(read.problem.text);
  const { columns, rows, notices } = read.value;
  expect(rows[0]!.cells[columns.findIndex(({ field }) => field === 'gloss_60')]).toBe(value ?? undefined);
  expect(notices.map(({ code }) => code)).toEqual(value ? [] : ['gloss-other-angle']);
});
