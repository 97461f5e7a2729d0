import { counted } from './follows';
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

export interface RelationGroup {
  readonly title: string;
  /** Those that count. */
  readonly checks: readonly RelationCheck[];
  /** How many more go with them. */
  readonly also: number;
}

/** Checks under the title of their kind, in the order of telling. */
export function relationGroups(checks: readonly RelationCheck[]): readonly RelationGroup[] {
  const titles = [...new Set(KINDS.map((kind) => TITLES[kind]))];
  return titles.flatMap((title) => {
    const all = checks.filter(({ relation }) => TITLES[relation.kind] === title);
    const own = counted(all, ({ relation }) => relation);
    return all.length > 0 ? [{ title, checks: own, also: all.length - own.length }] : [];
  });
}
