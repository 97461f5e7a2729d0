import { describe, expect, it } from 'vitest';
import { readSheet } from '../../../src/io/sheet/read-sheet';
import type { Sheet } from '../../../src/io/sheet/types';
import { importOf, refusals, remarks, sheetOf } from './sample-files';

const fields = ({ columns }: Sheet) => columns.map(({ field }) => field);
const bytesOf = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const problemOf = (text: string) => {
  const read = readSheet(bytesOf(text), 'range.csv');
  return read.ok ? null : read.problem;
};

const HEAD = 'code,name,L*,a*,b*';

describe('letters', () => {
  const words = 'Nr;Name;L*;a*;b*\n1;Grün;50;-10;5\n';

  it('reads UTF-8 with a mark, UTF-16 of both orders by its mark', () => {
    const codes = [...words].map((letter) => letter.charCodeAt(0));
    const little = [0xff, 0xfe, ...codes.flatMap((code) => [code & 255, code >> 8])];
    const big = [0xfe, 0xff, ...codes.flatMap((code) => [code >> 8, code & 255])];
    for (const bytes of [new TextEncoder().encode(`\uFEFF${words}`), Uint8Array.from(little), Uint8Array.from(big)]) {
      const sheet = sheetOf(bytes);
      expect([sheet.columns[0]!.heading, sheet.rows[0]!.cells[1]]).toEqual(['Nr', 'Grün']);
      expect(sheet.notices.map(({ code }) => code)).not.toContain('encoding-taken');
    }
  });

  it('says when letters were taken for Windows-1252, or for UTF-16 without a mark', () => {
    const western = sheetOf(bytesOf(words));
    expect([western.rows[0]!.cells[1], western.notices[0]!.code]).toEqual(['Grün', 'encoding-taken']);
    const bare = sheetOf(Uint8Array.from([...words].flatMap((letter) => [letter.charCodeAt(0), 0])));
    expect([bare.rows[0]!.cells[1], bare.notices[0]!.text]).toEqual(['Grün', expect.stringContaining('UTF-16')]);
  });
});

describe('cells', () => {
  it.each([
    ['commas', 'code,name,L,a,b\n1,"Oat, Linen",50,1,2'],
    ['semicolons', 'code;name;L;a;b\n1;Oat, Linen;50;1;2'],
    ['tabs', 'code\tname\tL\ta\tb\n1\tOat, Linen\t50\t1\t2'],
    ['bars', 'code|name|L|a|b\n1|Oat, Linen|50|1|2'],
    ['what its first line says', 'sep=;\ncode;name;L;a;b\n1;Oat, Linen;50;1;2'],
  ])('are separated by %s', (_, text) => {
    expect(sheetOf(text).rows[0]!.cells).toEqual(['1', 'Oat, Linen', '50', '1', '2']);
  });

  it('keeps the lines of the file where quoted cells break lines, and comments and empty lines stand between', () => {
    const sheet = sheetOf(`# ours\n${HEAD}\n1,"two\nlines",50,0,0\n\n# more\n2,"say ""hi""",50,0,0\r\n3,x,50,0,0`);
    expect(sheet.rows.map(({ line, cells }) => [line, cells[1]])).toEqual([
      [3, 'two\nlines'],
      [7, 'say "hi"'],
      [8, 'x'],
    ]);
  });

  it('does not take a hex code in the first column for a comment', () => {
    expect(sheetOf('hex,name\n#d9cfbb,Oat\n#comment,no').rows).toHaveLength(1);
  });

  it('refuses the rows that cannot be told, keeps the others', () => {
    const found = importOf(
      `${HEAD},class\n1,Oat,50,0,0,paint\n2,Oat, Linen,50,0,0,paint\n3,"open,50,0,0\n4,x,50,0,0,paint`,
    );
    expect(refusals(found)).toEqual(['2 row-too-long 3', '3 quote-not-closed 4']);
    expect(found.kept.map(({ row }) => row)).toEqual([1]);
  });
});

describe('headings', () => {
  it('stand below titles, which may say light and observer', () => {
    const sheet = sheetOf(
      `Range of spring,,,,\nAll values D65/10°,,,,\n\n${HEAD}\n1,Oat,50,0,0\n${HEAD}\n2,Ash,50,0,0`,
    );
    expect(sheet.said).toEqual({ illuminant: 'D65', observer_deg: 10 });
    expect(sheet.notices[0]!.text).toBe('2 lines above the headings were not read.');
    expect(sheet.rows.map(({ cells }) => cells[0])).toEqual(['1', '2']);
  });

  it('may be missing: columns are then taken by what stands in them, and told', () => {
    const sheet = sheetOf('EX-1,Oat Linen,paint,86.2,1.7,10.5\nEX-2,Slate,paint,43.5,-2.1,-4.7');
    expect(fields(sheet)).toEqual(['code', 'name', 'class', 'lab_l', 'lab_a', 'lab_b']);
    expect(sheet.notices[0]).toMatchObject({ code: 'no-headings', text: expect.stringContaining('4 lab_l') });
    expect(fields(sheetOf('Oat;#d9cfbb\nSlate;#5f6a72'))).toEqual(['name', 'hex']);
    expect(fields(sheetOf('Oat;217;207;187\nSlate;95;106;114'))).toEqual(['name', 'rgb_r', 'rgb_g', 'rgb_b']);
  });

  it('are headings though nobody knows them, where words stand over numbers; what stands below is then asked for', () => {
    const table = 'Thing,Shade,Depth,Warm,Wide\nA1,Pale gray,78.2,1.1,0.5\nA2,Dark gray,31.0,-0.5,3';
    const sheet = sheetOf(table);
    expect(sheet.columns.map(({ heading, field }) => [heading, field])).toEqual([
      ['Thing', 'code'],
      ['Shade', 'name'],
      ['Depth', null],
      ['Warm', null],
      ['Wide', null],
    ]);
    expect(sheet.rows.map(({ line }) => line)).toEqual([2, 3]);
    expect(sheet.notices[0]!.text).toBe(
      'The headings are not ones we know; the columns were taken for: 1 code, 2 name.',
    );
    expect(importOf(table, { class: 'paint' }).questions).toEqual([{ about: 'columns', rows: 2 }]);
    // What a cell holds by its looks is taken, whatever stands above; a first finish with its color is no heading.
    expect(fields(sheetOf('Thing;Look\nOat;#d9cfbb\nSlate;#5f6a72'))).toEqual(['name', 'hex']);
    expect(sheetOf('Oat;#d9cfbb\nSlate;#5f6a72').rows).toHaveLength(2);
    expect(sheetOf('Oat;paint\nSlate;stone').rows).toHaveLength(2);
  });

  it('asks what columns mean where no color is found', () => {
    const found = importOf('code,name,first,second,third\n1,Oat,50,1,2', { class: 'paint' });
    expect(found.questions).toEqual([{ about: 'columns', rows: 1 }]);
    const said = {
      class: 'paint',
      fields: { 2: 'lab_l', 3: 'lab_a', 4: 'lab_b' },
      conditions: { illuminant: 'D50', observer_deg: 2 },
    } as const;
    expect(importOf('code,name,first,second,third\n1,Oat,50,1,2', said).kept[0]!.finish.components[0]!.color).toEqual({
      kind: 'lab',
      lab: [50, 1, 2],
      illuminant: 'D50',
      observer_deg: 2,
    });
  });

  it('are not sizes that look like wavelengths, but may be one word alone', () => {
    const sheet = sheetOf('EX-1,Oat Linen,paint,86.2,1.7,10.5,300,600\nEX-2,Slate,paint,43.5,-2.1,-4.7,300,600');
    expect([sheet.rows.length, fields(sheet).slice(0, 2)]).toEqual([2, ['code', 'name']]);
    expect(fields(sheetOf('hex\n#d9cfbb'))).toEqual(['hex']);
    expect(fields(sheetOf('Nr;Artikel;hex\n1;Oat;#d9cfbb'))).toEqual(['code', 'name', 'hex']);
  });

  it('may have letters that depend on their neighbors', () => {
    expect(fields(sheetOf('nr,L,a,b,R,G,B\n1,50,0,0,1,2,3'))).toEqual([
      'code',
      'lab_l',
      'lab_a',
      'lab_b',
      'rgb_r',
      'rgb_g',
      'rgb_b',
    ]);
    expect(fields(sheetOf('nr,X,Y,Z\n1,50,50,50'))).toEqual(['code', 'xyz_x', 'xyz_y', 'xyz_z']);
    expect(fields(sheetOf('nr,L*,C*,h°,Y\n1,50,0,0,18'))).toEqual(['code', 'lch_l', 'lch_c', 'lch_h', 'lrv']);
    expect(fields(sheetOf('Color,Name,L,a,b\n#d9cfbb,Oat,50,0,0'))).toEqual(['hex', 'name', 'lab_l', 'lab_a', 'lab_b']);
  });
});

describe('spectra', () => {
  const nm = Array.from({ length: 31 }, (_, i) => 400 + 10 * i);

  it.each(['spd_400', 'R_400nm', 'nm400', '400', '400 nm', 'SPECTRAL_NM400', 'R[400nm]'])(
    'stand under headings like %s',
    (one) => {
      const headings = nm.map((wavelength) => one.replace('400', String(wavelength)));
      const { kept } = importOf(`code,${headings.join(',')}\n1,${nm.map(() => '0.5').join(',')}`);
      expect(kept[0]!.finish.components[0]!.color).toEqual({
        kind: 'spectrum',
        start_nm: 400,
        step_nm: 10,
        reflectance: nm.map(() => 0.5),
      });
      expect(kept[0]!.finish.provenance).toBe('measured');
    },
  );

  it('are turned where the samples stand in columns', () => {
    const text = `wavelength (nm);Oat;Slate\ngloss;10;4\n${nm.map((wavelength) => `${wavelength};${wavelength / 10},5;20`).join('\n')}`;
    const sheet = sheetOf(text);
    expect(sheet.notices.map(({ code }) => code)).toEqual(['table-turned', 'decimal-comma']);
    const { kept } = importOf(text);
    expect(kept.map(({ finish }) => [finish.label, finish.gloss_gu])).toEqual([
      ['Oat, ROW-1', 10],
      ['Slate, ROW-2', 4],
    ]);
    expect(kept[0]!.finish.components[0]!.color).toMatchObject({
      start_nm: 400,
      step_nm: 10,
      reflectance: nm.map((one) => (one / 10 + 0.5) / 100),
    });
  });

  it('are refused with a gap, and with values that no surface has', () => {
    const head = `code,${nm.join(',')}`;
    const row = (code: string, change: (value: string, i: number) => string) =>
      `${code},${nm.map((_, i) => change('0.5', i)).join(',')}`;
    const text = [
      head,
      row('1', (value, i) => (i === 9 ? '' : value)),
      row('2', (value, i) => (i === 9 ? 'x' : value)),
      row('3', (value, i) => (i === 9 ? '-0.1' : value)),
      row('4', (value) => value),
    ].join('\n');
    expect(refusals(importOf(text))).toEqual(['1 spectrum-gap 2', '2 not-a-number 3', '3 spectrum-negative 4']);
  });

  it('ask for their scale where it is open', () => {
    const text = `code,${nm.join(',')}\n1,${nm.map(() => '1.5').join(',')}`;
    expect(importOf(text).questions).toEqual([{ about: 'scale', rows: 1, usual: { scale: 'percent' } }]);
    const dark = importOf(text, { class: 'paint', gloss_gu: 10, scale: 'percent' });
    expect([dark.questions, dark.kept.length]).toEqual([[], 1]);
  });
});

describe('colors', () => {
  it('are taken by the most trusted notation, and the others held against it', () => {
    const head = 'code,L*,a*,b*,C*,h,hex,munsell,LRV,light';
    const found = importOf(
      `${head}\n1,50,0,0,0,0,#777777,N 5/,18.4,D65/10\n2,50,0,0,20,90,#ff0000,5R 5/10,60,D65/10\n3,,,,,,,5R 5/10,,\n4,,,,,,,,70,`,
    );
    expect(found.kept.map(({ finish }) => finish.components[0]!.color.kind)).toEqual(['lab', 'lab', 'munsell']);
    expect(remarks(found)['1']).toEqual([]);
    expect(remarks(found)['2']).toEqual(['notations-differ', 'notations-differ', 'notations-differ', 'lrv-disagrees']);
    expect(refusals(found)).toEqual(['4 no-color 5']);
  });

  it('take the hue of an LRV from a name that has one, and say so', () => {
    const found = importOf('code,name,LRV\n1,Warm Gray,70\n2,Harbor,70');
    expect(found.kept[0]!.finish).toMatchObject({
      provenance: 'by-eye',
      components: [{ color: { kind: 'lrv', lrv: 70, hue: 'warm gray' } }],
    });
    expect(remarks(found)['1']).toContain('color-from-name');
    expect(refusals(found)).toEqual(['2 no-color 3']);
  });

  it.each([
    ['words', '1,n/a,0,0', 'not-a-number'],
    ['a decimal comma between commas', '1,"50,5",0,0', 'not-a-number'],
    ['an empty cell, which is not 0', '1,50,,0', 'color-incomplete'],
    ['more lightness than a surface has', '1,104,0,0', 'out-of-range'],
    ['a color that no surface has', '1,95,60,-60', 'outside-object-color-solid'],
  ])('are refused for %s', (_, row, code) => {
    expect(refusals(importOf(`code,L*,a*,b*\n${row}`))).toEqual([`1 ${code} 2`]);
  });

  it('hold for the light and observer of their row, in whatever way it says them', () => {
    const cells = ['D65/10', 'D65/10°', 'D65 10°', 'd50 2 deg', 'A/10', 'F11/2', '"ILLUMINANT, D50, 2 degree"'];
    const { kept } = importOf(
      `code,L*,a*,b*,Lichtart/Beobachter\n${cells.map((cell, i) => `${i},50,1,2,${cell}`).join('\n')}`,
      { class: 'paint', gloss_gu: 10 },
    );
    expect(kept.map(({ finish }) => finish.components[0]!.color)).toMatchObject(
      [
        ['D65', 10],
        ['D65', 10],
        ['D65', 10],
        ['D50', 2],
        ['A', 10],
        ['FL11', 2],
        ['D50', 2],
      ].map(([illuminant, observer_deg]) => ({ illuminant, observer_deg })),
    );
    expect(refusals(importOf('code,L*,a*,b*,light\n1,50,1,2,moon'))).toEqual(['1 unknown-illuminant 2']);
  });
});

describe('limits', () => {
  it.each([
    ['rows', `code\n${'1\n'.repeat(100_001)}`, 'too-many-rows'],
    ['lines', '\n'.repeat(500_000), 'too-many-rows'],
    ['columns', `code${',x'.repeat(2000)}\n1`, 'too-many-columns'],
    ['letters in a line', 'a'.repeat(200_001), 'line-too-long'],
  ])('too many %s', (_, text, code) => {
    expect(problemOf(text)).toMatchObject({ code, remedy: expect.any(String) });
  });

  it('too many letters in a cell refuse its row', () => {
    expect(refusals(importOf(`${HEAD}\n1,${'a'.repeat(5001)},50,0,0\n2,b,50,0,0`))).toEqual(['1 cell-too-long 2']);
  });
});
