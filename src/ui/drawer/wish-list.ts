import type { Wish } from '../../engine/judge/shortlist/wish';
import { type FinishFilters, wishesOf } from './finish-filters';

/** Wishes of one key say the same thing of a finish: a new one takes the place of the old. */
const keyOf = (wish: Wish): string => ('surface' in wish ? `${wish.kind} ${wish.surface}` : wish.kind);

/** The wishes with another one, last of all, or in the place of the one it says anew. */
export function withWish(wishes: readonly Wish[], wish: Wish): readonly Wish[] {
  const at = wishes.findIndex((one) => keyOf(one) === keyOf(wish));
  return at < 0 ? [...wishes, wish] : wishes.with(at, wish);
}

/** The wishes with what filters ask for, which then hide nothing. */
export const withWishesOf = (wishes: readonly Wish[], filters: FinishFilters): readonly Wish[] =>
  wishesOf(filters).reduce(withWish, wishes);

/** The wishes with the one at a place a step further up. */
export const withEarlier = (wishes: readonly Wish[], at: number): readonly Wish[] =>
  at < 1 ? wishes : wishes.with(at - 1, wishes[at]!).with(at, wishes[at - 1]!);
