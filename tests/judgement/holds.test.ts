import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { finish, knownTo, laidFinish } from './finishes';
import { type Row, scheme } from './schemes';

const assessed = (rows: readonly Row[]) => {
  const input = scheme(rows);
  return holdsIn(input, judge(input), { draws: 1000, seed: 5 });
};

describe('an edge under errors', () => {
  const edgeOf = (counter: LaidFinish) =>
    assessed([
      ['counter', counter, 10],
      ['base-fronts', laidFinish('fronts', 'paint', ['base 1 50 0 0']), 30],
    ]).warnings.find((w) => w.surfaces.includes('base-fronts'))!;

  it('stands only where it stays as bad: a visible one on the verge of a note does so in about half', () => {
    // CIE 15: L* 50 is Y 18.4, L* 68.1 is Y 38.1. So they stand 19.7 points apart, a hair under the limit of 20.
    const verge = edgeOf(laidFinish('verge', 'engineered', ['base 1 68.1 0 0']));
    expect(verge.severity).toBe('visible');
    expect(verge.holds_in!).toBeGreaterThan(0.4);
    expect(verge.holds_in!).toBeLessThan(0.7);
  });

  it('does not gain from a finish having parts: base and vein err together', () => {
    const plain = edgeOf(laidFinish('top', 'engineered', ['base 1 66 0 0']));
    const veined = edgeOf(laidFinish('top', 'engineered', ['base .5 66 0 0', 'vein .5 66 0 0']));
    expect(plain.holds_in!).toBeLessThan(1);
    expect(veined.holds_in).toBeCloseTo(plain.holds_in!, 6);
  });
});

describe('a fault whose name does not stand', () => {
  it('is told by all its names, and never as grave', () => {
    const rows = (uncertainty: number): Row[] => [
      ['counter', knownTo(finish('ST-05'), uncertainty), 10],
      ['wall', knownTo(finish('TL-03'), uncertainty), 40],
    ];
    // Outside draws: dirty in 66 %, yellow in 30 %.
    const found = assessed(rows(1.45)).warnings.find((w) => w.code === 'white-looks-dirty')!;
    expect(found.text).toBe('The counter may look dirty or yellow beside the wall.');
    expect(found.severity).toBe('visible');
    expect(found.holds_in!).toBeGreaterThanOrEqual(0.75);
    const firm = assessed(rows(0.1)).warnings.find((w) => w.code === 'white-looks-dirty')!;
    expect(firm.text).toBe('The counter looks dirty beside the cleaner white of the wall.');
    expect(firm.severity).toBe(judge(scheme(rows(0.1))).warnings.find((w) => w.code === 'white-looks-dirty')!.severity);
  });

  it('describes the errors as they are drawn', () => {
    const open = assessed([
      ['counter', finish('EN-01'), 10],
      ['wall', finish('PT-06'), 10],
    ]).warnings.find((w) => w.code === 'cannot-tell')!;
    expect(open.why).toContain('known to about 1.0 CIEDE2000 (root mean square)');
  });
});
