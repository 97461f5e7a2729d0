import { describe, expect, it } from 'vitest';
import { stageDays } from '../../src/model/order/stage-days';
import { codes, demoAfter, OPTION, rowIn, scheduled } from './schedule';

// Worked by hand on a calendar: 1 June 2026 is a Monday.
const START = '2026-06-01';

describe('stages', () => {
  it('follow one another; the counter comes its lead time demoAfter the template', () => {
    expect(stageDays({ starts_on: START }, 3)).toEqual({
      floor: '2026-06-01',
      cabinets: '2026-06-05',
      template: '2026-06-09',
      counter: '2026-06-30',
      backsplash: '2026-07-01',
      fittings: '2026-07-04',
      paint: '2026-07-05',
    });
  });

  it('take the days one says, also against a lead time', () => {
    const own = stageDays({ starts_on: START, stage_days: { floor: 0, template: 10 } }, 3)!;
    expect([own.cabinets, own.template, own.counter]).toEqual(['2026-06-01', '2026-06-05', '2026-06-15']);
  });

  it('are not known without a first day', () => expect(stageDays({}, 3)).toBeNull());
});

describe('dates of items', () => {
  const schedule = scheduled(demoAfter({ kind: 'set-job', job: { starts_on: START } }));

  it('are the need less lead time and margin', () => {
    // The floor stays, so cabinets begin on the first day. Tile: needed 27 June, two weeks, and one week of margin.
    expect(rowIn(schedule, 'BS1')).toMatchObject({ needed_on: '2026-06-27', order_by: '2026-06-06' });
    // Paint: half a week is four days.
    expect(rowIn(schedule, 'WL1')).toMatchObject({ needed_on: '2026-07-01', order_by: '2026-06-20' });
  });

  it('of what is cut to the template: slabs are reserved by then', () => {
    expect(rowIn(schedule, 'CT1')).toMatchObject({ needed_on: '2026-06-26', order_by: '2026-05-29' });
  });

  // Common practice, no source: sink, faucet and cooktop are there when the counter is measured, 5 June, which is cut to them.
  it('of sink, faucet and cooktop are those of the template, where there is one', () => {
    for (const id of ['SK1', 'TP1', 'AP1']) {
      expect(rowIn(schedule, id)).toMatchObject({ needed_on: '2026-06-05', order_by: '2026-05-15' });
    }
    const stays = (['counter', 'island-counter', 'upstand'] as const).map(
      (surface) => ({ kind: 'set-state', option: OPTION, surface, state: 'fixed' }) as const,
    );
    const kept = scheduled(demoAfter({ kind: 'set-job', job: { starts_on: START } }, ...stays));
    // Cabinets four days, the sink one, the backsplash three.
    expect(rowIn(kept, 'TP1').needed_on).toBe('2026-06-09');
  });

  it('give way to a day of one’s own, and to the order itself', () => {
    const set = (more: object) =>
      scheduled(
        demoAfter(
          { kind: 'set-job', job: { starts_on: START, margin_days: 0 } },
          { kind: 'set-item', option: OPTION, record: { item: 'BS1', finish: 'TL-01', ...more } },
        ),
      );
    expect(rowIn(set({ needed_on: '2026-08-15' }), 'BS1').order_by).toBe('2026-08-01');
    expect(rowIn(set({ ordered_on: '2026-06-02' }), 'BS1')).toMatchObject({ order_by: null, ordered_on: '2026-06-02' });
  });

  it('are told where they have passed, and only where one says what day it is', () => {
    const job = { kind: 'set-job', job: { starts_on: START } } as const;
    expect(codes(rowIn(scheduled(demoAfter(job), '2026-06-07'), 'BS1'))).toContain('order-by-passed');
    expect(codes(rowIn(scheduled(demoAfter(job), '2026-06-06'), 'BS1'))).not.toContain('order-by-passed');
    expect(codes(rowIn(scheduled(demoAfter(job)), 'BS1'))).not.toContain('order-by-passed');
  });

  it('leave time for a floor that is laid, and for none that stays', () => {
    const laid = scheduled(
      demoAfter(
        { kind: 'set-job', job: { starts_on: START } },
        { kind: 'set-state', option: OPTION, surface: 'floor', state: 'decided' },
      ),
    );
    expect(rowIn(laid, 'FR1').needed_on).toBe('2026-06-05');
    expect(rowIn(schedule, 'FR1').needed_on).toBe(START);
  });

  it('without a first day are none, which is said once', () => {
    const none = scheduled(demoAfter());
    expect(none.problems.map(({ code }) => code)).toEqual(['no-start-day']);
    expect(none.rows.every(({ order_by, needed_on }) => order_by === null && needed_on === null)).toBe(true);
    expect(schedule.problems).toEqual([]);
  });
});
