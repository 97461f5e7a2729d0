import { describe, expect, it } from 'vitest';
import { importOf, refusals, remarks, sheetOf } from './sample-files';

// Invented tables. A set of columns belongs to what its headings state, and to nothing else of the file.

const UNASKED = { class: 'paint', gloss_gu: 10 } as const;
const colorsOf = (text: string) =>
  importOf(text, UNASKED).kept.map(({ finish }) => finish.components[0]!.color as unknown as Record<string, unknown>);
const told = (text: string) => sheetOf(text).notices.map(({ code }) => code);

describe('several sets of color columns', () => {
  it('take the mirror-like part that their headings state, included before excluded, whatever comes first', () => {
    const [sci, sce] = ['L* SCI,a* SCI,b* SCI', 'L* SCE,a* SCE,b* SCE'];
    const lab = { kind: 'lab', lab: [80, 0, 5], specular: 'included', illuminant: 'D65', observer_deg: 10 };
    for (const text of [
      `code,${sce},${sci},light\n1,78,0,5.3,80,0,5,D65/10`,
      `code,${sci},${sce},light\n1,80,0,5,78,0,5.3,D65/10`,
      `code,L_SCE,a_SCE,b_SCE,L_SCI,a_SCI,b_SCI,light\n1,78,0,5.3,80,0,5,D65/10`,
    ]) {
      expect(colorsOf(text)).toEqual([lab]);
      expect(told(text)).toEqual(['set-chosen']);
    }
    expect(colorsOf(`code,${sce},light\n1,78,0,5.3,D65/10`)).toMatchObject([{ specular: 'excluded' }]);
  });

  it('are whole before they are better', () => {
    const text = 'code,L* SCI,L* SCE,a* SCE,b* SCE,light\n1,80,78,0,5.3,D65/10';
    expect(colorsOf(text)).toMatchObject([{ lab: [78, 0, 5.3], specular: 'excluded' }]);
  });

  const set = (light: string) => `L* (${light}),a* (${light}),b* (${light})`;

  // Lab of the Ohta orange under both: what the heading says is neither asked for nor replaced by what is usual.
  it('of two lights count by a stated rule, and are not asked for', () => {
    const text = `code,${set('D50/2°')},${set('D65/10°')}\n1,62.356,34.171,59.165,60.5,29.5,56.9`;
    expect(colorsOf(text)).toEqual([{ kind: 'lab', lab: [60.5, 29.5, 56.9], illuminant: 'D65', observer_deg: 10 }]);
    expect(importOf(text, UNASKED).questions).toEqual([]);
    expect(sheetOf(text).notices[0]).toMatchObject({
      code: 'set-chosen',
      text: expect.stringContaining('D65/10° was taken, D50/2° left out'),
    });
  });

  it.each([
    [
      ['D50/2°', 'D65/2°'],
      ['D65', 2],
    ],
    [
      ['A/10°', 'D50/2°'],
      ['D50', 2],
    ],
    [
      ['F11/10°', 'A/10°'],
      ['FL11', 10],
    ],
    [
      ['D50/10°', 'D50/2°'],
      ['D50', 2],
    ],
  ])('of %j take %j', (lights, [illuminant, observer_deg]) => {
    const text = `code,${lights.map(set).join()}\n1,50,1,2,51,2,3`;
    expect(colorsOf(text)).toMatchObject([{ illuminant, observer_deg }]);
  });

  it('that hold for part of a light ask for the rest, with what is usual for it', () => {
    const found = importOf(`code,${set('D50')}\n1,50,1,2`, UNASKED);
    expect(found.questions).toMatchObject([{ usual: { conditions: { illuminant: 'D50', observer_deg: 2 } } }]);
    expect(found.refused[0]!.problem.text).toContain('for D50');
  });

  it('may be spectra', () => {
    const nm = [400, 420, 440, 460, 480, 500, 520, 540, 560, 580, 600, 620, 640, 660, 680, 700];
    const of = (word: string) => nm.map((one) => `${one} nm ${word}`).join();
    const text = `code,${of('SCE')},${of('SCI')}\n1${',0.46'.repeat(16)}${',0.5'.repeat(16)}`;
    expect(colorsOf(text)).toMatchObject([{ reflectance: nm.map(() => 0.5), specular: 'included' }]);
  });

  it('hold for what the columns state that a person chose instead', () => {
    const text = 'code,L* SCI,a* SCI,b* SCI,L* SCE,a* SCE,b* SCE,light\n1,80,0,5,78,0,5.3,D65/10';
    const fields = { 1: null, 2: null, 3: null, 4: 'lab_l', 5: 'lab_a', 6: 'lab_b' } as const;
    const { kept } = importOf(text, { ...UNASKED, fields });
    expect(kept[0]!.finish.components[0]!.color).toMatchObject({ lab: [78, 0, 5.3], specular: 'excluded' });
  });
});

describe('columns called by letters', () => {
  // CIE 15: X = x Y/y, Z = (1 - x - y) Y/y. D65, 10 degrees has x 0.31382, y 0.33100 (CIE 15:2004, table T.3), and its white Y of 100
  // X 94.81 and Z 107.32.
  it.each(['x,y,Y', 'Y,x,y'])('%s are chromaticities with their Y', (letters) => {
    const cells = letters.startsWith('x') ? '0.31382,0.33100,50' : '50,0.31382,0.33100';
    const [color] = colorsOf(`code,${letters},light\n1,${cells},D65/10\n2,${cells},D65/10`);
    expect(color).toMatchObject({ kind: 'xyz' });
    const [x, y, z] = (color as unknown as { xyz: readonly [number, number, number] }).xyz;
    expect(x).toBeCloseTo(94.81 / 2, 1);
    expect(y).toBe(50);
    expect(z).toBeCloseTo(107.32 / 2, 1);
  });

  it('are no LRV where they are chromaticities or inks', () => {
    // L* 80 is Y 56.68, L* 50 is 18.42 (CIE 15).
    const xyy = 'code,L*,a*,b*,x,y,Y,light\n1,80,0,5,0.3220,0.3412,56.68,D65/10\n2,50,0,5,0.3260,0.3460,18.42,D65/10';
    const inks = 'code,L*,a*,b*,C,M,Y,K,light\n1,80,0,5,10,20,30,5,D65/10\n2,50,0,5,10,20,60,5,D65/10';
    for (const text of [xyy, inks]) {
      const found = importOf(text, UNASKED);
      expect(remarks(found)).toEqual({ 1: [], 2: [] });
      expect(found.kept.map(({ finish }) => finish.components[0]!.lrv)).toEqual([undefined, undefined]);
    }
    expect(told(inks)).toEqual(['device-columns']);
    expect(told(xyy)).toEqual([]);
  });

  it('are held against L*, a*, b* as x, y, Y', () => {
    const found = importOf('code,L*,a*,b*,x,y,Y,light\n1,80,0,5,0.3220,0.3412,46.68,D65/10', UNASKED);
    expect(remarks(found)).toEqual({ 1: ['notations-differ'] });
  });

  it.each([
    ['x and y without Y', 'x,y', '0.3,0.3'],
    ['Y beside Z', 'Y,Z', '50,50'],
  ])('%s are left out and told', (_, letters, cells) => {
    const text = `code,L*,a*,b*,${letters},light\n1,80,0,5,${cells},D65/10`;
    expect(told(text)).toEqual(['set-not-whole']);
    expect(remarks(importOf(text, UNASKED))).toEqual({ 1: [] });
  });

  // Y of L* 40, a* 60, b* 40 under A and 2 degrees is 11.25 there, and not under D65 and 10.
  it('Y alone is an LRV, but not one of D65 and 10 degrees where the row has another light', () => {
    expect(remarks(importOf('code,L*,a*,b*,Y,light\n1,40,60,40,11.25,A/2', UNASKED))).toEqual({ 1: [] });
    expect(remarks(importOf('code,L*,a*,b*,Y,light\n1,80,0,5,40,D65/10', UNASKED))).toEqual({ 1: ['lrv-disagrees'] });
  });

  it('refuse chromaticities that no color has', () => {
    expect(refusals(importOf('code,x,y,Y,light\n1,0.8,0.4,50,D65/10'))).toEqual(['1 bad-chromaticity 2']);
  });
});

describe('gloss', () => {
  it.each(['Gloss (20°)', 'Gloss (85°)', 'Gloss 20°', 'Gloss 85', 'Gloss [20°]', 'Glanz 20° (GU)'])(
    'at another angle is not taken for that at 60 degrees: %s',
    (heading) => {
      const text = `code,L*,a*,b*,light,specular,${heading}\n1,20,0,0,D65/10,SCE,45`;
      const found = importOf(text, { class: 'paint' });
      expect(remarks(found)).toEqual({ 1: ['gloss-usual'] });
      expect(told(text)).toEqual(['gloss-other-angle']);
    },
  );

  it.each(['Gloss (60°)', 'Gloss 60', 'Gloss', 'Gloss [60°] GU', 'Gloss (ISO 2813)'])(
    'at 60 degrees is: %s',
    (heading) => {
      const found = importOf(`code,L*,a*,b*,light,Gloss (20°),${heading}\n1,20,0,0,D65/10,40,72`, { class: 'paint' });
      expect(found.kept[0]!.finish.gloss_gu).toBe(72);
    },
  );

  it('of a cell at another angle is left out, at 60 degrees taken', () => {
    const cells = ['4 GU @ 85°', '4 (85°)', '72 GU (60°)', '72 @ 60°'];
    const rows = cells.map((cell, i) => `${i},80,1,5,D65/10,${cell}`);
    const found = importOf(`code,L*,a*,b*,light,Gloss\n${rows.join('\n')}`, { class: 'paint' });
    expect(found.kept.map(({ finish }) => finish.gloss_gu)).toEqual([8, 8, 72, 72]);
    expect(remarks(found)['1']).toEqual(['gloss-other-angle', 'gloss-usual']);
  });
});
