import type { Claim, Miss, Relation, RelationKind } from './types';

type StepClaim = Extract<Claim, { kind: 'step' }>;
type Surfaces = StepClaim['lighter'];

const isSamePlace = (a: Surfaces, b: Surfaces): boolean => a.join() === b.join();

/**
 * The relations a step follows from: two other steps, from its lighter side down to a third place and from there to its darker
 * side. Each is at least small, so the whole is clear (`STEP`: twice the least of a small one); where it breaks, one of the two does.
 */
export function followedBy(claim: Claim, among: readonly { readonly id: string; readonly claim: Claim }[]): string[] {
  if (claim.kind !== 'step' || claim.step !== 'clear') return [];
  const down = among.flatMap(({ id, claim: one }) =>
    one.kind === 'step' && one.step !== 'none' ? [{ id, claim: one }] : [],
  );
  for (const first of down) {
    if (!isSamePlace(first.claim.lighter, claim.lighter)) continue;
    const second = down.find(
      (one) => isSamePlace(one.claim.lighter, first.claim.darker) && isSamePlace(one.claim.darker, claim.darker),
    );
    if (second) return [first.id, second.id];
  }
  return [];
}

/**
 * Of a list the relations that are counted: a step goes with the order that it is a pair of, and with the steps it follows from,
 * where they are in the list, too. So one thing that happened counts once.
 */
export function counted<T>(list: readonly T[], relationOf: (one: T) => Relation): readonly T[] {
  const relations = list.map(relationOf);
  const ids = new Set(relations.map(({ id }) => id));
  const order = relations.map(({ claim }) => claim).find((claim) => claim.kind === 'order');
  const isInOrder = ({ lighter, darker }: StepClaim) =>
    order?.kind === 'order' && order.pairs.some(([a, b]) => isSamePlace(a, lighter) && isSamePlace(b, darker));
  return list.filter((_, i) => {
    const { claim, follows_from } = relations[i]!;
    return !(follows_from.some((id) => ids.has(id)) || (claim.kind === 'step' && isInOrder(claim)));
  });
}

/**
 * Gravest first: warm and cool and the pattern make the whole; order, edges and undertones are what one names a look by; the rest is
 * how far. Our judgment.
 */
const GRAVITY: readonly (readonly RelationKind[])[] = [
  ['balance', 'pattern'],
  ['order', 'edge', 'undertone'],
  ['step', 'echo', 'opposition'],
];

/** What a change does to the relations of a look, each thing counted once. */
export interface Outcome {
  /** Broken ones that hold again. */
  readonly mends: readonly Relation[];
  /** Ones that held, or were open, and break. */
  readonly costs: readonly Relation[];
  /** Broken ones that are missed by much more than before. */
  readonly worsens: readonly Relation[];
  /** Ones that held and cannot be told any more. */
  readonly opens: readonly Relation[];
}

/** What is mended less what is lost, of some kinds; what is made worse or left open counts as lost. */
const netOf = ({ mends, costs, worsens, opens }: Outcome, kinds?: readonly RelationKind[]): number => {
  const count = (list: readonly Relation[]) => list.filter(({ kind }) => !kinds || kinds.includes(kind)).length;
  return count(mends) - count(costs) - count(worsens) - count(opens);
};

const netsOf = (outcome: Outcome): readonly number[] => GRAVITY.map((kinds) => netOf(outcome, kinds));

/**
 * Lexical, never one score: net of what is lost, most of the gravest, then most of the next, then of the rest; then what loses least.
 * Negative where the first is worth more.
 */
export function byWorth(a: Outcome, b: Outcome): number {
  const [one, other] = [netsOf(a), netsOf(b)];
  const differs = one.findIndex((net, i) => net !== other[i]);
  return differs >= 0 ? other[differs]! - one[differs]! : lossesOf(a) - lossesOf(b);
}

const lossesOf = ({ costs, worsens, opens }: Outcome): number => costs.length + worsens.length + opens.length;

/** Never loses more than it mends, nor anything graver. */
export function isWorthIt(outcome: Outcome): boolean {
  const first = netsOf(outcome).find((net) => net !== 0) ?? 0;
  return first > 0 && netOf(outcome) >= 0;
}

/**
 * By how much more one has to miss a relation for it to be worse, in its own unit: a clear step, the width of an echo. Our
 * judgment.
 */
const WORSE: Readonly<Record<string, number>> = {
  'L*': 10,
  'points of light reflectance': 10,
  'points of the view': 10,
  'degrees of hue': 30,
  CIEDE2000: 5,
  whiteness: 2.6,
  'undertone strength': 2,
};

/** Whether a broken relation is missed by much more than before; a color that is not the look's is worse than none. */
export const isWorse = (before: Miss, after: Miss): boolean =>
  before.unit === after.unit
    ? after.value > before.value + (WORSE[after.unit] ?? 0)
    : before.unit === 'undertone strength' && after.unit === 'degrees of hue';
