import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { projectChanges } from '../../src/app/libraries/project-changes';
import { parseProject } from '../../src/io/project-file';
import { FIELDS } from '../../src/io/sheet/types';
import { applyCommand } from '../../src/model/apply-command';
import { codeOf, countSame, mergeFinishes, type OnSame } from '../../src/model/merge-finishes';
import type { Finish } from '../../src/model/project';
import { bulkEdit, tagsIn } from '../../src/ui/library/bulk-edit';
import { chooseTo, NONE_CHOSEN, toggleAll, toggleRow } from '../../src/ui/library/choose-rows';
import { EMPTY_FIELDS, fieldsOf, finishOfFields } from '../../src/ui/library/finish-fields';
import { freeName, nameFromFile } from '../../src/ui/library/import/file-name';
import { uncertaintyIn, withUncertainty } from '../../src/ui/library/import/trust';
import { askedAfter } from '../../src/ui/library/import/use-import';
import { nearLrv } from '../../src/ui/library/near-lrv';
import { filterRange, NO_RANGE_FILTERS, RANGE_ORDERS, sortRange, tagsOf } from '../../src/ui/library/range-filters';
import { FIELD_WORDS } from '../../src/ui/words/import';

const finish = (id: string, more: Partial<Finish> = {}, l = 50): Finish => ({
  id,
  label: `Paint ${id}, ${id}`,
  class: 'paint',
  gloss_gu: 10,
  components: [{ role: 'base', share: 1, color: { kind: 'lab', lab: [l, 0, 0], illuminant: 'D65', observer_deg: 2 } }],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
  ...more,
});

const ids = (finishes: readonly Finish[]) => finishes.map(({ id }) => id);

it('puts finishes to a library as chosen for codes that are there already', () => {
  const present = [finish('A', { tags: ['mine'] }), finish('B')];
  const incoming = [finish('a', { tags: ['new'] }, 70), finish('C')];
  expect(countSame(present, incoming)).toBe(1);
  expect(mergeFinishes(present, incoming, 'skip')).toMatchObject({ added: 1, replaced: 0, skipped: 1 });
  const replaced = mergeFinishes(present, incoming, 'replace');
  expect(ids(replaced.finishes)).toEqual(['A', 'B', 'C']);
  expect(replaced.finishes[0]).toMatchObject({ id: 'A', tags: ['mine', 'new'], label: 'Paint a, A' });
  const both = mergeFinishes(present, [finish('A', {}, 70)], 'both');
  expect(ids(both.finishes)).toEqual(['A', 'B', 'A-2']);
  expect(both.finishes[2]!.label).toBe('Paint A, A-2');
});

const finishes = fc
  .uniqueArray(fc.integer({ min: 0, max: 30 }), { maxLength: 12 })
  .map((numbers) => numbers.map((n) => finish(`F${n}`)));
const onSame = fc.constantFrom<OnSame>('both', 'replace', 'skip');

it('loses nothing and keeps ids unique, whatever is put to a library', () => {
  fc.assert(
    fc.property(finishes, finishes, onSame, (present, incoming, same) => {
      const merged = mergeFinishes(present, incoming, same);
      expect(new Set(ids(merged.finishes)).size).toBe(merged.finishes.length);
      expect(merged.added + merged.replaced + merged.skipped).toBe(incoming.length);
      expect(merged.finishes.length).toBe(present.length + merged.added);
      expect(ids(merged.finishes).slice(0, present.length)).toEqual(ids(present));
      // Put there a second time, all are there already.
      expect(mergeFinishes(merged.finishes, incoming, 'skip').added).toBe(0);
    }),
  );
});

it('sorts by every order either way, what has no value last', () => {
  const cheap = finish('10', { supply: { price_band: '$', lead_time_weeks: 4 } }, 80);
  const dear = finish('9', { supply: { price_band: '$$$', lead_time_weeks: 1 }, gloss_gu: 80 }, 20);
  const bare = finish('2', { gloss_gu: 40 });
  const all = [cheap, bare, dear];
  for (const order of RANGE_ORDERS) expect(new Set(sortRange(all, order, false))).toEqual(new Set(all));
  expect(ids(sortRange(all, 'code', false))).toEqual(['2', '9', '10']);
  expect(ids(sortRange(all, 'lrv', false))).toEqual(['9', '2', '10']);
  expect(ids(sortRange(all, 'sheen', true))).toEqual(['9', '2', '10']);
  expect(ids(sortRange(all, 'price', false))).toEqual(['10', '9', '2']);
  expect(ids(sortRange(all, 'price', true))).toEqual(['9', '10', '2']);
  expect(ids(sortRange(all, 'lead', false))).toEqual(['9', '10', '2']);
  expect(ids(sortRange(all, 'library', true))).toEqual(['9', '2', '10']);
});

it('finds by name, code, tag and supplier, and filters by tag, provenance and LRV', () => {
  const all = [
    finish('A', { tags: ['spring', 'north'], supply: { supplier: 'Mill', code: 'ORD-7' } }, 90),
    finish('B', { provenance: 'measured' }, 30),
  ];
  const found = (search: string) => ids(filterRange(all, { ...NO_RANGE_FILTERS, search }));
  for (const search of ['ord-7', 'MILL spring', 'spring north']) expect(found(search)).toEqual(['A']);
  expect(found('mill b')).toEqual([]);
  const only = (filters: object) => ids(filterRange(all, { ...NO_RANGE_FILTERS, ...filters }));
  expect(only({ tag: 'north' })).toEqual(['A']);
  expect(only({ provenance: 'measured' })).toEqual(['B']);
  expect(only({ lrvFrom: '50' })).toEqual(['A']);
  expect(tagsOf(all)).toEqual(['north', 'spring']);
});

it('tells an LRV near enough to sort by from any way a color is given', () => {
  // CIE 15: L* 50 is Y 18.42; sRGB #808080 is Y 21.59 (IEC 61966-2-1); Munsell value 5 is Y 19.27 (ASTM D1535).
  const of = (color: Finish['components'][0]['color']) =>
    nearLrv(finish('X', { components: [{ role: 'base', share: 1, color }] }));
  expect(of({ kind: 'lab', lab: [50, 20, 20], illuminant: 'D65', observer_deg: 10 })).toBeCloseTo(18.42, 2);
  expect(of({ kind: 'hex', hex: '#808080' })).toBeCloseTo(21.59, 2);
  expect(of({ kind: 'munsell', munsell: '5YR 5/4' })).toBeCloseTo(19.27, 1);
  expect(of({ kind: 'munsell', munsell: 'N 5/' })).toBeCloseTo(19.27, 1);
  expect(of({ kind: 'spectrum', start_nm: 400, step_nm: 10, reflectance: Array(31).fill(0.4) })).toBeCloseTo(40, 6);
});

it('chooses rows one by one, up to one, and all that are shown', () => {
  const shown = ['a', 'b', 'c', 'd'];
  const one = toggleRow(NONE_CHOSEN, 'b');
  expect([...chooseTo(one, 'd', shown).ids]).toEqual(['b', 'c', 'd']);
  expect([...chooseTo(one, 'a', shown).ids].sort()).toEqual(['a', 'b']);
  expect([...toggleRow(one, 'b').ids]).toEqual([]);
  // Where a range began is no longer shown: just that one.
  expect([...chooseTo(one, 'd', ['c', 'd']).ids]).toEqual(['b', 'd']);
  const all = toggleAll(one, ['a', 'b']);
  expect([...all.ids].sort()).toEqual(['a', 'b']);
  expect([...toggleAll(all, ['a']).ids]).toEqual(['b']);
});

it('changes several at once and leaves the others the same objects', () => {
  const all = [finish('A'), finish('B', { tags: ['old'] })];
  const some = new Set(['B']);
  const tagged = bulkEdit(all, some, { kind: 'add-tag', tag: 'new' });
  expect(tagged[0]).toBe(all[0]);
  expect(tagged[1]!.tags).toEqual(['old', 'new']);
  expect('tags' in bulkEdit(all, some, { kind: 'remove-tag', tag: 'old' })[1]!).toBe(false);
  const priced = bulkEdit(all, some, { kind: 'price', band: '$$' });
  expect(priced[1]!.supply).toEqual({ price_band: '$$' });
  expect('supply' in bulkEdit(priced, some, { kind: 'price', band: null })[1]!).toBe(false);
  expect(ids(bulkEdit(all, some, { kind: 'remove' }))).toEqual(['A']);
  expect(tagsIn(' a, b;a ,, ')).toEqual(['a', 'b']);
});

it('gives back the finish a form was opened with, and takes every field', () => {
  const before = finish('A', { supply: { code: 'ORD', pack: 2 }, tags: ['x'], note: 'n', uncertainty_de00: 3 });
  const same = finishOfFields(fieldsOf(before), before, null, [before]);
  expect(same.ok && same.value).toEqual(before);
  const fields = {
    ...fieldsOf(before),
    name: 'New',
    price: { amount: '34,50', currency: 'eur', per: 'm2' as const },
    thickness: '9,5',
    band: '$' as const,
    tags: '',
    note: ' ',
    pack: '',
    uncertainty: '',
  };
  const after = finishOfFields(fields, before, null, [before]);
  expect(after.ok && after.value).toEqual({
    ...finish('A', { label: 'New, A' }),
    thickness_mm: 9.5,
    supply: { code: 'ORD', price: { amount: 34.5, currency: 'EUR', per: 'm2' }, price_band: '$' },
  });
  for (const wrong of [
    { name: ' ' },
    { gloss: 'many' },
    { gloss: '' },
    { lrv: '101' },
    { lead: '-1' },
    { gloss: '240' },
  ]) {
    expect(finishOfFields({ ...fieldsOf(before), ...wrong }, before, null, [before]).ok).toBe(false);
  }
});

it('makes a new finish of a typed color under the code it is given', () => {
  const color = { kind: 'lab', value: '80, 1, 9', name: '', class: 'paint', sheen: 'satin' } as const;
  const made = finishOfFields({ ...EMPTY_FIELDS, name: 'Oat', code: 'N-1' }, null, color, []);
  expect(made.ok && [made.value.id, made.value.label, codeOf(made.value)]).toEqual(['N-1', 'Oat, N-1', 'N-1']);
  expect(finishOfFields(EMPTY_FIELDS, null, null, []).ok).toBe(false);
});

it('says the change of a project’s finishes as commands', () => {
  const [a, b] = [finish('A', { note: 'n' }), finish('B')];
  const { note: _, ...bare } = a;
  expect(projectChanges([a, b], [bare, finish('C')])).toEqual([
    { kind: 'edit-finish', finish: 'A', changes: { note: undefined } },
    { kind: 'add-finish', finish: finish('C') },
    { kind: 'remove-finish', finish: 'B' },
  ]);
  expect(projectChanges([a, b], [a, b])).toEqual([]);
  const demo = parseProject(readFileSync('demo-data/terrace.project.json', 'utf8'));
  if (!demo.ok) throw new Error(demo.problem.text);
  const { note: _note, ...first } = demo.value.library[0]!;
  const [edit] = projectChanges([demo.value.library[0]!], [first]);
  const after = applyCommand(demo.value, edit!);
  // What was taken away leaves no trace.
  expect(after.ok && Object.keys(after.value.library[0]!)).toEqual(Object.keys(first));
});

it('proposes a name by the file, and another where it is taken', () => {
  expect(nameFromFile('C:\\range\\spring_2026-paints.csv')).toBe('Spring 2026 paints');
  expect(nameFromFile('showroom.library.json')).toBe('Showroom');
  expect(nameFromFile('.csv')).toBe('.csv');
  expect(freeName('Paints', ['paints', 'Paints 2'])).toBe('Paints 3');
});

it('takes an uncertainty for all rows that say none', () => {
  expect(uncertaintyIn('')).toMatchObject({ ok: true, value: null });
  expect(uncertaintyIn('2,5')).toMatchObject({ ok: true, value: 2.5 });
  for (const wrong of ['x', '-1', '31']) expect(uncertaintyIn(wrong).ok).toBe(false);
  const own = finish('B', { uncertainty_de00: 1 });
  expect(withUncertainty([finish('A'), own], 4).map((one) => one.uncertainty_de00)).toEqual([4, 1]);
});

it('keeps a question that was answered, so that the answer can be changed', () => {
  const first = askedAfter([], { questions: [{ about: 'class', rows: 3 }] });
  const next = askedAfter(first, { questions: [{ about: 'gloss', rows: 2 }] });
  expect(next).toEqual([
    { about: 'class', rows: 0 },
    { about: 'gloss', rows: 2 },
  ]);
});

it('has words for every field a column may hold', () => {
  for (const field of FIELDS) expect(FIELD_WORDS[field], field).toBeTruthy();
});
