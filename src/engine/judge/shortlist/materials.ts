import type { SurfaceId } from '../../surface';
import { areSizesAlike, isBusy } from '../busy-patterns';
import { isLarge } from '../large-surfaces';
import { isNearMiss, isWood } from '../near-woods';
import { isFitting } from '../sample-color';
import { inDecisionOrder, surfacesPhrase } from '../surface-words';
import { spokenOf } from './relations';
import type { Candidate, HeldSurface } from './types';

/** What speaks against a candidate by its pattern or as a wood: it ranks later, and is never turned down for it. */
export interface MaterialPoint {
  readonly kind: 'pattern' | 'wood';
  /** Settled surfaces it is of. */
  readonly surfaces: readonly SurfaceId[];
  /** Finishes that lie there. */
  readonly finishes: readonly string[];
  readonly text: string;
}

const NONE: readonly MaterialPoint[] = [];

/** How a candidate's pattern and wood stand to what is settled and seen beside it. */
export function materialPoints(
  candidate: Candidate,
  held: readonly HeldSurface[],
  surfaces: readonly SurfaceId[],
): readonly MaterialPoint[] {
  // Most of a library is neither.
  if (!isWood(candidate.finish) && !(surfaces.some(isLarge) && isBusy(candidate.finish, candidate.colors))) return NONE;
  const beside = held.filter(({ finish, isApart }) => finish.id !== candidate.finish.id && !isApart);
  return [
    ...pointOf(
      'pattern',
      beside.filter((one) => compete(candidate, one, surfaces)),
    ),
    ...pointOf(
      'wood',
      beside.filter((one) => nearlyMatch(candidate, one)),
    ),
  ];
}

const compete = (candidate: Candidate, held: HeldSurface, surfaces: readonly SurfaceId[]): boolean =>
  isLarge(held.surface) &&
  surfaces.some(isLarge) &&
  isBusy(held.finish, held.colors) &&
  isBusy(candidate.finish, candidate.colors) &&
  areSizesAlike(candidate.finish, held.finish);

const nearlyMatch = (candidate: Candidate, held: HeldSurface): boolean =>
  !isFitting(held.surface) &&
  isWood(held.finish) &&
  isWood(candidate.finish) &&
  isNearMiss(candidate.colors, held.colors);

function pointOf(kind: MaterialPoint['kind'], held: readonly HeldSurface[]): MaterialPoint[] {
  if (held.length === 0) return [];
  const surfaces = inDecisionOrder(held.map(({ surface }) => surface));
  const there = surfacesPhrase(spokenOf(surfaces)).text;
  const text =
    kind === 'pattern'
      ? `Its busy pattern may compete with that of ${there}: one leads best.`
      : `It is nearly the wood of ${there}, and may look like a match that failed: compare boards.`;
  return [{ kind, surfaces, finishes: [...new Set(held.map(({ finish }) => finish.id))], text }];
}
