import { expect, it } from 'vitest';
import { frozenRevision } from '../../src/app/handover/frozen-revision';
import { applyCommand } from '../../src/model/apply-command';
import type { Command } from '../../src/model/commands';
import { codes, demoAfter, OPTION, rowIn, scheduled } from './schedule';

const freeze = (id: string): Command => ({
  kind: 'freeze-revision',
  id,
  name: 'As shown',
  at: '2026-05-04T16:30:00Z',
  note: '',
});
const lay = (finish: string): Command => ({ kind: 'lay-finish', option: OPTION, surface: 'backsplash', finish });

it('a row has the revision since which it stands so; what nobody froze has none', () => {
  const schedule = scheduled(demoAfter(freeze('R1'), lay('TL-02'), freeze('R2')));
  expect(rowIn(schedule, 'CT1').revision).toBe('R1');
  expect(rowIn(schedule, 'BS1').revision).toBe('R2');
  expect(rowIn(scheduled(demoAfter(freeze('R1'), lay('TL-02'))), 'BS1').revision).toBeNull();
  expect(rowIn(scheduled(demoAfter()), 'BS1').revision).toBeNull();
});

it('what came back has the revision of its return, not of its first time', () => {
  const schedule = scheduled(demoAfter(freeze('R1'), lay('TL-02'), freeze('R2'), lay('TL-01'), freeze('R3')));
  expect(rowIn(schedule, 'BS1').revision).toBe('R3');
});

it('rows that stand so no longer stay, under the last revision that had them', () => {
  const schedule = scheduled(demoAfter(freeze('R1'), lay('TL-02'), freeze('R2'), lay('TL-03')));
  expect(schedule.superseded.map(({ id, item, revision }) => [id, item, revision])).toEqual([
    ['BS1', 'Yellowish white tile, gloss glaze, TL-02', 'R2'],
    ['BS1', 'Neutral white tile, gloss glaze, TL-01', 'R1'],
  ]);
});

it('dates, samples and approvals make no row another one', () => {
  const schedule = scheduled(
    demoAfter(
      freeze('R1'),
      { kind: 'set-job', job: { starts_on: '2026-06-01' } },
      { kind: 'set-sample', sample: { finish: 'TL-01', status: 'approved', verdicts: [] } },
      {
        kind: 'set-item',
        option: OPTION,
        record: { item: 'BS1', finish: 'TL-01', approved: { by: 'Client', on: '2026-05-04' } },
      },
      { kind: 'set-state', option: OPTION, surface: 'backsplash', state: 'decided' },
    ),
  );
  expect(rowIn(schedule, 'BS1')).toMatchObject({ revision: 'R1', sample: 'approved', approved: { by: 'Client' } });
  expect(schedule.superseded).toEqual([]);
});

const approve = (of: string): Command => ({
  kind: 'set-item',
  option: OPTION,
  record: { item: 'BS1', finish: 'TL-01', approved: { by: 'Ann', on: '2026-05-05', of } },
});
const herringbone: Command = {
  kind: 'set-laying',
  option: OPTION,
  surface: 'backsplash',
  laying: { layout: 'herringbone', joint_mm: 2, grout: 'GR-01' },
};

it('an approval is of what it was given for: what changes asks for another, what was keeps its own', () => {
  const { spec } = rowIn(scheduled(demoAfter()), 'BS1');
  expect(rowIn(scheduled(demoAfter(freeze('R1'), approve(spec))), 'BS1').approved).toMatchObject({ by: 'Ann' });
  const changed = scheduled(demoAfter(freeze('R1'), approve(spec), herringbone));
  const row = rowIn(changed, 'BS1');
  expect([row.approved, codes(row).includes('changed-since-approved')]).toEqual([null, true]);
  expect(changed.superseded[0]).toMatchObject({ id: 'BS1', revision: 'R1', approved: { by: 'Ann' } });
});

it('edge, order code and what is ordered besides are part of a row', () => {
  const kitchen = demoAfter().kitchen;
  const edge: Command = {
    kind: 'set-kitchen',
    kitchen: { ...kitchen, counter: { ...kitchen.counter, edge: 'bevel' } },
  };
  expect(rowIn(scheduled(demoAfter(freeze('R1'), edge)), 'CT1').revision).toBeNull();
  const extra = (quantity: number): Command => ({
    kind: 'set-extra',
    option: OPTION,
    extra: { id: 'X1', what: 'Primer', quantity, stage: 'paint' },
  });
  expect(rowIn(scheduled(demoAfter(extra(2), freeze('R1'), extra(20))), 'X1').revision).toBeNull();
  const gone = scheduled(demoAfter(extra(2), freeze('R1'), { kind: 'remove-extra', option: OPTION, id: 'X1' }));
  expect(gone.superseded).toMatchObject([{ id: 'X1', element: 'Primer' }]);
});

it('what comes after freezing makes the project no other revision, and stays when one goes back', () => {
  const after = demoAfter(
    freeze('R1'),
    approve('mark'),
    { kind: 'set-state', option: OPTION, surface: 'counter', state: 'ordered' },
    { kind: 'set-job', job: { prepared_for: 'Ann' } },
    { kind: 'set-sample', sample: { finish: 'TL-01', status: 'received', verdicts: [] } },
  );
  expect(frozenRevision(after)?.id).toBe('R1');
  const back = applyCommand(after, { kind: 'go-back-to-revision', revision: 'R1' });
  expect(back).toMatchObject({
    ok: true,
    value: { job: { prepared_for: 'Ann' }, samples: [{ finish: 'TL-01' }] },
  });
  expect(back.ok && back.value.options.find(({ id }) => id === OPTION)?.items).toMatchObject([{ item: 'BS1' }]);
  expect(frozenRevision(demoAfter(freeze('R1'), herringbone))).toBeNull();
});
