import { describe, expect, it } from 'vitest';
import { importOf } from './sample-files';

// What a person says of a file is what is told of it afterwards.

const codes = (notices: readonly { readonly code: string; readonly text: string }[]) =>
  notices.filter(({ code }) => code === 'columns-unknown' || code === 'no-headings').map(({ text }) => text);

describe('the notice of columns that were not understood', () => {
  const file = 'code,hex,Mystery,Riddle\nA,#777777,1,2';

  it('follows what is said of them', () => {
    expect(codes(importOf(file).notices)).toEqual(['Columns that were not understood: "Mystery", "Riddle".']);
    expect(codes(importOf(file, { class: 'paint', fields: { 2: 'note' } }).notices)).toEqual([
      'Columns that were not understood: "Riddle".',
    ]);
    expect(codes(importOf(file, { class: 'paint', fields: { 2: 'note', 3: null } }).notices)).toEqual([]);
  });

  it('is said anew of a table without headings', () => {
    const bare = 'A-1,Oat,#d9cfbb\nA-2,Slate,#445566';
    expect(codes(importOf(bare).notices)[0]).toContain('taken for: 1 code, 2 name, 3 hex');
    expect(codes(importOf(bare, { class: 'paint', fields: { 0: 'tags' } }).notices)[0]).toContain('1 tags, 2 name');
  });
});

describe('words for materials', () => {
  const file =
    'code,material,hex\nA,Feinsteinzeug,#777777\nB,FEINSTEINZEUG ,#777777\nC,Unobtainium,#777777\nD,paint,#777777\nE,,#777777';

  it('are told with what they were taken for, what is not understood first', () => {
    expect(importOf(file, {}).words).toEqual([
      { word: 'Unobtainium', class: null, rows: 1 },
      { word: 'Feinsteinzeug', class: 'porcelain', rows: 2 },
    ]);
  });

  it('mean what is said for all rows that have them, before anything else', () => {
    const { kept, refused, words } = importOf(file, {
      classes: { feinsteinzeug: 'glazed', unobtainium: 'metal', paint: 'laminate' },
    });
    expect(kept.map(({ finish }) => finish.class)).toEqual(['glazed', 'glazed', 'metal', 'laminate']);
    expect(refused.map(({ problem }) => problem.code)).toEqual(['class-missing']);
    expect(words.map(({ word, class: kind }) => `${word} ${kind}`)).toEqual([
      'Feinsteinzeug glazed',
      'Unobtainium metal',
      'paint laminate',
    ]);
  });

  it('that are names of what every object has mean nothing by that', () => {
    const odd = 'code,material,hex\nA,constructor,#777777\nB,__proto__,#777777';
    expect(importOf(odd, { classes: {} }).words.map(({ class: kind }) => kind)).toEqual([null, null]);
    expect(importOf(odd, { classes: { ['__proto__']: 'wood' } }).kept.map(({ finish }) => finish.class)).toEqual([
      'wood',
    ]);
  });
});
