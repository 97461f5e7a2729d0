import { balanceRule } from './balance-relation';
import { echoRule, oppositionRule } from './echo-relation';
import { edgeRule } from './edge-relation';
import { orderRule, stepRule } from './lightness';
import { patternRule } from './pattern-relation';
import type { Reading, RelationRule } from './rule';
import type { SeenScheme } from './seen-scheme';
import type { Claim, RelationKind } from './types';
import { undertoneRule } from './undertone-relation';

const RULES: { readonly [K in RelationKind]: RelationRule<K> } = {
  balance: balanceRule,
  order: orderRule,
  step: stepRule,
  edge: edgeRule,
  undertone: undertoneRule,
  echo: echoRule,
  opposition: oppositionRule,
  pattern: patternRule,
};

/** The whole first, then lightness, hue and pattern: the order in which relations are told. */
export const KINDS: readonly RelationKind[] = [
  'balance',
  'pattern',
  'order',
  'step',
  'edge',
  'undertone',
  'echo',
  'opposition',
];

/** The rule for a claim, whichever kind it is. */
export const ruleOf = (kind: RelationKind): RelationRule<RelationKind> =>
  RULES[kind] as unknown as RelationRule<RelationKind>;

/** How a claim stands in a scheme; null where a side of it is missing. */
export const readClaim = (
  claim: Claim,
  scheme: SeenScheme,
  numbers: Readonly<Record<string, number>>,
): Reading | null => ruleOf(claim.kind).read(claim, scheme, numbers);
