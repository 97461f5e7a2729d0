import { describe, expect, it } from 'vitest';
import { bowmanSapolinski, edgeSeverity, weakEdges } from '../../src/engine/judge/edges';
import { judge } from '../../src/engine/judge/judge';
import { edgesWorsened } from '../../src/engine/judge/repairs/edges-worsened';
import { type Row, scheme } from './schemes';

describe('Bowman-Sapolinski contrast', () => {
  // Guidance to AS 1428.1 prints LRV 20 against 7 and against 41 as about 30 percent.
  it.each([
    [20, 7, 31.3],
    [20, 41, 30.5],
    [73.1, 7.1, 78],
    [9.5, 7.1, 7],
    [46.7, 7.1, 63],
    [12.5, 45.2, 49],
    [60.3, 13.8, 59],
    [83, 73.1, 7],
  ])('%d against %d is %d %%', (y1, y2, expected) => {
    expect(Math.abs(bowmanSapolinski(y1, y2) - expected)).toBeLessThan(0.55);
    expect(bowmanSapolinski(y2, y1)).toBe(bowmanSapolinski(y1, y2));
  });
});

it('grades the difference by 20 and 30 points (BS 8300-2, as quoted)', () => {
  const from40 = [19.9, 20, 29.9, 30].map((points) => edgeSeverity(40, 40 + points));
  expect(from40).toEqual(['visible', 'note', 'note', null]);
});

// LRV is CIE Y of the 10 degree observer; the expected differences were computed for 2 degrees, so 2 points of play.
const kitchen = (ids: { fronts: string; floor: string; counter?: string }): Row[] => [
  ['counter', ids.counter ?? 'EN-01', 10],
  ['floor', ids.floor, 20],
  ['base-fronts', ids.fronts, 40],
  ['plinth', ids.fronts, 1],
  ['wall', 'PT-02', 29],
];

describe('weak edges of kitchens', () => {
  it.each([
    ['slate, blue-green', { fronts: 'PT-01', floor: 'ST-01' }, 'floor', 2.8, 'visible'],
    ['red floor, blue-green', { fronts: 'PT-01', floor: 'TL-07' }, 'floor', 5, 'visible'],
    ['birch floor, green-gray', { fronts: 'PT-14', floor: 'WD-01' }, 'floor', 0.5, 'visible'],
    ['slate, beech', { fronts: 'WD-07', floor: 'ST-01' }, 'floor', 27.6, 'note'],
    ['slate, beech', { fronts: 'WD-07', floor: 'ST-01' }, 'counter', 28.7, 'note'],
    // 19.2 for 2 degrees, just past 20 for 10 degrees: the observer decides here.
    ['slate, birch veneer', { fronts: 'WD-02', floor: 'ST-01' }, 'counter', 20.1, 'note'],
  ] as const)('%s fronts: %s edge', (_, ids, surface, difference, severity) => {
    const edge = weakEdges(scheme(kitchen(ids))).find((e) => e.first.includes(surface))!;
    expect(Math.abs(edge.difference - difference)).toBeLessThan(2);
    expect(edge.severity).toBe(severity);
  });

  it('finds nothing weak in blue-green fronts on birch under the pale counter', () => {
    expect(
      weakEdges(scheme(kitchen({ fronts: 'PT-01', floor: 'WD-01' }))).filter((e) => e.second[0] !== 'wall'),
    ).toEqual([]);
  });

  it('makes one finding of fronts and toe kick in one finish, and none where one finish runs on', () => {
    const found = weakEdges(scheme(kitchen({ fronts: 'PT-01', floor: 'ST-01' })));
    expect(found.filter((e) => e.first.includes('floor') && e.second.includes('base-fronts'))).toHaveLength(1);
    expect(found[0]!.second).toEqual(['base-fronts', 'plinth']);
    const waterfall: Row[] = [
      ['island-counter', 'EN-01', 10],
      ['island-fronts', 'EN-01', 10],
    ];
    expect(weakEdges(scheme(waterfall))).toEqual([]);
    expect(weakEdges({ ...scheme(waterfall), lowVision: true })).toMatchObject([{ difference: 0, severity: 'grave' }]);
  });

  it('says where an edge that was weak gets weaker, by a point or more', () => {
    const of = (floor: string) => weakEdges(scheme(kitchen({ fronts: 'PT-01', floor })));
    expect(edgesWorsened(of('TL-07'), of('ST-01'))).toEqual([
      expect.stringMatching(/^The edge between the floor and /),
    ]);
    expect(edgesWorsened(of('ST-01'), of('TL-07'))).toEqual([]);
    expect(edgesWorsened(of('WD-01'), of('ST-01'))).toEqual([]);
  });

  it('names the surfaces and the points in words', () => {
    const warning = judge(scheme(kitchen({ fronts: 'PT-01', floor: 'ST-01' }))).warnings.find(
      (w) => w.code === 'weak-edge',
    )!;
    expect(warning.text).toContain('the floor and the base fronts');
    expect(warning.why).toContain('Bowman-Sapolinski');
    expect(warning.why).toContain('10 degree');
    expect(warning.why).toContain('BS 8300-2, written for buildings other than homes, wants 30');
    expect(warning.why).toContain('applied here by our judgment');
  });
});
