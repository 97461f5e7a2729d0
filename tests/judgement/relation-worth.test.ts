import { describe, expect, it } from 'vitest';
import { causesOf } from '../../src/engine/judge/relations/causes';
import { checkRelations } from '../../src/engine/judge/relations/check-relations';
import { byWorth, counted, isWorse, isWorthIt, type Outcome } from '../../src/engine/judge/relations/follows';
import { relationsOf } from '../../src/engine/judge/relations/relations-of';
import { seenScheme } from '../../src/engine/judge/relations/seen-scheme';
import type { Relation, RelationKind } from '../../src/engine/judge/relations/types';
import { laidFinish } from './finishes';
import { type Row, relaid, scheme } from './schemes';

const LOOK: Row[] = [
  ['counter', 'EN-01', 11],
  ['floor', 'WD-01', 9],
  ['base-fronts', 'PT-01', 49],
  ['backsplash', 'TL-01', 11],
  ['wall', 'PT-02', 20],
];
const patterns = new Map();
const look = { input: scheme(LOOK), patterns };
const { relations } = relationsOf(look);
const over = (changes: Parameters<typeof relaid>[1]) => ({ input: scheme(relaid(LOOK, changes)), patterns });
const brokenOver = (changes: Parameters<typeof relaid>[1]) =>
  checkRelations(relations, over(changes)).filter(({ stands }) => stands === 'breaks');
const itself = (one: Relation) => one;

describe('what follows from what', () => {
  // 5 L* and more down twice is 10 L* and more down: arithmetic, by the limits of a step.
  it('a clear step follows from two down a third surface', () => {
    const step = relations.find(({ id }) => id === 'step:wall+floor')!;
    expect(step.follows_from).toEqual(['step:wall+counter', 'step:counter+floor']);
    expect(relations.find(({ id }) => id === 'step:floor+base-fronts')!.follows_from).toEqual([]);
  });
  it('where it breaks one of the two does, whatever lies there', () => {
    for (const finish of ['ST-01', 'ST-03', 'PT-09', 'PT-21']) {
      const broken = brokenOver({ floor: finish }).map(({ relation }) => relation);
      for (const { follows_from } of broken) {
        if (follows_from.length > 0) expect(broken.some(({ id }) => follows_from.includes(id))).toBe(true);
      }
    }
  });
  it('a step goes with the order it is a pair of; alone it counts', () => {
    const steps = relations.filter(({ kind }) => kind === 'step');
    const order = relations.find(({ kind }) => kind === 'order')!;
    expect(counted([order, ...steps], itself).map(({ id }) => id)).toEqual(['order', 'step:backsplash+wall']);
    const alone = steps.find(({ id }) => id === 'step:floor+base-fronts')!;
    expect(counted([alone], itself)).toEqual([alone]);
  });
});

describe('causes', () => {
  const changes = { floor: 'ST-01', 'base-fronts': laidFinish('mid', 'paint', ['base 1 70 -20 5']) };
  const here = seenScheme(over(changes));
  const broken = brokenOver(changes);
  const causes = causesOf(seenScheme(look), here, broken, (surface) => (surface === 'floor' ? 'stays' : 'other'));
  it('name every break once', () => {
    const told = causes.flatMap((cause) => cause.relations);
    expect([...told].sort()).toEqual(broken.map(({ relation }) => relation.id).sort());
  });
  it('with the look’s own colors there, what goes with a surface holds', () => {
    const [first] = causes;
    expect(first!.surfaces).toEqual(['floor']);
    expect(first!.text).toMatch(/^The floor stays, and is darker than in the look .* bluish instead of /);
    expect(first!.whole).toMatch(/nothing warm is left/);
    const asThere = checkRelations(relations, over({ 'base-fronts': changes['base-fronts'] }));
    for (const id of first!.relations) {
      expect([id, asThere.find(({ relation }) => relation.id === id)!.stands]).toEqual([id, 'holds']);
    }
  });
});

// The order of gravity is our judgment.
describe('what a change is worth', () => {
  const of = (...kinds: RelationKind[]) => kinds.map((kind) => ({ kind }) as Relation);
  const outcome = (
    mends: RelationKind[],
    costs: RelationKind[],
    worsens: RelationKind[] = [],
    opens: RelationKind[] = [],
  ): Outcome => ({ mends: of(...mends), costs: of(...costs), worsens: of(...worsens), opens: of(...opens) });

  it('never more lost than mended', () => {
    expect(isWorthIt(outcome(['balance'], ['step', 'echo']))).toBe(false);
    expect(isWorthIt(outcome(['balance'], ['step']))).toBe(true);
    expect(isWorthIt(outcome(['balance'], ['step'], ['echo']))).toBe(false);
    expect(isWorthIt(outcome(['balance'], ['step'], [], ['echo']))).toBe(false);
    expect(isWorthIt(outcome([], []))).toBe(false);
  });
  it('nothing graver lost for many that are less', () => {
    expect(isWorthIt(outcome(['step', 'step', 'echo'], ['undertone']))).toBe(false);
    expect(isWorthIt(outcome(['order'], ['pattern']))).toBe(false);
    expect(isWorthIt(outcome(['order'], ['step']))).toBe(true);
    expect(isWorthIt(outcome(['step'], ['echo']))).toBe(false);
  });
  it('the gravest first, then the most, then what loses least', () => {
    const ranked = [
      outcome(['balance'], []),
      outcome(['order', 'edge', 'step'], []),
      outcome(['order'], []),
      outcome(['order', 'step'], ['step']),
      outcome(['step', 'step', 'echo'], []),
    ];
    expect([...ranked].reverse().sort(byWorth)).toEqual(ranked);
  });
  it('worse is clearly farther off, in the same unit', () => {
    const by = (value: number, unit: string) => ({ value, unit, text: '' });
    expect(isWorse(by(3, 'L*'), by(12, 'L*'))).toBe(false);
    expect(isWorse(by(3, 'L*'), by(14, 'L*'))).toBe(true);
    expect(isWorse(by(3, 'L*'), by(90, 'CIEDE2000'))).toBe(false);
    expect(isWorse(by(3, 'undertone strength'), by(90, 'degrees of hue'))).toBe(true);
  });
});
