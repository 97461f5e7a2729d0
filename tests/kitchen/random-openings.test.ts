import fc from 'fast-check';
import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { buildRoom } from '../../src/kitchen/build-room';
import type { BeamChoice, Fixture } from '../../src/model/fixture';
import type { Kitchen, Opening } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { area, facing } from './geometry';
import { brokenInvariants } from './invariants';

const usual = scene as unknown as Kitchen;
const mm = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

const window = (wall: Opening['wall'], center: [number, number], sill: [number, number], height: [number, number]) =>
  fc
    .record({
      center: mm(...center),
      sill: mm(...sill),
      height: mm(...height),
      width: mm(500, 1500),
      reveal: mm(65, 400),
    })
    .chain((sizes) =>
      fc.record({ leaves: mm(1, 3), panes: mm(1, 3), facing_deg: mm(0, 40) }).map((rest) => ({ ...sizes, ...rest })),
    )
    .map((sizes): Opening => ({ id: `${wall} window ${sizes.center}`, kind: 'window', wall, ...sizes }));

const door = (wall: Opening['wall'], center: [number, number], width: [number, number], leaves: [number, number]) =>
  fc.record({ center: mm(...center), width: mm(...width), leaves: mm(...leaves), reveal: mm(65, 400) }).map(
    (sizes): Opening => ({
      id: `${wall} door`,
      kind: 'glazed-door',
      wall,
      sill: 0,
      height: 2100,
      panes: 2,
      facing_deg: 0,
      ...sizes,
    }),
  );

/** Openings where the usual kitchen leaves its walls free, each there or not. */
const openings: fc.Arbitrary<readonly Opening[]> = fc
  .tuple(
    fc.option(window('left', [2000, 2600], [1030, 1300], [300, 1000])),
    fc.option(door('left', [455, 460], [700, 760], [1, 1])),
    fc.option(door('right', [1500, 2000], [1000, 2400], [1, 2])),
    fc.option(window('front', [900, 2500], [120, 1200], [300, 1200])),
    fc.option(window('back', [900, 1600], [925, 960], [300, 410])),
    fc.option(window('back', [700, 800], [2150, 2170], [300, 320])),
  )
  .map((all) => all.filter((opening) => opening !== null));

const beam: fc.Arbitrary<BeamChoice> = fc.oneof(
  fc.constant<BeamChoice>({ kind: 'wide' }),
  mm(10, 150).map((angle_deg): BeamChoice => ({ kind: 'spread', angle_deg })),
  mm(0, 360).map((turn_deg): BeamChoice => ({ kind: 'file', beam: 'measured', turn_deg })),
);

const fixtures: fc.Arbitrary<readonly Fixture[]> = fc
  .record({
    beam,
    counts: fc.tuple(mm(1, 9), mm(1, 3), mm(1, 4)),
    pendant: fc.record({ diameter: mm(80, 400), height: mm(1300, 1900) }),
    run: fc.constantFrom<'front' | 'middle' | 'back'>('front', 'middle', 'back'),
    width: mm(8, 26),
  })
  .map(({ beam, counts, pendant, run, width }): Fixture[] => [
    { id: 'down', kind: 'downlight', group: 'ceiling', beam, count: counts[0], diameter: 90, lumens_each: 500 },
    { id: 'hung', kind: 'pendant', group: 'pendant', beam, count: counts[1], ...pendant, lumens_each: 500 },
    { id: 'hood', kind: 'hood', group: 'hood', beam, count: counts[2], diameter: 60, lumens_each: 200 },
    { id: 'under', kind: 'under-cabinet', group: 'under-cabinet', beam, run, width, lumens_per_m: 500 },
    { id: 'over', kind: 'strip', group: 'ceiling', beam, run: 'above-wall-units', width, lumens_per_m: 500 },
    { id: 'toe', kind: 'strip', group: 'under-cabinet', beam, run: 'toe-kick', width, lumens_per_m: 200 },
  ])
  .chain((all) => fc.subarray(all));

const BEAMS = [
  { id: 'measured', label: 'x', lumens: 100, vertical_deg: [0, 90], horizontal_deg: [0], candela: [[50, 0]] },
];

const kitchens = fc
  .tuple(openings, fixtures)
  .map(([openings, fixtures]): Kitchen => ({ ...usual, openings, fixtures }))
  .filter((kitchen) => kitchenMisfits(kitchen).length === 0);

it('is closed and whole with windows, glazed doors and lamps of every kind, or with none', () => {
  fc.assert(
    fc.property(kitchens, (kitchen) => {
      expect(brokenInvariants(kitchen, 50, BEAMS)).toEqual([]);
      const { light } = buildRoom(kitchen, BEAMS);
      expect(light.windows).toHaveLength(kitchen.openings.reduce((sum, { leaves }) => sum + leaves, 0));
      const faces = [...light.lamps, ...light.windows].map(({ rect }) => rect);
      const inLevel = (rects: readonly (typeof light.coarse)[number][]): number =>
        rects.filter((rect) => rect.surface === -1).reduce((sum, rect) => sum + area(rect), 0);
      // Pendants have a black body besides their face; nothing else is black.
      const shine = faces.reduce((sum, rect) => sum + area(rect), 0);
      const bodies = light.lamps.length > 0 && kitchen.fixtures.some(({ kind }) => kind === 'pendant');
      if (bodies) expect(inLevel(light.coarse)).toBeGreaterThan(shine);
      else expect(inLevel(light.coarse)).toBeCloseTo(shine, 9);
      expect(inLevel(light.fine)).toBeCloseTo(inLevel(light.coarse), 9);
    }),
    { numRuns: 16, examples: [[{ ...usual, openings: [], fixtures: [] }]] },
  );
});

it('turns every glass towards the room', () => {
  const one = (wall: Opening['wall']): Opening => ({ ...usual.openings[0]!, id: wall, wall, width: 900, leaves: 1 });
  const { windows } = buildRoom({ ...usual, openings: (['left', 'right', 'front', 'back'] as const).map(one) }).light;
  expect(windows.map(({ rect }) => facing(rect))).toEqual([
    { axis: 0, sign: 1 },
    { axis: 0, sign: -1 },
    { axis: 1, sign: 1 },
    { axis: 1, sign: -1 },
  ]);
});

it('gives a strip its lumens per metre, and a file its turn from the length of the lamp', () => {
  const strip: Fixture = {
    id: 'toe',
    kind: 'strip',
    group: 'under-cabinet',
    beam: { kind: 'file', beam: 'measured', turn_deg: 0 },
    run: 'toe-kick',
    width: 20,
    lumens_per_m: 200,
  };
  const { lamps } = buildRoom({ ...usual, fixtures: [strip] }, BEAMS).light;
  for (const { lumens, rect, beam } of lamps) {
    const [u, v] = [Math.hypot(...rect.u), Math.hypot(...rect.v)];
    expect(lumens).toBeCloseTo(200 * Math.max(u, v), 9);
    expect(beam).toMatchObject({ kind: 'web', turn_deg: u > v ? 0 : 90 });
  }
  expect(lamps).toHaveLength(2);
});
