import { describe, expect, it } from 'vitest';
import { panelSizeOf } from '../../src/model/panel';
import type { Finish } from '../../src/model/project';
import { codes, demoAfter, finishOf, OPTION, rowIn, scheduled } from './schedule';

const lay = (finish: string) =>
  (['counter', 'island-counter'] as const).map(
    (surface) => ({ kind: 'lay-finish', option: OPTION, surface, finish }) as const,
  );
const edit = (finish: string, changes: Partial<Finish>) => ({ kind: 'edit-finish', finish, changes }) as const;
const rowOf = (finish: string, changes: Partial<Finish>) =>
  rowIn(scheduled(demoAfter(edit(finish, changes), ...lay(finish))), 'CT1');

describe('a counter of wood', () => {
  it('of panels that nobody knows the size of is told by its area, and that this is no order', () => {
    for (const finish of ['WD-01', 'WD-02']) {
      const row = rowOf(finish, {});
      expect(codes(row)).toContain('no-panel-size');
      expect(row.quantity).toMatchObject({ slabs: null, net_measure: 'm2' });
    }
  });

  // By hand: legs of 3360 and 2470 by 620 mm and an island of 1800 x 900 from panels of 4000 x 920 mm, saw cuts 3 mm. None fits beside
  // another across (620 + 3 + 620 > 920), and along none of two: three panels, no seam. The upstand, 3082 x 100, is cut beside a leg. 3.36 x 0.62 + 2.47 x 0.62
  // + 1.8 x 0.9 + 3.082 x 0.1 = 5.5428 m2 of 11.04 m2 is 50.2 %.
  it('is cut from panels, its grain along them, none turned, none mirrored, nothing trimmed', () => {
    const row = rowOf('WD-02', { slab_mm: [4000, 920] });
    expect(row.quantity!.order).toMatchObject({ quantity: 3, measure: 'panel', packs: 3 });
    expect(row.size_mm).toEqual([4000, 920]);
    const slabs = row.quantity!.slabs!;
    expect(slabs).toMatchObject({ noun: 'panel', seams: [], slab_mm: [4000, 920] });
    expect(100 * slabs.yield).toBeCloseTo(50.2, 1);
    for (const { parts, mirrored } of slabs.slabs) {
      expect(mirrored).toBe(false);
      expect(parts.every(({ turned, y_mm, piece }) => !turned && (y_mm === 0 || piece.startsWith('upstand')))).toBe(
        true,
      );
    }
    expect(row.quantity!.rests_on.join(' ')).not.toMatch(/slab/i);
    expect(codes(row)).not.toContain('no-panel-size');
  });

  it('of panels too narrow says so', () => {
    const row = rowOf('WD-02', { slab_mm: [4000, 600] });
    expect(row.quantity).toBeNull();
    const { text } = row.problems.find(({ code }) => code === 'slab-too-small')!;
    expect(text).toBe(
      'The counter on the back wall is 620 mm wide, and the panel gives 600 mm. Ask for a larger panel, or for one glued up to size.',
    );
  });

  it('costs so much a panel, a piece, or a square meter', () => {
    const supply = (per?: 'piece' | 'm2') => ({
      unit: 'panel of 4000 x 920 x 40 mm',
      price: { amount: 200, ...(per && { per }) },
    });
    expect(rowOf('WD-02', { supply: supply() }).total).toEqual({ amount: 600, currency: null });
    expect(rowOf('WD-02', { supply: supply('piece') }).total!.amount).toBe(600);
    expect(rowOf('WD-02', { supply: supply('m2') }).total!.amount).toBeCloseTo(3 * 4 * 0.92 * 200, 6);
  });
});

it('reads the size of a panel from what a finish says, and takes no board for one', () => {
  const wood = finishOf(demoAfter(), 'WD-02');
  expect(panelSizeOf(wood)).toBeNull();
  expect(panelSizeOf({ ...wood, slab_mm: [620, 3000] })).toEqual([3000, 620]);
  expect(panelSizeOf({ ...wood, piece_mm: [650, 2400] })).toEqual([2400, 650]);
  expect(panelSizeOf({ ...wood, piece_mm: [120, 1200] })).toBeNull();
  const sold = (unit: string) => panelSizeOf({ ...wood, supply: { unit } });
  expect(sold('panel 2400 × 620 mm')).toEqual([2400, 620]);
  expect(sold('96 x 25 in')).toEqual([96 * 25.4, 25 * 25.4]);
  expect(sold('2.4 m x 0.62 m')).toEqual([2400, 620]);
  expect(sold('box of 120 x 1200 mm')).toBeNull();
  expect(sold('m2')).toBeNull();
  expect(panelSizeOf(finishOf(demoAfter(), 'WD-01'))).toBeNull();
  expect(panelSizeOf({ ...finishOf(demoAfter(), 'EN-01'), slab_mm: [3000, 1400] })).toBeNull();
});
