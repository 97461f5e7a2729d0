import { describe, expect, it } from 'vitest';
import type { Command } from '../../src/model/commands';
import { NO_FINISH } from '../../src/model/empty-surface';
import { codes, demoAfter, finishOf, OPTION, rowIn, scheduled } from './schedule';

const demo = demoAfter();

describe('items of the demo', () => {
  const schedule = scheduled(demo);

  // Common practice, no source: floor, cabinets, counter from its template, backsplash, fittings, final paint.
  it('stand in the order of installing, each under the tag of its first surface', () => {
    expect(schedule.rows.map(({ id, surfaces }) => [id, surfaces.join(' ')])).toEqual([
      ['FL1', 'floor'],
      ['FL1G', 'floor'],
      ['FR1', 'base-fronts wall-fronts tall-fronts island-fronts plinth'],
      ['HW1', 'hardware'],
      ['CT1', 'counter island-counter upstand'],
      ['SK1', 'sink'],
      ['BS1', 'backsplash'],
      ['BS1G', 'backsplash'],
      ['TP1', 'tap'],
      ['AP1', 'appliance'],
      ['WL1', 'wall'],
      ['CL1', 'ceiling frame'],
    ]);
  });

  it('say what stays, and order nothing for it', () => {
    const floor = rowIn(schedule, 'FL1');
    expect([floor.state, floor.quantity, floor.order_by, codes(floor)]).toEqual(['fixed', null, null, []]);
  });

  it('carry color, LRV, sheen, size, laying and supply', () => {
    expect(rowIn(schedule, 'BS1')).toMatchObject({
      item: 'Neutral white tile, gloss glaze, TL-01',
      class: 'glazed',
      size_mm: [200, 100],
      layout: 'running-bond',
      start: 'centered',
      direction_deg: 0,
      joint_mm: 2,
      grout: 'GR-01',
      supplier: 'Demo supplier B',
      code: 'DEMO-TL-01',
      lead_time_weeks: 2,
    });
    const [color] = rowIn(schedule, 'CT1').colors;
    expect(color).toMatchObject({ role: 'base', provenance: 'declared' });
    expect(color!.given).toMatch(/^L\* [\d.]+, a\* .+ \(D65, 2°\)$/);
    expect(rowIn(schedule, 'CT1')).toMatchObject({ edge: 'eased', thickness_mm: 30, gloss_gu: 30 });
  });

  it('apart where they differ in finish, stay or are ordered', () => {
    const apart = scheduled(
      demoAfter(
        { kind: 'lay-finish', option: OPTION, surface: 'island-counter', finish: 'ST-03' },
        { kind: 'set-state', option: OPTION, surface: 'wall-fronts', state: 'ordered' },
        { kind: 'set-state', option: OPTION, surface: 'plinth', state: 'fixed' },
      ),
    );
    expect(rowIn(apart, 'CT1').surfaces).toEqual(['counter', 'upstand']);
    expect(rowIn(apart, 'CT2')).toMatchObject({ finish: 'ST-03', surfaces: ['island-counter'] });
    expect(rowIn(apart, 'FR2')).toMatchObject({ state: 'ordered', surfaces: ['wall-fronts'] });
    expect(rowIn(apart, 'FR1').surfaces).toEqual(['base-fronts', 'tall-fronts', 'island-fronts']);
  });

  // A tag must not come and go with every decision: drawings and samples bear it.
  it('one for as long as some of it is open, and say which', () => {
    const half = scheduled(demoAfter({ kind: 'set-state', option: OPTION, surface: 'wall-fronts', state: 'decided' }));
    expect(half.rows.map(({ id }) => id)).toEqual(schedule.rows.map(({ id }) => id));
    const fronts = rowIn(half, 'FR1');
    expect([fronts.state, codes(fronts)]).toEqual(['open', ['partly-open', 'no-price']]);
    expect(fronts.problems[0]!.text).toBe('Still open: base fronts, tall fronts, island fronts and toe kick.');
  });
});

describe('what is missing is said in the row, and nothing is invented', () => {
  const edited = (finish: string, changes: object) => scheduled(demoAfter({ kind: 'edit-finish', finish, changes }));

  it('no finish', () => {
    const schedule = scheduled(
      demoAfter({ kind: 'lay-finish', option: OPTION, surface: 'backsplash', finish: NO_FINISH.id }),
    );
    const row = rowIn(schedule, 'BS1');
    expect([row.item, row.finish, row.quantity, row.total]).toEqual(['', null, null, null]);
    expect(codes(row)).toEqual(['no-finish']);
  });

  it('no lead time, no price, no pack', () => {
    const row = rowIn(edited('TL-01', { supply: { supplier: 'Demo supplier B' } }), 'BS1');
    expect(codes(row)).toEqual(['no-pack', 'no-price', 'no-lead-time']);
    expect(row).toMatchObject({ lead_time_weeks: null, order_by: null, total: null, unit_price: null });
    expect(row.quantity!.order).toMatchObject({ packs: null, pack: null, measure: 'piece' });
  });

  it('a price for something the order cannot be told in', () => {
    const supply = { unit: 'box of 1 m2', pack: 1, price: { amount: 3, currency: 'EUR', per: 'kg' } };
    expect(codes(rowIn(edited('TL-01', { supply }), 'BS1'))).toContain('price-for-other-unit');
  });

  it('a slab smaller than the shortest piece asks for another, and gives no count', () => {
    const row = rowIn(edited('EN-01', { slab_mm: [700, 500] }), 'CT1');
    expect(codes(row)).toContain('slab-too-small');
    expect([row.quantity, row.total]).toEqual([null, null]);
  });

  it('a surface that measures nothing', () => {
    const bare = {
      ...demo,
      kitchen: { ...demo.kitchen, upstand_height: 0 },
      library: demo.library,
    };
    const laid = scheduled(
      demoAfter(
        { kind: 'set-kitchen', kitchen: bare.kitchen },
        { kind: 'lay-finish', option: OPTION, surface: 'upstand', finish: 'ST-03' },
      ),
    );
    const row = laid.rows.find(({ surfaces }) => surfaces.includes('upstand'));
    // Either it is no surface of this kitchen any more, or its row says that there is nothing to cover.
    expect(row === undefined || codes(row).includes('measures-nothing')).toBe(true);
  });

  it('a finish of which no slab and no sheet size is known is told by its area', () => {
    const laid = scheduled(demoAfter({ kind: 'lay-finish', option: OPTION, surface: 'counter', finish: 'LM-01' }));
    const row = rowIn(laid, 'CT1');
    expect(row.quantity!.area_m2).toBeGreaterThan(3);
    expect(row.quantity!.order.packs).toBeNull();
    expect(codes(row)).toContain('no-pack');
  });
});

describe('what one says of an item', () => {
  it('counts as long as it has that finish', () => {
    const record = { item: 'BS1', finish: 'TL-01', waste_percent: 50, lead_time_weeks: 9, note: 'Start at the window' };
    const said = demoAfter({ kind: 'set-item', option: OPTION, record });
    expect(rowIn(scheduled(said), 'BS1')).toMatchObject({
      lead_time_weeks: 9,
      note: 'Start at the window',
      quantity: { waste_percent: 50 },
    });
    const other = demoAfter(
      { kind: 'set-item', option: OPTION, record },
      { kind: 'lay-finish', option: OPTION, surface: 'backsplash', finish: 'TL-02' },
    );
    expect(rowIn(scheduled(other), 'BS1')).toMatchObject({ lead_time_weeks: 2, note: null });
  });

  it('a price makes a total of whole packs', () => {
    const tile = finishOf(demo, 'TL-01');
    const supply = { ...tile.supply, price: { amount: 30, currency: 'EUR', per: 'pack' as const } };
    const row = rowIn(scheduled(demoAfter({ kind: 'edit-finish', finish: 'TL-01', changes: { supply } })), 'BS1');
    expect(row.total).toEqual({ amount: 30 * row.quantity!.order.packs!, currency: 'EUR' });
  });

  it('something no surface shows stands behind the items it is put in with', () => {
    const extra = { id: 'X1', what: 'Underlay', stage: 'floor' } as const;
    const later = { id: 'X2', what: 'Clips', stage: 'cabinets' } as const;
    const { rows } = scheduled(
      demoAfter({ kind: 'set-extra', option: OPTION, extra: later }, { kind: 'set-extra', option: OPTION, extra }),
    );
    expect(rows.slice(0, 6).map(({ id }) => id)).toEqual(['FL1', 'FL1G', 'X1', 'FR1', 'HW1', 'X2']);
  });

  it('something no surface shows stands last where it comes with the paint, as it was written', () => {
    const extra = {
      id: 'X1',
      what: 'Primer',
      quantity: 2,
      unit: 'can',
      stage: 'paint',
      price: { amount: 20 },
    } as const;
    const { rows } = scheduled(demoAfter({ kind: 'set-extra', option: OPTION, extra }));
    expect(rows.at(-1)).toMatchObject({
      id: 'X1',
      element: 'Primer',
      written: { amount: 2, unit: 'can' },
      total: { amount: 40, currency: null },
    });
  });
});

describe('veins at seams', () => {
  const counter = (...more: readonly Command[]) => rowIn(scheduled(demoAfter(...more)), 'CT1');
  const EVERY = { kind: 'set-assumptions', assumptions: { match_seams: true } } as const;

  it('that do not match on the fewest slabs are to settle, with what matching takes', () => {
    const row = counter();
    const { matching } = row.quantity!.slabs!;
    expect(matching).toMatchObject({ match: 'bookmatch', isKept: false, fewest: 2 });
    const { text } = row.problems.find(({ code }) => code === 'seams-unmatched')!;
    expect(text).toContain(`no way was found to cut 2 slabs so. ${matching!.slabs} slabs can.`);
  });

  it('match where that is wanted, on slabs of which every second one is mirrored, and that is what is ordered', () => {
    const row = counter(EVERY);
    const slabs = row.quantity!.slabs!;
    expect(codes(row)).not.toContain('seams-unmatched');
    expect(slabs.slabs.map(({ mirrored }) => mirrored)).toEqual(slabs.slabs.map((_, i) => i % 2 === 1));
    expect(row.quantity!.order.packs).toBe(slabs.matching!.slabs);
    expect(row.quantity!.rests_on.join(' ')).toMatch(/mirrored like an open book.* 2 would do/);
  });

  it('of what is ordered later go by the counter of the same finish all the same', () => {
    const open = (finish: string) =>
      rowIn(
        scheduled(
          demoAfter(
            { kind: 'lay-finish', option: OPTION, surface: 'upstand', finish },
            { kind: 'set-state', option: OPTION, surface: 'counter', state: 'ordered' },
            { kind: 'set-state', option: OPTION, surface: 'island-counter', state: 'ordered' },
          ),
        ),
        'CT3',
      ).quantity!.slabs!.seams;
    // The upstand of 3082 mm goes over the corner, where the counter of 2470 begins; of another stone it is seamed by itself.
    expect(open('EN-01')).toEqual([{ piece: 'upstand strip 1', at_mm: 2470 }]);
    expect(open('ST-03')).not.toEqual([{ piece: 'upstand strip 1', at_mm: 2470 }]);
  });

  it('do not matter where a finish shows no figure', () => {
    const row = counter({ kind: 'edit-finish', finish: 'EN-01', changes: { pattern: { kind: 'plain' } } });
    expect(row.quantity!.slabs).toMatchObject({ matching: null });
    expect(row.quantity!.slabs!.slabs.some(({ mirrored }) => mirrored)).toBe(false);
  });
});

describe('deliveries and orders', () => {
  const said = (more: object) =>
    rowIn(
      scheduled(demoAfter({ kind: 'set-item', option: OPTION, record: { item: 'CT1', finish: 'EN-01', ...more } })),
      'CT1',
    );
  const came = { on: '2026-06-30', outcome: 'accepted' } as const;

  it('of another batch than agreed are told in the row; what nobody wrote down is not held against anything', () => {
    const row = said({ lot: { batch: 'B1', shade: 'S1' }, delivery: { ...came, batch: 'B2' } });
    expect(row.problems.find(({ code }) => code === 'delivery-differs')!.text).toBe('Batch: agreed B1, came B2.');
    expect(codes(said({ lot: { batch: 'B1' }, delivery: { ...came, batch: ' B1 ' } }))).not.toContain(
      'delivery-differs',
    );
    expect(codes(said({ lot: { batch: 'B1' }, delivery: came }))).not.toContain('delivery-differs');
    expect(codes(said({ delivery: { ...came, outcome: 'rejected' } }))).toContain('delivery-rejected');
  });

  it('without a day ask for it', () => {
    const ordered = (...more: readonly Command[]) =>
      scheduled(demoAfter({ kind: 'set-state', option: OPTION, surface: 'backsplash', state: 'ordered' }, ...more));
    expect(codes(rowIn(ordered(), 'BS1'))).toContain('no-order-date');
    const record = { item: 'BS1', finish: 'TL-01', ordered_on: '2026-05-04' };
    expect(codes(rowIn(ordered({ kind: 'set-item', option: OPTION, record }), 'BS1'))).not.toContain('no-order-date');
  });
});

describe('what is sold in another measure than it is counted in', () => {
  const edited = (finish: string, changes: object) => scheduled(demoAfter({ kind: 'edit-finish', finish, changes }));

  it('slabs stay slabs, whatever their price or pack is told in', () => {
    const supply = { unit: 'm2', pack: 1, price: { amount: 300, per: 'slab' as const } };
    const row = rowIn(edited('EN-01', { supply }), 'CT1');
    expect(row.quantity!.order).toMatchObject({ quantity: 2, measure: 'slab', packs: 2 });
    expect(row.total).toEqual({ amount: 600, currency: null });
  });

  // Trade worked case, by hand: area times waste, joints included, as for floors by the carton.
  it('tiles sold by area are ordered by the area they cover', () => {
    const row = rowIn(edited('TL-01', { piece_mm: [50, 50] }), 'BS1');
    const { area_m2, order } = row.quantity!;
    expect(order.quantity).toBeCloseTo(area_m2 * 1.1, 9);
    expect(order.measure).toBe('m2');
  });

  it('tiles sold by the box of so many are ordered by pieces', () => {
    const row = rowIn(edited('TL-01', { supply: { unit: 'box of 25', pack: 25 } }), 'BS1');
    // 1.815 m2 by a module of 0.202 x 0.102 m is 88.09; a tenth more and rounded up: 97, in boxes of 25: 4, and one for repairs.
    expect(row.quantity!.net).toBeCloseTo(88.09, 2);
    expect(row.quantity!.order).toMatchObject({ quantity: 97, packs: 5, spares: 1 });
  });

  it('one tile laid in two ways is two items, each with its own waste', () => {
    const laying = { layout: 'herringbone', joint_mm: 2, grout: 'GR-01' } as const;
    const schedule = scheduled(
      demoAfter({ kind: 'lay-finish', option: OPTION, surface: 'wall', finish: 'TL-01', laying }),
    );
    expect(rowIn(schedule, 'BS1').quantity!.waste_percent).toBe(10);
    expect(rowIn(schedule, 'WL1')).toMatchObject({ layout: 'herringbone', quantity: { waste_percent: 20 } });
  });
});
