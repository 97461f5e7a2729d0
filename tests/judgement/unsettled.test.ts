import { describe, expect, it } from 'vitest';
import { judge } from '../../src/engine/judge/judge';
import { unsettled } from '../../src/engine/judge/unsettled';
import type { SurfaceId } from '../../src/engine/surface';
import { type Row, relaid, scheme } from './schemes';

const assessed = (rows: readonly Row[]) => judge(scheme(rows));

// A counter of three unrelated kinds is changed under a tile that was decided beside it. Verdicts: whites.test, and opposed
// leans by the rule for undertones.
describe.each([
  ['engineered stone to natural, under a glazed tile', 'EN-01', 'ST-02', 'TL-01', 'white-looks-dirty'],
  ['white tile to a yellowish one, under a cool paint', 'TL-03', 'TL-02', 'PT-04', 'too-yellow'],
  ['white laminate to an olive one, under a bluish gray paint', 'LM-01', 'LM-02', 'PT-16', 'undertones-pull-apart'],
] as const)('%s', (_, first, then, beside, code) => {
  const rows: Row[] = [
    ['counter', first, 25],
    ['floor', 'WD-03', 25],
    ['backsplash', beside, 50],
  ];
  const before = assessed(rows);
  const after = assessed(relaid(rows, { counter: then }));

  it('unsettles the tile, with the reason', () => {
    const found = unsettled(before, after, ['counter'], ['backsplash']);
    expect(found.map(({ surface }) => surface)).toEqual(['backsplash']);
    expect(found[0]!.warnings.map((warning) => warning.code)).toContain(code);
    for (const { text } of found[0]!.warnings) expect(text).toMatch(/counter/i);
  });

  it('unsettles nothing that is still open', () => {
    expect(unsettled(before, after, ['counter'], [])).toEqual([]);
  });

  it('is no news where it was so before, nor the way back', () => {
    expect(unsettled(after, after, ['counter'], ['backsplash'])).toEqual([]);
    expect(unsettled(after, before, ['counter'], ['backsplash'])).toEqual([]);
  });

  it('does not depend on the order of surfaces', () => {
    const turned = assessed([...relaid(rows, { counter: then })].reverse());
    expect(unsettled(before, turned, ['counter'], ['backsplash'])).toEqual(
      unsettled(before, after, ['counter'], ['backsplash']),
    );
  });
});

describe('a floor changed under fronts', () => {
  const rows: Row[] = [
    ['counter', 'EN-01', 20],
    ['floor', 'WD-01', 30],
    ['base-fronts', 'PT-01', 50],
  ];
  const settled: SurfaceId[] = ['base-fronts'];

  it('makes an edge that is hard to see', () => {
    const found = unsettled(assessed(rows), assessed(relaid(rows, { floor: 'ST-01' })), ['floor'], settled);
    expect(found.map(({ warnings }) => warnings.map(({ code }) => code))).toEqual([['weak-edge']]);
  });

  it('says nothing of a floor that is as easy to tell', () => {
    expect(unsettled(assessed(rows), assessed(relaid(rows, { floor: 'WD-02' })), ['floor'], settled)).toEqual([]);
  });
});

it('does not charge a change with what stands between two others', () => {
  const rows: Row[] = [
    ['counter', 'EN-01', 25],
    ['floor', 'WD-03', 25],
    ['backsplash', 'TL-01', 25],
    ['wall', 'TL-01', 25],
  ];
  const after = assessed(relaid(rows, { wall: 'TL-02' }));
  const before = assessed(rows);
  expect(unsettled(before, after, ['floor'], ['backsplash', 'wall'])).toEqual([]);
  expect(unsettled(before, after, ['wall'], ['backsplash']).length).toBe(1);
});
