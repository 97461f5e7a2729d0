import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import { inPlaceFaults } from '../../src/engine/judge/shortlist/in-place';
import { holdCandidates, shortlist } from '../../src/engine/judge/shortlist/shortlist';
import { whyPoints } from '../../src/engine/judge/shortlist/why';
import { finish, knownTo } from './finishes';
import { measured } from './metamers';
import { inPlace, scheme, tinted } from './schemes';
import { candidate, held } from './shortlists';

// A lamp that parts two whites: the wall reads 8 b* yellower than its sample, the counter as its sample does.
const wallOf = (lab: LaidFinish['components'][number]['labD65']) => [{ ...lab, b: lab.b + 8 }];

function seen(wall: LaidFinish, counter: LaidFinish, change: Parameters<typeof inPlace>[2]) {
  const input = inPlace(
    scheme([
      ['wall', wall, 50],
      ['counter', counter, 50],
    ]),
    'wall',
    change,
  );
  return inPlaceFaults(input, ['wall'], ['counter']);
}

function listWith(wall: LaidFinish, counter: LaidFinish, faults: ReturnType<typeof seen>) {
  const ranking = holdCandidates({
    project: 'test',
    option: 'test',
    candidates: [candidate(wall, 'wall'), candidate('PT-01', 'wall')],
    held: [held('counter', counter)],
    around: [],
    place: { surfaces: ['wall'], wishes: [], contrastFirst: false },
    laid: wall.id,
  });
  const places = [
    { setting: 'day', settingName: 'Day', faults: [] },
    { setting: 'dinner', settingName: 'Dinner', faults },
  ];
  return { list: shortlist(ranking, new Map([[wall.id, places]])), points: whyPoints(ranking, wall.id, places)! };
}

const sharply = (of: LaidFinish) => measured(knownTo(of, 0.25, 'measured'));
const [white, counter] = [finish('PT-02'), finish('SS-01')];

describe('a finish in its place', () => {
  it('turns down what a lamp parts beyond doubt, where both spectra were measured', () => {
    const [wall, top] = [sharply(white), sharply(counter)];
    const faults = seen(wall, top, { components: wallOf(wall.components[0]!.labD65) });
    expect(faults).toMatchObject([{ isFirm: true, surfaces: ['counter'] }]);
    const { list } = listWith(wall, top, faults);
    expect(list.rejected).toMatchObject([
      {
        finish: 'PT-02',
        code: 'too-yellow',
        reason: 'In Dinner, the wall looks yellow beside the counter.',
        basis: 'installed',
        failed_in: ['dinner'],
        beside: ['counter'],
      },
    ]);
  });

  it('only ranks lower what a guessed curve may do there', () => {
    const faults = seen(white, counter, { components: wallOf(white.components[0]!.labD65) });
    expect(faults).toMatchObject([{ isFirm: false }]);
    const { list, points } = listWith(white, counter, faults);
    expect(list.rejected).toEqual([]);
    expect(list.accepted.map((row) => row.finish)).toEqual(['PT-01', 'PT-02']);
    expect(list.accepted[1]).toMatchObject({
      group: 'compare',
      basis: 'installed',
      judged_in: ['day', 'dinner'],
      failed_in: ['dinner'],
      is_laid: true,
    });
    expect(list.accepted[1]!.reasons[0]).toBe(
      'In Dinner, the wall may look yellow beside the counter. Compare samples in that light.',
    );
    expect(list.accepted[0]!.basis).toBe('sample');
    expect(points[0]).toMatchObject({ kind: 'in-place', setting: 'dinner', beside: ['counter'] });
    expect(points[0]!.why).toMatch(/limit 2\.6.*tint of each place is taken off.*guessed/);
  });

  it('holds nothing against a finish that the room alone tints', () => {
    const wall = sharply(white);
    const placeWhite = { l: 100, a: 0.5, b: 9 };
    const components = [tinted(wall.components[0]!.labD65, placeWhite)];
    expect(seen(wall, sharply(counter), { components, placeWhite, lightWhite: placeWhite })).toEqual([]);
  });
});
