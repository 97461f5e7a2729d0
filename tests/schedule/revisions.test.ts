import { expect, it } from 'vitest';
import type { Command } from '../../src/model/commands';
import { demoAfter, OPTION, rowIn, scheduled } from './schedule';

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
