import { describe, expect, it } from 'vitest';
import type { LaidFinish } from '../../src/engine/finish/types';
import type { JudgeInput } from '../../src/engine/judge/input';
import { relationsOf } from '../../src/engine/judge/relations/relations-of';
import type { PatternFact } from '../../src/engine/judge/relations/seen-scheme';
import type { Relation } from '../../src/engine/judge/relations/types';
import type { SurfaceId } from '../../src/engine/surface';
import { finish, knownTo, laidFinish } from './finishes';
import { type Row, relaid, scheme } from './schemes';

/** Percent of an overview with an island. */
const LOOK: Row[] = [
  ['counter', 'EN-01', 8],
  ['island-counter', 'EN-01', 3],
  ['floor', 'WD-01', 10],
  ['base-fronts', 'PT-01', 32],
  ['wall-fronts', 'PT-01', 0],
  ['island-fronts', 'PT-01', 16],
  ['backsplash', 'TL-01', 12],
  ['wall', 'PT-02', 19],
  ['hardware', 'MT-01', 1],
];

const NO_PATTERNS: ReadonlyMap<SurfaceId, PatternFact> = new Map();
const read = (input: JudgeInput, patterns = NO_PATTERNS) => relationsOf({ input, patterns });
const of = (rows: readonly Row[]) => read(scheme(rows));
const byId = (list: readonly Relation[], id: string) => list.find((one) => one.id === id);

/** A gray of this lightness, measured to a tenth of the usual error, so that limits show. */
const gray = (id: string, l: number): LaidFinish => knownTo(laidFinish(id, 'paint', [`base 1 ${l} 0 0`]), 0.02);

describe('the relations of a look over birch', () => {
  const { relations } = of(LOOK);
  const claimOf = (id: string) => byId(relations, id)?.claim;

  // Expectations: area means of the Lab values of the finishes, the undertones and hues of an independent computation.
  it('has its balance, with the floor for the warmth', () => {
    expect(claimOf('balance')).toMatchObject({ verdict: 'balanced', warm: ['floor'] });
    expect(byId(relations, 'balance')!.text).toContain('the floor brings the warmth (11% of the view)');
  });
  it('orders surfaces from light to dark, and tells how far apart they are', () => {
    expect(byId(relations, 'order')!.text).toMatch(
      /backsplash and the wall; then the counters \(7 L\* darker\); then the floor \(12 L\* darker\); then the fronts \(41/,
    );
    expect(claimOf('step:floor+base-fronts')).toMatchObject({ step: 'clear' });
    expect(byId(relations, 'step:floor+base-fronts')!.numbers['d_l']).toBeCloseTo(40.9, 0);
    expect(claimOf('step:backsplash+counter')).toMatchObject({ step: 'small' });
    expect(claimOf('step:backsplash+wall')).toMatchObject({ step: 'none' });
  });
  it('has the undertones of its surfaces in words', () => {
    expect(claimOf('undertone:base-fronts')).toMatchObject({ sort: 'color', word: 'dark bluish green' });
    expect(claimOf('undertone:counter')).toMatchObject({ sort: 'plain' });
  });
  it('says who echoes whom and who opposes', () => {
    expect(claimOf('echo:floor+hardware')).toMatchObject({ how: 'hue' });
    expect(claimOf('echo:counter+backsplash')).toMatchObject({ how: 'whites' });
    expect(byId(relations, 'opposition:floor+base-fronts')!.numbers['hue_apart_deg']).toBeCloseTo(122, 0);
  });
  it('has one leader of the pattern', () => {
    expect(claimOf('pattern')).toMatchObject({ lead: ['counter', 'island-counter'] });
  });
  it('holds edges that are seen, and no weak ones', () => {
    expect(claimOf('edge:floor+base-fronts')).toMatchObject({ seen: 'clear' });
    const merged = of(relaid(LOOK, { floor: 'ST-01' }));
    expect(byId(merged.relations, 'edge:floor+base-fronts')).toBeUndefined();
  });
  it('echoes the vein over slate', () => {
    const { relations: over } = of(relaid(LOOK, { floor: 'ST-01' }));
    expect(byId(over, 'echo:counter+floor')?.claim).toMatchObject({ how: 'hue' });
  });
});

describe('limits', () => {
  // Steps by perception models of harmony (center and foot of a published term, the foot by our judgment).
  it.each<[number, string]>([
    [4.7, 'none'],
    [5.3, 'small'],
    [9.7, 'small'],
    [10.3, 'clear'],
  ])('a difference of %d L* is a step of kind %s', (difference, step) => {
    for (const light of [95, 70, 45]) {
      const { relations } = of([
        ['floor', gray('dark', light - difference), 40],
        ['wall', gray('light', light), 60],
      ]);
      expect(byId(relations, 'step:wall+floor')?.claim).toMatchObject({ step });
    }
  });

  it('lets two strong patterns lead neither, unless one is three times as large', () => {
    const rows = relaid(LOOK, { backsplash: 'ST-05', floor: 'ST-01' });
    const strong = laidFinish('strong', 'stone', ['base .8 80 0 0', 'vein .2 40 0 0']);
    const both = relaid(rows, { backsplash: strong });
    expect(byId(of(both).relations, 'pattern')).toBeUndefined();
    const size = (counter: number): ReadonlyMap<SurfaceId, PatternFact> =>
      new Map<SurfaceId, PatternFact>([
        ['counter', { kind: 'veined', scale_mm: counter }],
        ['backsplash', { kind: 'veined', scale_mm: 100 }],
      ]);
    expect(byId(read(scheme(both), size(290)).relations, 'pattern')).toBeUndefined();
    expect(byId(read(scheme(both), size(310)).relations, 'pattern')?.claim).toMatchObject({
      lead: ['counter', 'island-counter'],
    });
  });
});

describe('how sure', () => {
  const blurred = (u: number) =>
    LOOK.map(([surface, id, ...percent]): Row => [surface, knownTo(finish(id as string), u, 'photo'), ...percent]);
  it('of a picture only what survives remains, and the rest is said to be left out', () => {
    const sharp = of(LOOK);
    const { relations, left_out } = of(blurred(5));
    expect(relations.length).toBeLessThan(sharp.relations.length / 1.5);
    expect(byId(relations, 'step:floor+base-fronts')).toBeDefined();
    expect(byId(relations, 'echo:counter+backsplash')).toBeUndefined();
    expect(left_out.find(({ id }) => id === 'echo:counter+backsplash')!.text).toContain('too close to call');
    for (const { holds_in, wording } of relations)
      expect(holds_in).toBeGreaterThanOrEqual(wording === 'may' ? 0.75 : 0.85);
  });
  it('never grows with uncertainty, by more than a stray draw', () => {
    const levels = [0.25, 1, 2.5, 5].map((u) => {
      const { relations, left_out } = of(blurred(u));
      return new Map([...relations, ...left_out].map(({ id, holds_in }) => [id, holds_in]));
    });
    for (const [k, looser] of levels.entries()) {
      if (k === 0) continue;
      for (const [id, share] of looser) {
        const before = levels[k - 1]!.get(id);
        if (before !== undefined && id !== 'order') expect(share, id).toBeLessThanOrEqual(before + 0.02);
      }
    }
  });
});

describe('what changes nothing', () => {
  const told = ({ relations, left_out }: ReturnType<typeof of>) => [relations, left_out];
  it('the order of the surfaces', () => {
    expect(told(of([...LOOK].reverse()))).toEqual(told(of(LOOK)));
  });
  it('the names of the finishes', () => {
    const named = LOOK.map(
      ([surface, id, ...percent]): Row => [
        surface,
        { ...finish(id as string), label: `Another name ${id}` },
        ...percent,
      ],
    );
    expect(told(of(named))).toEqual(told(of(LOOK)));
  });
});

describe('poor looks', () => {
  it('an empty one yields nothing', () => {
    expect(read({ ...scheme([['wall', 'PT-02', 100]]), surfaces: [] })).toEqual({ relations: [], left_out: [] });
  });
  it('one finish everywhere yields that all look alike, and no step, edge or opposition', () => {
    const { relations } = of(LOOK.map(([surface, , ...percent]): Row => [surface, 'PT-21', ...percent]));
    const kinds = new Set(relations.map(({ kind }) => kind));
    expect([...kinds].sort()).toEqual(['balance', 'echo', 'undertone']);
    for (const { claim } of relations) if (claim.kind === 'echo') expect(claim.how).toBe('alike');
  });
});
