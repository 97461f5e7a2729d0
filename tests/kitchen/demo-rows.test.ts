import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { Kitchen } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';

// The places (mm) that version 2 gave this kitchen, whose picture other tests rest on: every unit stays where it was.

const rows = planRows(scene as unknown as Kitchen);
const [left, back] = rows.runs;

it('keeps the left run: end panel, end drawers, dishwasher, sink, door unit, corner filler', () => {
  expect(left!.base).toEqual({
    from: 950,
    to: 3400,
    units: [
      { kind: 'drawers', from: 950, to: 1350, handle: 'high' },
      { kind: 'dishwasher', from: 1350, to: 1950, handle: 'high' },
      { kind: 'sink', from: 1950, to: 2750, handle: 'high' },
      { kind: 'door', from: 2750, to: 3350, handle: 'low' },
    ],
    fillers: [{ from: 3350, to: 3400 }],
  });
  expect(left).toMatchObject({
    ends: { from: 'free', to: 'meets' },
    counter: { from: 910, to: 3380 },
    panels: [{ from: 930, to: 950 }],
    sink: { from: 1950, to: 2750 },
    cooktop: null,
    over: [],
    tall: [],
    splash: { from: 910, to: 4000, kind: 'upstand' },
  });
});

it('keeps the back run: cooktop between two pairs, oven and fridge, wall units into the corner', () => {
  expect(back!.base).toEqual({
    from: 0,
    to: 3360,
    units: [
      { kind: 'pair', from: 660, to: 1560, handle: 'high' },
      { kind: 'cooktop', from: 1560, to: 2460, handle: 'high' },
      { kind: 'pair', from: 2460, to: 3360, handle: 'low' },
    ],
    fillers: [{ from: 600, to: 660 }],
  });
  expect(back!.tall).toEqual([
    {
      end: 'to',
      from: 3360,
      to: 4600,
      panels: [{ from: 3360, to: 3380 }],
      units: [
        { kind: 'oven', from: 3380, to: 3980 },
        { kind: 'fridge', from: 3980, to: 4580 },
      ],
      fillers: [{ from: 4580, to: 4600 }],
    },
  ]);
  expect(back!.over).toEqual([
    {
      from: 0,
      to: 1560,
      units: [
        { kind: 'door', from: 60, to: 660, handle: 'high' },
        { kind: 'pair', from: 660, to: 1560, handle: 'high' },
      ],
      fillers: [{ from: 0, to: 60 }],
    },
    { from: 2460, to: 3360, units: [{ kind: 'pair', from: 2460, to: 3360, handle: 'low' }], fillers: [] },
  ]);
  expect(back).toMatchObject({
    ends: { from: 'owns-corner', to: 'tall' },
    counter: { from: 0, to: 3360 },
    cooktop: { from: 1560, to: 2460 },
    splash: { from: 0, to: 3360, kind: 'backsplash' },
  });
});

it('keeps the island: drawers and a pair between panels of 30 mm', () => {
  expect(rows.island).toEqual({
    panel: 30,
    row: {
      units: [
        { kind: 'drawers', from: 1800, to: 2700, handle: 'high' },
        { kind: 'pair', from: 2700, to: 3500, handle: 'high' },
      ],
      fillers: [],
    },
  });
});
