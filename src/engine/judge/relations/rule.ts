import type { LookPlace } from './places';
import type { SeenScheme } from './seen-scheme';
import type { Claim, Miss, RelationKind } from './types';

/** How a claim stands in a scheme. Words are made on demand: draws and candidates need only whether it holds. */
export interface Reading {
  readonly holds: boolean;
  /** What is so in this scheme, one sentence, and by how much the claim is missed. */
  readonly words: () => { readonly here: string; readonly by: Miss };
}

/** A claim that a scheme seems to bear, with what says so. */
interface Proposal<C extends Claim> {
  readonly claim: C;
  readonly numbers: Readonly<Record<string, number>>;
}

/** One kind of relation: which there may be, whether one holds, and its words. */
export interface RelationRule<K extends RelationKind> {
  readonly propose: (
    scheme: SeenScheme,
    places: readonly LookPlace[],
  ) => readonly Proposal<Extract<Claim, { kind: K }>>[];
  /** Null where a side of the claim is missing. `numbers` are those of the look. */
  readonly read: (
    claim: Extract<Claim, { kind: K }>,
    scheme: SeenScheme,
    numbers: Readonly<Record<string, number>>,
  ) => Reading | null;
  readonly say: (claim: Extract<Claim, { kind: K }>, numbers: Readonly<Record<string, number>>, may: boolean) => string;
  /** What may still be said where the claim itself flips under errors; null: nothing. */
  readonly weaker?: (claim: Extract<Claim, { kind: K }>) => Extract<Claim, { kind: K }> | null;
  /** What cannot be said where the colors are not known well enough for it. */
  readonly open: (claim: Extract<Claim, { kind: K }>) => string;
}
