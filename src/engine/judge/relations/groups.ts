import { KINDS } from './rules';
import type { RelationCheck, RelationKind } from './types';

const TITLES: Readonly<Record<RelationKind, string>> = {
  balance: 'Warm and cool',
  pattern: 'Pattern',
  order: 'Lightness',
  step: 'Lightness',
  edge: 'Edges',
  undertone: 'Undertones',
  echo: 'Echoes',
  opposition: 'Opposites',
};

/** Checks under the title of their kind, in the order of telling. */
export function relationGroups(
  checks: readonly RelationCheck[],
): readonly { readonly title: string; readonly checks: readonly RelationCheck[] }[] {
  const titles = [...new Set(KINDS.map((kind) => TITLES[kind]))];
  return titles.flatMap((title) => {
    const own = checks.filter(({ relation }) => TITLES[relation.kind] === title);
    return own.length > 0 ? [{ title, checks: own }] : [];
  });
}
