import { describe, expect, it } from 'vitest';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import { ANSWERED, importOf, refusals, remarks, sampleBytes } from './sample-files';

const outcome = (name: string, choices = ANSWERED) => importOf(sampleBytes(name), choices, name);

it('keeps every row of the canonical table with all it says', () => {
  const { kept, refused, questions } = outcome('finishes-canonical.csv', {});
  expect([refused, questions]).toEqual([[], []]);
  expect(kept.map(({ finish }) => finish)).toMatchObject([
    {
      id: 'EX-100',
      label: 'Oat, Linen, EX-100',
      class: 'paint',
      gloss_gu: 10,
      components: [
        { color: { kind: 'lab', lab: [86.18, 1.7, 10.53], illuminant: 'D65', observer_deg: 10 }, lrv: 68.3 },
      ],
      provenance: 'declared',
      note: 'Source: invented',
    },
    { id: 'EX-101', label: 'Harbour Slate, EX-101', gloss_gu: 4 },
    { id: 'EX-102', label: 'Moss Shelf, EX-102', gloss_gu: 25 },
  ]);
});

it('reads the same colors from the table with semicolons, decimal commas and German headings', () => {
  const colors = (name: string) => outcome(name).kept.map(({ finish }) => [finish.class, finish.components]);
  expect(colors('finishes-eu-semicolon-bom.csv')).toEqual(colors('finishes-canonical.csv'));
  const { kept } = outcome('finishes-eu-semicolon-bom.csv');
  expect(kept.map(({ finish }) => finish.label)).toEqual(['Oat Linen, 100', 'Harbour Slate, 101', 'Moss Shelf, 102']);
});

it('asks what the German table leaves open, and keeps nothing before it is answered', () => {
  const { kept, refused, questions } = outcome('finishes-eu-semicolon-bom.csv', {});
  expect(kept).toEqual([]);
  expect(refused.map(({ problem }) => problem.code)).toEqual(Array(3).fill('class-missing'));
  expect(questions).toEqual([{ about: 'class', rows: 3 }]);
});

it('takes hex codes for screen colors of low confidence', () => {
  const found = outcome('finishes-hex-only.csv', { class: 'paint' });
  expect(found.kept.map(({ finish }) => [finish.label, finish.provenance, finish.components[0]!.color])).toEqual([
    ['Oat Linen, ROW-1', 'screen', { kind: 'hex', hex: '#d9cfbb' }],
    ['Harbour Slate, ROW-2', 'screen', { kind: 'hex', hex: '#5f6a72' }],
    ['Quote "inside" name, ROW-3', 'screen', { kind: 'hex', hex: '#6b7a52' }],
  ]);
  expect(remarks(found)['ROW-1']).toEqual(['code-missing', 'screen-color', 'gloss-usual']);
  expect(found.questions).toEqual([{ about: 'gloss', rows: 3, usual: { gloss_gu: 8 } }]);
});

it('answers each row of the hostile table', () => {
  const found = outcome('finishes-hostile.csv');
  expect(refusals(found)).toEqual(['2 out-of-range 3', '3 no-color 4', '5 duplicate-code 6']);
  expect(found.refused[2]!.problem.text).toBe('"EX-4" stands in line 5 and again in line 6; the first was taken.');
  expect(remarks(found)).toEqual({ 'EX-1': ['formula-as-text'], 'EX-4': [], 'EX-5': ['lrv-disagrees'] });
  const [formula, , lrv] = found.kept;
  expect(formula!.finish.label).toBe('=HYPERLINK("http://example.invalid"), EX-1');
  expect(lrv!.finish.components[0]).toMatchObject({ color: { lab: [50, 0, 0] }, lrv: 60 });
});

it('asks for class, light and observer of the hostile table', () => {
  const { kept, questions } = outcome('finishes-hostile.csv', {});
  expect(kept).toEqual([]);
  expect(questions).toEqual([
    { about: 'class', rows: 4 },
    { about: 'conditions', rows: 4, usual: { conditions: { illuminant: 'D65', observer_deg: 10 } } },
  ]);
});

describe('what holds no finishes is refused by what it is', () => {
  it.each([
    ['png-srgb.png', 'not-text', /a picture \(PNG\)/],
    ['exif-block.tif.bin', 'not-text', /a picture \(TIFF\)/],
    ['door.usdz', 'not-text', /a 3D scene \(USDZ\)/],
    ['door.usda', 'not-a-sheet', /a 3D scene \(USD\)/],
    ['door-variants.gltf', 'not-a-sheet', /a 3D model \(glTF\)/],
    ['lambertian-2002.ies', 'not-a-sheet', /the beam of a lamp \(IES LM-63\)/],
    ['spd-lamp.csv', 'lamp-spectra', /light of lamps/],
  ])('%s', (name, code, text) => {
    const read = readSheet(sampleBytes(name), name);
    expect(read).toMatchObject({ ok: false, problem: { code, at: { file: name } } });
    if (!read.ok) expect(read.problem.text).toMatch(text);
  });

  const spreadsheet = `PK\x03\x04${'\0'.repeat(26)}xl/workbook.xml`;
  it.each([
    ['a spreadsheet', spreadsheet, /a spreadsheet, not a table/, /CSV/],
    ['an old spreadsheet', '\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1\0\0', /a spreadsheet or a document/, /CSV/],
    ['an open spreadsheet', 'PK\x03\x04mimetypeapplication/vnd.oasis.opendocument.spreadsheet', /a spreadsheet/, /CSV/],
    ['an archive', 'PK\x03\x04range.csv', /a packed file \(zip\)/, /Unpack/],
    ['a PDF', '%PDF-1.7\n', /a PDF/, /CSV/],
    ['a photo', '\xff\xd8\xff\xe0\0\x10JFIF', /a picture \(JPEG\)/, /photo/],
    ['numbers', '\x01\0\0\0\x07\0\0\0\x80\x01\0\0', /no text/, /CSV/],
    ['nothing', '', /empty/, /table/],
    ['a web page', '<!DOCTYPE html><table></table>', /a web page/, /CSV/],
    ['other JSON', '[{"name": "Oat"}]', /JSON/, /CSV/],
    ['a project', '{\n  "type": "upstand-project"}', /a project of this program/, /project/],
  ])('%s', (_, text, what, remedy) => {
    const read = readSheet(
      Uint8Array.from(text, (letter) => letter.charCodeAt(0)),
      'range.csv',
    );
    if (read.ok) throw new Error('was read');
    expect(read.problem.text).toMatch(what);
    expect(read.problem.remedy).toMatch(remedy);
  });
});
