import type { SurfaceId } from '../../surface';
import { surfacesPhrase } from '../surface-words';
import type { Relation, RelationCheck, RelationKind } from './types';

const the = (surfaces: readonly SurfaceId[]): string => surfacesPhrase(surfaces).text;

/** "warm and cool", "the step from the floor to the fronts": a relation in a list of some. */
export function relationName({ claim }: Relation): string {
  switch (claim.kind) {
    case 'balance':
      return 'warm and cool';
    case 'pattern':
      return claim.lead
        ? `the pattern that ${the(claim.lead)} ${surfacesPhrase(claim.lead).plural ? 'lead' : 'leads'}`
        : 'that no pattern shows';
    case 'order':
      return 'the order from light to dark';
    case 'step':
      return `the step from ${the(claim.lighter)} to ${the(claim.darker)}`;
    case 'edge':
      return `the edge between ${the(claim.one)} and ${the(claim.other)}`;
    case 'undertone':
      return `${claim.sort === 'color' ? 'the hue' : 'the undertone'} of ${the(claim.of)}`;
    case 'echo':
      return `the echo between ${the(claim.one)} and ${the(claim.other)}`;
    case 'opposition':
      return `that ${the(claim.one)} and ${the(claim.other)} oppose each other`;
  }
}

/** Others than the surfaces they name may mend these. */
const OF_ALL: readonly RelationKind[] = ['balance', 'pattern'];

/** Of what breaks the names of what nothing can mend: all its surfaces are fixed or ordered. */
export const beyondRepair = (checks: readonly RelationCheck[]): readonly string[] =>
  checks
    .filter(
      ({ stands, relation: { kind, surfaces }, kept }) =>
        stands === 'breaks' && !OF_ALL.includes(kind) && surfaces.every((s) => kept.includes(s)),
    )
    .map(({ relation }) => relationName(relation));
