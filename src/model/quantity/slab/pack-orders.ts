import { mulberry32 } from '../../../engine/random';
import type { FirstCut } from './pack-offcuts';
import type { Lies } from './packing';

/** Ways to cut first what is left beside a part. */
export const FIRST_CUTS: readonly FirstCut[] = ['along', 'shorter', 'longer', 'across'];
/** Orders tried beside the sorted ones; drawn with one seed, so that the same parts give the same slabs. */
const DRAWN_ORDERS = 30;
const SEED = 1;

/** Orders in which to lay parts: sorted ones first, then some that are drawn. */
export function* triedOrders(parts: readonly Lies[]): Generator<readonly number[]> {
  yield* sortedOrders(parts);
  const random = mulberry32(SEED);
  for (let i = 0; i < DRAWN_ORDERS; i++) yield drawnOrder(parts.length, random);
}

/** Widest, longest, largest first; where two are equal, in the order given. */
export function sortedOrders(parts: readonly Lies[]): readonly (readonly number[])[] {
  const by = (value: (lie: Lies[number]) => number, then: (lie: Lies[number]) => number): readonly number[] =>
    parts
      .map((_, i) => i)
      .sort((a, b) => {
        const [one, other] = [parts[a]![0]!, parts[b]![0]!];
        return value(other) - value(one) || then(other) - then(one) || a - b;
      });
  const along = ({ along }: Lies[number]): number => along;
  const across = ({ across }: Lies[number]): number => across;
  const area = (lie: Lies[number]): number => lie.along * lie.across;
  return [by(across, along), by(along, across), by(area, along)];
}

function drawnOrder(count: number, random: () => number): readonly number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
