import type { ShortlistOutline, ShortlistRow } from '../../engine/judge/shortlist/types';
import type { WhyPoint } from '../../engine/judge/shortlist/why';
import type { Finish } from '../../model/project';
import { SHORTLIST } from '../words/shortlist';
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
  /** How many finishes are not in it yet. */
  readonly pending: number;
  /** Many came once the order was there: they stand behind the others of their part. */
  readonly isFilled: boolean;
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

/** Where finishes come from: anywhere, the project itself; else the id of a library. */
export const ALL = 'all';
export const PROJECT = 'project';

/** How one looks through the library; for as long as a drawer is open. */
export const START_VIEW = { filters: NO_FILTERS, order: 'fit' as 'fit' | 'library', showsNotMade: false, from: ALL };
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
 * @param own the project's own finishes
 * @param unsure those of the candidates whose size is not said; a plain library has them apart
 */
export function shownLibrary(
  shortlist: Pick<ShortlistView, 'list' | 'order' | 'orderNow' | 'pending' | 'isFilled'> | null,
  library: readonly Finish[],
  candidates: readonly Finish[],
  { filters, order, showsNotMade, from }: LibraryLook,
  kept: readonly string[],
  own: ReadonlySet<Finish>,
  unsure: ReadonlySet<string> = NONE,
): ShownLibrary {
  const isFrom = (finish: Finish) =>
    from === ALL || (from === PROJECT ? own.has(finish) : finish.origin?.library === from);
  const passing = (all: readonly Finish[]) => all.filter((finish) => isFrom(finish) && passes(finish, filters));
  const notMade = shortlist?.list.rejected.filter((_, i) => shortlist.list.codes[i] === 'not-made-for-it') ?? [];
  if (!shortlist || order === 'library') {
    const others = shortlist ? [] : notCandidates(library, candidates);
    const all = showsNotMade ? [...candidates, ...others] : candidates;
    const shown = passing(all);
    return { all, shown, notMade: shortlist ? notMade.length : others.length, sections: plain(shown, unsure, others) };
  }
  const isUnfit = new Set(notMade.filter((id) => !kept.includes(id)));
  // What is not held against anything yet comes once it is.
  const there = new Set(shortlist.orderNow.map(({ finish }) => finish));
  const all = library.filter(
    (finish) => there.has(finish.id) && (showsNotMade || !isUnfit.has(finish.id) || isOwn(finish)),
  );
  const shown = passing(all);
  const byId = new Map(shown.map((finish) => [finish.id, finish]));
  const sections = sectionsOf(shortlist.order, shortlist.orderNow, byId, shortlist.isFilled);
  return { all, shown, notMade: notMade.length, sections };
}

const NONE: ReadonlySet<string> = new Set();

/** What a plain library leaves out; grout is never laid by itself. */
function notCandidates(library: readonly Finish[], candidates: readonly Finish[]): readonly Finish[] {
  const there = new Set(candidates);
  return library.filter((finish) => finish.class !== 'grout' && !there.has(finish));
}

/** A plain library in parts: what is made for the surface, what may be, and what is not usually. */
function plain(
  shown: readonly Finish[],
  unsure: ReadonlySet<string>,
  notMade: readonly Finish[],
): readonly FinishSection[] {
  const isOther = new Set(notMade);
  const part = (finish: Finish) => (isOther.has(finish) ? 'not-made' : unsure.has(finish.id) ? 'unsure' : 'library');
  return PLAIN_PARTS.map((id) => ({
    id,
    title: id === 'library' ? null : SHORTLIST.sections[id],
    finishes: shown.filter((finish) => part(finish) === id),
  })).filter(({ id, finishes }) => id === 'library' || finishes.length > 0);
}

const PLAIN_PARTS = ['library', 'unsure', 'not-made'] as const;
