import { describe, expect, it } from 'vitest';
import type { FinishClass } from '../../src/engine/finish/types';
import { holdCandidates, shortlist, wishing } from '../../src/engine/judge/shortlist/shortlist';
import type { Wish } from '../../src/engine/judge/shortlist/wish';
import { SURFACES } from '../../src/engine/surface';
import { isTooFlatFor } from '../../src/model/finish-candidates';
import { finish, knownTo, laidFinish } from './finishes';
import { acceptedIds, candidate, held, listed, whereIs } from './shortlists';

// Which whites go with which counter: as in whites.test.ts, from published equations (CIEDE2000; WID, Perez et al. 2016). That a clash with
// a main color turns down and one with a vein does not, and the order of the steps, is our judgment.

const measured = (id: string, kind: FinishClass, lab: string) => laidFinish(id, kind, [`base 1 ${lab}`], 'measured');

describe('whites beside a counter', () => {
  const whites = ['LM-01', 'TL-01', 'TL-02'];

  it('accepts the neutral white beside the cool counter, leaves the bluish one to samples, turns the yellowish one down', () => {
    const list = listed('backsplash', whites, [held('counter', 'EN-01')]);
    expect(whites.map((id) => whereIs(list, id))).toEqual(['compare', 'clear', 'too-yellow']);
    expect(list.accepted[0]!.reasons[0]).toBe('Its white agrees with that of the counter.');
    expect(list.rejected[0]!.reason).toBe('The backsplash looks yellow beside the counter.');
    expect(list.accepted[1]!.reasons[0]).toMatch(/may look dirty .* Compare samples\.$/);
  });

  it('turns the answers round beside a limestone', () => {
    const list = listed('backsplash', whites, [held('counter', 'ST-02')]);
    expect(whites.map((id) => whereIs(list, id))).toEqual(['too-yellow', 'white-looks-dirty', 'clear']);
    expect(list.rejected.map(({ reason }) => reason)).toEqual([
      'The counter looks dirty beside the cleaner white of the backsplash.',
      'The counter looks yellow beside the backsplash.',
    ]);
  });
});

const FAMILIES: readonly (readonly [settled: FinishClass, chosen: FinishClass])[] = [
  ['engineered', 'glazed'],
  ['stone', 'paint'],
  ['solid surface', 'laminate'],
];

describe.each(FAMILIES)('measured whites, %s and %s, on both sides of the limit of 2.6', (settled, chosen) => {
  // b* alone moves WID by 1.10 a unit: 3.9, 2.9, 2.5 and 1.4 apart.
  const list = listed(
    'backsplash',
    [
      measured('far', chosen, '90 -.3 4.5'),
      measured('past', chosen, '90 -.3 3.6'),
      measured('near', chosen, '90 -.3 3.3'),
      measured('inside', chosen, '90 -.3 2.3'),
    ],
    [held('counter', measured('white', settled, '90 -.3 1'))],
  );

  it('turns down what is past it beyond doubt, asks for samples close to it, accepts what is inside', () => {
    const found = ['far', 'past', 'near', 'inside'].map((id) => whereIs(list, id));
    expect(found).toEqual(['too-yellow', 'compare', 'compare', 'clear']);
  });

  it('says nothing of wood that has the same color', () => {
    const wood = listed(
      'backsplash',
      [measured('far', 'wood', '90 -.3 4.5')],
      [held('counter', measured('white', settled, '90 -.3 1'))],
    );
    expect(whereIs(wood, 'far')).toBe('clear');
  });
});

describe.each<readonly [FinishClass, FinishClass]>([
  ['stone', 'paint'],
  ['porcelain', 'laminate'],
  ['vinyl', 'engineered'],
])('opposed undertones, %s and %s, on both sides of 90 degrees', (settled, chosen) => {
  // A blue-gray at 270 degrees; beside it grays at 90, 172 (98 apart), 179 (91 apart) and 200 (70 apart), all C* 6.
  const list = listed(
    'base-fronts',
    [
      measured('opposed', chosen, '60 0 6'),
      measured('past', chosen, '60 -5.94 .84'),
      measured('near', chosen, '60 -6 .1'),
      measured('inside', chosen, '60 -5.64 -2.05'),
      measured('color', chosen, '60 0 24'),
    ],
    [held('floor', measured('slate', settled, '45 0 -6'))],
  );

  it('turns down what is opposed beyond doubt, and no color that is meant as one', () => {
    const found = ['opposed', 'past', 'near', 'inside', 'color'].map((id) => whereIs(list, id));
    expect(found).toEqual(['undertones-pull-apart', 'undertones-pull-apart', 'compare', 'clear', 'clear']);
  });
});

describe('what does not decide', () => {
  it('ranks a clash with a vein lower and says so, but does not turn down for it', () => {
    const list = listed('wall', ['PT-10', 'PT-11'], [held('counter', 'EN-01')]);
    expect([whereIs(list, 'PT-10'), whereIs(list, 'PT-11')]).toEqual(['part', 'clear']);
    expect(acceptedIds(list)).toEqual(['PT-11', 'PT-10']);
    expect(list.accepted[1]!.reasons[0]).toMatch(
      /the veins of the counter toward \w+: (opposite|different) ways.*does not decide/,
    );
  });

  it.each([
    ['wood', 'base 1 80 2 10'],
    ['laminate', 'base .7 78 1.5 9;grain .3 72 2 10'],
    ['vinyl', 'base .8 76 1 9;grain .2 70 2 9'],
  ] as const)('holds the brown of %s that looks like pale wood against no bluish gray', (kind, components) => {
    const wood = laidFinish('wood', kind, components.split(';'));
    const plain = laidFinish('plain', 'paint', ['base 1 80 2 10']);
    const list = listed('base-fronts', [wood, plain], [held('floor', 'ST-01')]);
    expect([whereIs(list, 'wood'), whereIs(list, 'plain')]).toEqual(['clear', 'undertones-pull-apart']);
  });

  it.each(['ceiling', 'tap', 'hardware'] as const)('turns nothing down for a %s', (surface) => {
    const list = listed('wall', ['PT-02', 'PT-05', 'PT-07', 'PT-09', 'PT-14'], [held(surface, 'PT-07')]);
    expect(list.rejected).toEqual([]);
  });

  it('turns nothing down for what is never seen beside it', () => {
    const apart = { ...held('counter', 'EN-01'), isApart: true };
    expect(listed('wall', ['PT-07'], [apart]).rejected).toEqual([]);
    expect(whereIs(listed('wall', ['PT-07'], [held('counter', 'EN-01')]), 'PT-07')).toBe('too-yellow');
  });

  it.each(['by-eye', 'screen', 'photo', 'photo-with-card'] as const)('rejects nothing on colors known by %s', (how) => {
    const of = (id: string) => knownTo(finish(id), 2.5, how);
    const all = ['LM-01', 'TL-01', 'TL-02', 'ST-02', 'PT-07', 'PT-14', 'PT-10'];
    const list = listed('backsplash', all.map(of), [held('counter', of('EN-01')), held('floor', of('ST-01'))]);
    expect(list.rejected).toEqual([]);
    expect(whereIs(list, 'TL-02')).toBe('compare');
    // One known roughly is enough.
    expect(listed('backsplash', [of('TL-02')], [held('counter', 'EN-01')]).rejected).toEqual([]);
    expect(listed('backsplash', ['TL-02'], [held('counter', of('EN-01'))]).rejected).toEqual([]);
  });

  it('turns down nothing but what is not made for the place while nothing is settled, and says that', () => {
    const notMade = candidate('WD-01', 'wall', { notMade: 'Wood does not usually go on the wall.' });
    const list = listed('wall', ['PT-07', 'PT-01', 'PT-02', notMade], []);
    expect(list.held_words).toMatch(/^Nothing is settled yet, so there is nothing to hold the finishes against/);
    expect(list.rejected.map(({ finish: id, code }) => [id, code])).toEqual([['WD-01', 'not-made-for-it']]);
    expect(list.accepted.map(({ finish: id }) => id)).toEqual(['PT-02', 'PT-07', 'PT-01']);
    expect(list.accepted.flatMap(({ reasons }) => reasons).join(' ')).not.toMatch(/agrees|echo|clash/);
  });

  it('accepts the one finish that lies everywhere', () => {
    const everywhere = SURFACES.filter((one) => one !== 'wall').map((surface) => held(surface, 'PT-02'));
    const list = listed('wall', ['PT-02'], everywhere);
    expect(whereIs(list, 'PT-02')).toBe('clear');
    expect(list.accepted[0]!.reasons[0]).toMatch(/^It is the finish of .* already\.$/);
  });
});

describe('the order', () => {
  it('puts whites that agree before hues that echo, these before what has nothing in common', () => {
    const list = listed('backsplash', ['TL-04', 'EN-05', 'TL-01'], [held('counter', 'EN-01'), held('floor', 'ST-01')]);
    expect(acceptedIds(list)).toEqual(['TL-01', 'EN-05', 'TL-04']);
    expect(list.accepted.map(({ placed_by }) => placed_by)).toEqual(['agreement', 'agreement', 'agreement']);
  });

  it('puts edges that can be seen first where somebody sees badly, and says so', () => {
    const against = [held('floor', 'ST-01')];
    // The gray-blue echoes the slate but hardly stands out from it (16.4 points of Y); the beech does not echo and does (27).
    const finishes = [measured('echo', 'paint', '55 -1.5 -5.5'), measured('none', 'paint', '78 20 8')];
    expect(acceptedIds(listed('base-fronts', finishes, against))).toEqual(['echo', 'none']);
    const seen = listed('base-fronts', finishes, against, { contrastFirst: true });
    expect(acceptedIds(seen)).toEqual(['none', 'echo']);
    expect(seen.order.map(({ step }) => step)).toEqual(['clashes', 'contrast', 'agreement', 'wishes', 'color']);
    expect(seen.order[1]!.words).toMatch(/who uses the kitchen/);
  });

  it('lets the first wish count more than all that follow, and none reject', () => {
    const finishes = [
      candidate(measured('both-later', 'paint', '70 0 0'), 'wall', { priceBand: '$', availability: 'In stock' }),
      candidate(measured('first', 'paint', '40 0 0'), 'wall', { priceBand: '$$$', availability: 'To order' }),
      candidate(measured('unknown', 'paint', '50 0 0'), 'wall'),
    ];
    const list = listed('wall', finishes, [], {
      wishes: [
        { kind: 'lrv', from: 5, to: 15 },
        { kind: 'price', bands: ['$'] },
        { kind: 'availability', words: 'in stock' },
      ],
    });
    expect(acceptedIds(list)).toEqual(['first', 'both-later', 'unknown']);
    expect(list.accepted[0]!.reasons[0]).toBe(
      'Meets 1 of 3 wishes: light reflectance 5 to 15. Misses: a low price; "in stock".',
    );
    expect(list.accepted[2]!.reasons.join(' ')).toContain('Not known: a low price; "in stock".');
    expect(list.accepted[2]!.wishes.map(({ is_met }) => is_met)).toEqual([false, null, null]);
  });

  it.each([
    [{ kind: 'class', class: 'paint' }, 'base 1 50 0 0', 'base 1 50 0 0', 'laminate'],
    [{ kind: 'pattern', pattern: 'quiet' }, 'base 1 50 0 0', 'base 1 50 0 0', 'paint'],
    [{ kind: 'no-lighter-than', surface: 'floor' }, 'base 1 40 0 0', 'base 1 50 0 0', 'paint'],
    [{ kind: 'no-darker-than', surface: 'floor' }, 'base 1 60 0 0', 'base 1 50 0 0', 'paint'],
  ] as const)('ranks by a wish for %o', (wish, like, unlike, unlikeClass) => {
    const floor = held(
      'floor',
      measured('floor', 'stone', wish.kind === 'no-lighter-than' ? '45 0 0' : '55 0 0'),
      'open',
    );
    const met = candidate(laidFinish('met', 'paint', [like]), 'wall');
    const not = candidate(laidFinish('a-not', unlikeClass, [unlike]), 'wall', { pattern: 'lively' });
    const list = listed('wall', [not, met], [floor], { wishes: [wish] });
    expect(acceptedIds(list)).toEqual(['met', 'a-not']);
    const told = Object.fromEntries(list.accepted.map((row) => [row.finish, row.reasons.join(' ')]));
    expect(told['met']).toContain('Meets your wish: ');
    expect(told['a-not']).toContain('Misses your wish: ');
  });

  it('puts what nobody knows between what is met and what is missed, and says so', () => {
    const priced = (id: string, priceBand: string | null) =>
      candidate(measured(id, 'paint', '50 0 0'), 'wall', { priceBand });
    const list = listed('wall', [priced('a-missed', '$$$'), priced('b-unknown', null), priced('c-met', '$')], [], {
      wishes: [{ kind: 'price', bands: ['$'] }],
    });
    expect(acceptedIds(list)).toEqual(['c-met', 'b-unknown', 'a-missed']);
    expect(list.accepted[1]!.reasons.join(' ')).toContain('Not known whether it meets your wish: a low price.');
    expect(list.order.find(({ step }) => step === 'wishes')!.words).toContain('what is not known');
  });

  it('puts wishes given afterwards where it puts those given beforehand', () => {
    const asked = {
      project: 'test',
      option: 'test',
      candidates: ['TL-01', 'TL-02', 'LM-01', 'EN-02', 'EN-03', 'ST-05', 'WD-01'].map((id) =>
        candidate(id, 'backsplash', { pattern: id < 'M' ? 'lively' : 'quiet' }),
      ),
      held: [held('floor', 'ST-01')],
      around: [held('floor', 'ST-01'), held('wall', 'TL-02', 'open')],
      laid: '',
    };
    const place = { surfaces: ['backsplash'], contrastFirst: false } as const;
    const wishes: readonly Wish[] = [
      { kind: 'no-lighter-than', surface: 'wall' },
      { kind: 'pattern', pattern: 'quiet' },
      { kind: 'price', bands: ['$'] },
    ];
    const before = holdCandidates({ ...asked, place: { ...place, wishes } });
    const after = wishing(holdCandidates({ ...asked, place: { ...place, wishes: [] } }), wishes);
    expect(shortlist(after)).toEqual(shortlist(before));
    expect(shortlist(wishing(after, []))).toEqual(
      shortlist(holdCandidates({ ...asked, place: { ...place, wishes: [] } })),
    );
  });

  it('says of every accepted finish which step put it there', () => {
    const all = ['TL-01', 'TL-02', 'TL-03', 'LM-01', 'EN-02', 'EN-03', 'EN-05', 'ST-05', 'SS-01', 'TL-04'];
    const list = listed('backsplash', all, [held('counter', 'EN-01'), held('floor', 'ST-01')]);
    expect(list.accepted.length).toBeGreaterThan(6);
    for (const { reasons, rank } of list.accepted) {
      expect(reasons.at(-1)).toMatch(rank === 1 ? /^First/ : /^(After|Even with) the one before it/);
    }
    expect(list.accepted.map(({ rank }) => rank)).toEqual(list.accepted.map((_, i) => i + 1));
  });
});

describe('the sheen', () => {
  it('puts flat paint behind paint that can be wiped, on fronts, and says to ask for its color with a sheen', () => {
    const white = laidFinish('a-flat', 'paint', ['base 1 95.8 -.3 1'], 'measured');
    const satin = laidFinish('satin', 'paint', ['base 1 70 -2 3'], 'measured');
    const list = listed(
      'base-fronts',
      [candidate(white, 'base-fronts', { isTooFlat: true }), satin],
      [held('counter', 'EN-01')],
    );
    expect(acceptedIds(list)).toEqual(['satin', 'a-flat']);
    expect(list.accepted[1]!.reasons.join(' ')).toContain('ask for its color with a sheen');
    // Common practice, no source: flat is up to 5 gloss units at 60 degrees, the matte level G1 of MPI.
    expect([5, 6].map((gloss_gu) => isTooFlatFor({ class: 'paint', gloss_gu }, 'base-fronts'))).toEqual([true, false]);
    expect(isTooFlatFor({ class: 'paint', gloss_gu: 3 }, 'wall')).toBe(false);
    expect(isTooFlatFor({ class: 'laminate', gloss_gu: 4 }, 'base-fronts')).toBe(false);
  });
});

it('does not put the finish of the floor first for what stands on it: the edge between them would go', () => {
  const list = listed('base-fronts', ['WD-01', 'PT-02'], [held('floor', 'WD-01', 'fixed'), held('counter', 'EN-01')]);
  expect(acceptedIds(list)).toEqual(['PT-02', 'WD-01']);
  expect(list.accepted[1]!.reasons.join(' ')).toContain('Its edge to the floor may be hard to see: 0 points');
});
