import { firmnessOf } from '../firmness';
import { inDecisionOrder } from '../surface-words';
import { type DrawOptions, drawnSchemes, shareWhere } from './draw-schemes';
import { readClaim } from './rules';
import { type RelationScheme, type SeenScheme, seenScheme } from './seen-scheme';
import type { Relation, RelationCheck } from './types';

/**
 * What becomes of a look's relations in another scheme: each holds, breaks (and by how much), or cannot be told, where one of its
 * surfaces is missing or the colors here leave it open.
 */
export function checkRelations(
  relations: readonly Relation[],
  given: RelationScheme,
  options?: DrawOptions,
): readonly RelationCheck[] {
  const scheme = seenScheme(given);
  const drawn = drawnSchemes(scheme, options);
  return relations.map((relation) => checkOne(relation, scheme, drawn));
}

/** The same, where the plausible errors of the scheme's colors are drawn already. In slices: each reads a relation in every draw. */
export function* checkInSteps(
  relations: readonly Relation[],
  scheme: SeenScheme,
  drawn: readonly SeenScheme[],
): Generator<undefined, readonly RelationCheck[]> {
  const checks: RelationCheck[] = [];
  for (const relation of relations) {
    checks.push(checkOne(relation, scheme, drawn));
    yield;
  }
  return checks;
}

function checkOne(relation: Relation, scheme: SeenScheme, drawn: readonly SeenScheme[]): RelationCheck {
  const { claim, numbers } = relation;
  const kept = scheme.surfaces
    .filter(({ surface, state }) => relation.surfaces.includes(surface) && (state === 'fixed' || state === 'ordered'))
    .map(({ surface }) => surface);
  const reading = readClaim(claim, scheme, numbers);
  if (!reading) {
    return {
      relation,
      stands: 'cannot-tell',
      here: 'Here one of its surfaces is missing.',
      by: null,
      holds_in: null,
      kept,
    };
  }
  const holds_in = shareWhere(drawn, (one) => readClaim(claim, one, numbers)?.holds ?? false);
  const { here, by } = reading.words();
  const isSure = firmnessOf(reading.holds ? holds_in : 1 - holds_in) !== 'open';
  if (!isSure) {
    const open = 'Here it is too close to call: compare the samples.';
    return { relation, stands: 'cannot-tell', here: open, by: null, holds_in, kept };
  }
  return {
    relation,
    stands: reading.holds ? 'holds' : 'breaks',
    here,
    by: reading.holds ? null : by,
    holds_in,
    kept: inDecisionOrder(kept),
  };
}
