import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { knownTo, laidFinish } from './finishes';
import { type Row, scheme } from './schemes';

const white = (id: string, lab: string): LaidFinish =>
  knownTo(laidFinish(id, 'paint', [`base 1 ${lab}`]), 0.25, 'measured');
const yellowish = laidFinish('eye', 'paint', ['base 1 88 0 7']);
const rows = (wall: LaidFinish): Row[] => [
  ['counter', white('one', '92 -0.4 1.6'), 20],
  ['backsplash', white('two', '93 -0.4 1.2'), 20],
  ['wall', wall, 60],
];

describe('one finish against several', () => {
  it('is one finding, as firm as the least firm of them', () => {
    const input = scheme(rows(knownTo(yellowish, 0.25, 'measured')));
    const found = holdsIn(input, judge(input)).warnings.filter((w) => w.code === 'too-yellow');
    expect(found).toHaveLength(1);
    expect(found[0]!.text).toBe('The wall looks yellow beside the counter and the backsplash.');
    expect(found[0]!.surfaces).toEqual(['counter', 'backsplash', 'wall']);
    expect(found[0]!.holds_in!).toBeGreaterThan(0.85);
  });

  it('is one question where it is known only roughly, and says what to do', () => {
    const input = scheme(rows(knownTo(yellowish, 5, 'by-eye')));
    const found = holdsIn(input, judge(input)).warnings.filter((w) => w.surfaces.includes('wall'));
    expect(found.map((w) => w.code)).toEqual(['cannot-tell']);
    expect(found[0]!.text).toBe(
      'The wall is judged by eye, so we cannot tell whether it goes with the counter and the backsplash. ' +
        'Compare the samples by the window, the counter lying flat, the backsplash and the wall upright.',
    );
  });
});

describe('before the errors of the colors are tried', () => {
  it('says nothing flatly of a color judged by eye, and never gravely', () => {
    const far = laidFinish('eye', 'paint', ['base 1 88 0 12']);
    const pending = (wall: LaidFinish) => judge(scheme(rows(wall))).warnings.find((w) => w.code === 'too-yellow')!;
    expect(pending(knownTo(far, 0.25, 'measured'))).toMatchObject({
      severity: 'grave',
      text: 'The wall looks yellow beside the counter and the backsplash.',
    });
    expect(pending(knownTo(far, 5, 'by-eye'))).toMatchObject({
      severity: 'visible',
      text: 'The wall may look yellow beside the counter and the backsplash.',
    });
  });
});
