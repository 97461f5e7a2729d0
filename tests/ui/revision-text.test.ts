import { expect, it } from 'vitest';
import { whatChanged } from '../../src/model/what-changed';
import { revisionText } from '../../src/ui/handover/revision-text';
import { changeSentence } from '../../src/ui/words/what-changed';
import { demoAfter, OPTION } from '../schedule/schedule';

const revision = { id: 'R2', name: 'As agreed', at: '2026-05-04T12:00:00Z', note: '', document: demoAfter() };

it('a set says which revision it is, whether something was noted in it since, or that it is a draft', () => {
  expect(revisionText({ revision, isNotedSince: false })).toBe('R2, As agreed');
  expect(revisionText({ revision, isNotedSince: true })).toBe('R2, As agreed, with later entries');
  expect(revisionText({ revision: null, isNotedSince: false })).toBe('not frozen: draft');
});

it('what changed in a schedule is told by its tags', () => {
  const item = (id: string, finish: string, note: string) =>
    ({ kind: 'set-item', option: OPTION, record: { item: id, finish, note } }) as const;
  const extra = { id: 'X1', what: 'Silicone', stage: 'fittings' } as const;
  const before = demoAfter(item('CT1', 'EN-01', 'Veins along'), item('BS1', 'TL-01', 'Two rows'));
  const after = demoAfter(item('CT1', 'EN-01', 'Veins along'), item('BS1', 'TL-01', 'Three rows'), {
    kind: 'set-extra',
    option: OPTION,
    extra,
  });
  expect(whatChanged(before, after).map((change) => changeSentence(change, false))).toEqual([
    'What is said of BS1 and X1 in the schedule of Our floor changed.',
  ]);
});
