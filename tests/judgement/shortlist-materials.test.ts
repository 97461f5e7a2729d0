import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { laidFinish } from './finishes';
import { acceptedIds, held, listed, whereIs } from './shortlists';

// One pattern leads, others are quieter; woods match or differ clearly: common practice, no source. Limits are our judgment.

const figured = (
  id: string,
  kind: LaidFinish['class'],
  components: readonly string[],
  figureMm: number,
): LaidFinish => ({
  ...laidFinish(id, kind, components, 'measured'),
  figureMm,
});
const granite = figured('granite', 'stone', ['base .5 45 1 2', 'fleck .3 68 0 1', 'fleck .2 22 0 0'], 7);

describe('a backsplash beside a speckled counter', () => {
  const list = listed(
    'backsplash',
    [
      figured('a-lively', 'porcelain', ['base .55 86 0 3', 'shade .45 45 0 0'], 60),
      figured('b-calm', 'porcelain', ['base .55 86 0 3', 'shade .45 80 0 3'], 60),
      figured('c-large', 'porcelain', ['base .55 86 0 3', 'shade .45 45 0 0'], 90),
    ],
    [held('counter', granite)],
  );

  it('ranks a busy one after a quiet one and after a figure of another size, with its reason, and turns it down never', () => {
    expect(acceptedIds(list)).toHaveLength(3);
    expect(acceptedIds(list).at(-1)).toBe('a-lively');
    const row = list.accepted.at(-1)!;
    expect(row.placed_by).toBe('clashes');
    expect(row.reasons[0]).toBe('Its busy pattern may compete with that of the counter: one leads best.');
    expect(list.accepted[0]!.reasons.join(' ')).not.toContain('pattern may compete');
  });

  it('is no matter of what is small', () => {
    const sink = listed('hardware', [granite], [held('counter', { ...granite, id: 'other' })]);
    expect(sink.accepted[0]!.reasons.join(' ')).not.toContain('compete');
  });
});

describe('fronts over an oak floor', () => {
  const wood = (id: string, lab: string) => laidFinish(id, 'wood', [`base 1 ${lab}`], 'measured');
  const list = listed(
    'base-fronts',
    [wood('a-redder', '68 12.5 23'), wood('b-alike', '68 8.5 22.5'), wood('c-walnut', '44 8 15')],
    [held('floor', wood('oak', '68 8 22'))],
  );

  it('ranks the wood that nearly matches last, and does not praise its echo', () => {
    expect(acceptedIds(list).at(-1)).toBe('a-redder');
    expect(whereIs(list, 'a-redder')).toBe('clear');
    const said = list.accepted.at(-1)!.reasons.join(' ');
    expect(said).toContain('nearly the wood of the floor');
    expect(said).not.toContain('It echoes');
    expect(list.accepted.filter(({ reasons }) => /nearly the wood/.test(reasons.join(' ')))).toHaveLength(1);
  });
});
