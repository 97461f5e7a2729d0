import { describe, expect, it } from 'vitest';
import type { Severity, Warning, WarningCode } from '../../src/engine/judge/assessment';
import { compareFindings } from '../../src/engine/judge/repairs/compare-findings';
import type { SurfaceId } from '../../src/engine/surface';

// What counts as cleared, softened and raised (our judgment): by code and surfaces, whatever the words.

const warning = (code: WarningCode, severity: Severity, ...surfaces: SurfaceId[]): Warning => ({
  code,
  severity,
  surfaces,
  text: `${code} ${surfaces}`,
  why: '',
  basis: 'sample',
  holds_in: null,
});

const counted = (before: Warning[], after: Warning[]) => {
  const { cleared, softened, added, addedNotes } = compareFindings(before, after);
  return [cleared.length, softened.length, added.length, addedNotes.length];
};

describe('findings before and after a change', () => {
  const pair = warning('too-yellow', 'grave', 'counter', 'backsplash', 'wall');

  it('is cleared once nothing of it is left, and neither cleared nor new while a part is', () => {
    expect(counted([pair], [])).toEqual([1, 0, 0, 0]);
    expect(counted([pair], [warning('too-yellow', 'grave', 'counter', 'wall')])).toEqual([0, 0, 0, 0]);
    expect(counted([pair], [warning('too-yellow', 'note', 'counter', 'wall')])).toEqual([0, 1, 0, 0]);
  });

  it('is new between other surfaces, or when it gets worse', () => {
    expect(counted([pair], [warning('too-yellow', 'visible', 'counter', 'frame')])).toEqual([1, 0, 1, 0]);
    const edge = warning('weak-edge', 'note', 'floor', 'base-fronts');
    expect(counted([edge], [{ ...edge, severity: 'visible' }])).toEqual([0, 0, 1, 0]);
    expect(counted([pair], [pair, edge])).toEqual([0, 0, 0, 1]);
  });

  it('is of the whole scheme where balance lacks something, whichever surfaces carry it', () => {
    const lack = warning('lacks-warm', 'visible', 'floor', 'base-fronts');
    expect(counted([lack], [warning('lacks-warm', 'visible', 'wall')])).toEqual([0, 0, 0, 0]);
  });

  it('is told surface by surface of a tint, however surfaces are put together in words', () => {
    const both = warning('tinted-by-bounce', 'visible', 'wall', 'ceiling');
    const apart = [warning('tinted-by-bounce', 'visible', 'wall'), warning('tinted-by-bounce', 'note', 'ceiling')];
    expect(counted([both], apart)).toEqual([0, 0, 0, 0]);
    expect(counted(apart, [{ ...both, severity: 'note' }])).toEqual([0, 1, 0, 0]);
    expect(counted([both], [warning('tinted-by-bounce', 'visible', 'wall', 'frame')])).toEqual([0, 0, 1, 0]);
  });

  it('is not cleared where it becomes an open question', () => {
    const open = warning('cannot-tell', 'note', 'backsplash', 'counter');
    expect(counted([pair], [open])).toEqual([0, 0, 0, 1]);
    expect(counted([pair, open], [open])).toEqual([1, 0, 0, 0]);
  });
});
