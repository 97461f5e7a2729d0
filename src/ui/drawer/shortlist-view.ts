import type { ShortlistOutline, ShortlistRow } from '../../engine/judge/shortlist/types';
import type { WhyPoint } from '../../engine/judge/shortlist/why';
import type { Finish } from '../../model/project';
import { NO_FILTERS, passes } from './finish-filters';
import { isOwn } from './own-finish';
import { type FinishSection, type ShortlistOrder, sectionsOf } from './shortlist-order';

/** A shortlist on screen. */
export interface ShortlistView {
  readonly list: ShortlistOutline;
  /** The order as it is shown, and as it would be now. */
  readonly order: ShortlistOrder;
  readonly orderNow: ShortlistOrder;
  /** The list would now stand in another order. */
  readonly isOrderOld: boolean;
  /** The best are being judged in their place. */
  readonly isJudging: boolean;
  readonly onOrderAgain: () => void;
  /** What is said of a finish; null until it was asked for. */
  readonly rowOf: (finish: string) => ShortlistRow | null;
  /** Asks for what is said of finishes that came into sight. */
  readonly askRows: (finishes: readonly string[]) => void;
  readonly readWhy: (finish: string) => Promise<readonly WhyPoint[] | null>;
}

/** What there is to show in place of a shortlist: `fixed` where what lies there stays, `untold` where nothing can be told. */
export type NoShortlist = 'fixed' | 'untold';

/** How one looks through the library; for as long as a drawer is open. */
export const START_VIEW = { filters: NO_FILTERS, order: 'fit' as 'fit' | 'library', showsNotMade: false };
export type LibraryLook = Readonly<typeof START_VIEW>;

/** The finishes of a surface as one looks through them. */
export interface ShownLibrary {
  /** All that filters choose among. */
  readonly all: readonly Finish[];
  readonly shown: readonly Finish[];
  /** How many are left out as not usually made for it. */
  readonly notMade: number;
  readonly sections: readonly FinishSection[];
}

/**
 * What is shown of a library. What lies there, what is on trial and what one typed in oneself is always in the list.
 * @param candidates the same finishes as a plain library has them
 * @param kept finishes that stay in sight
 */
export function shownLibrary(
  shortlist: Pick<ShortlistView, 'list' | 'order' | 'orderNow'> | null,
  library: readonly Finish[],
  candidates: readonly Finish[],
  { filters, order, showsNotMade }: LibraryLook,
  kept: readonly string[],
): ShownLibrary {
  const passing = (all: readonly Finish[]) => all.filter((finish) => passes(finish, filters));
  const notMade = shortlist?.list.rejected.filter((_, i) => shortlist.list.codes[i] === 'not-made-for-it') ?? [];
  if (!shortlist || order === 'library') {
    const shown = passing(candidates);
    const sections = [{ id: 'library', title: null, finishes: shown }];
    return { all: candidates, shown, notMade: notMade.length, sections };
  }
  const isUnfit = new Set(notMade.filter((id) => !kept.includes(id)));
  const all = library.filter((finish) => showsNotMade || !isUnfit.has(finish.id) || isOwn(finish));
  const shown = passing(all);
  const byId = new Map(shown.map((finish) => [finish.id, finish]));
  const sections = sectionsOf(shortlist.order, shortlist.orderNow, byId);
  return { all, shown, notMade: notMade.length, sections };
}
