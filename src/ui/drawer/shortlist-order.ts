import type { ShortlistOutline, ShortlistRow } from '../../engine/judge/shortlist/types';
import { wishSentence } from '../../engine/judge/shortlist/wishes';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { basisWords, SHORTLIST } from '../words/shortlist';

export type SectionId = keyof typeof SHORTLIST.sections;

/** Which finish stands where in the list: kept while a drawer is open, for a list that moves under the finger cannot be gone back in. */
export type ShortlistOrder = readonly { readonly finish: string; readonly section: SectionId }[];

const SECTIONS: readonly SectionId[] = ['free', 'clear', 'compare', 'part', 'rejected', 'not-made'];

/** A part of a list with a heading of its own. */
export interface FinishSection {
  readonly id: string;
  /** Null: the only one, which needs no name. */
  readonly title: string | null;
  readonly finishes: readonly Finish[];
}

type Outline = Pick<ShortlistOutline, 'accepted' | 'groups' | 'rejected' | 'codes' | 'held_against'>;

export function orderOf({ accepted, groups, rejected, codes, held_against }: Outline): ShortlistOrder {
  const isFree = held_against.length === 0;
  return [
    ...accepted.map((finish, i) => ({ finish, section: isFree ? ('free' as const) : groups[i]! })),
    ...rejected.map((finish, i) => ({
      finish,
      section: codes[i] === 'not-made-for-it' ? ('not-made' as const) : ('rejected' as const),
    })),
  ];
}

/** The kept order holds still: as the list is now, but for finishes that came since. */
export function isSameOrder(kept: ShortlistOrder, now: ShortlistOrder): boolean {
  const known = new Map(kept.map(({ finish, section }) => [finish, section]));
  const old = now.filter(({ finish }) => known.has(finish));
  return (
    old.length === kept.length &&
    old.every((row, i) => row.finish === kept[i]!.finish && row.section === kept[i]!.section)
  );
}

/**
 * The sections of a list in a kept order. A finish that came since stands first in its section, a whole library last.
 * @param now the order as it is now
 * @param library finishes that are shown, by id
 * @param isFilled what came since is a library
 */
export function sectionsOf(
  kept: ShortlistOrder,
  now: ShortlistOrder,
  library: ReadonlyMap<string, Finish>,
  isFilled = false,
): readonly FinishSection[] {
  const before = new Set(kept === now ? [] : kept.map(({ finish }) => finish));
  const there = new Set(kept === now ? [] : now.map(({ finish }) => finish));
  const still = kept.filter(({ finish }) => there.has(finish));
  const came = kept === now ? [] : now.filter(({ finish }) => !before.has(finish));
  const all = kept === now ? now : isFilled ? [...still, ...came] : [...came, ...still];
  const finishes = new Map(SECTIONS.map((section) => [section, [] as Finish[]]));
  for (const { finish: id, section } of all) {
    const finish = library.get(id);
    if (finish) finishes.get(section)!.push(finish);
  }
  return SECTIONS.flatMap((id) => {
    const its = finishes.get(id)!;
    return its.length === 0 ? [] : [{ id, title: SHORTLIST.sections[id], finishes: its }];
  });
}

/** What is said of a finish in the list. */
export interface RowWords {
  /** Why it stands there, in a line. */
  readonly reason?: string;
  /** How it was judged. */
  readonly mark?: string;
  /** What it makes of the wishes. */
  readonly wishes?: string;
  readonly isRejected?: boolean;
  /** Settled surfaces that the reason speaks of. */
  readonly beside?: readonly SurfaceId[];
}

export function wordsOf(row: ShortlistRow): RowWords {
  if ('reason' in row) {
    const isNotMade = row.code === 'not-made-for-it';
    return {
      reason: row.reason,
      ...(isNotMade ? {} : { mark: basisWords(row) }),
      isRejected: true,
      beside: row.beside,
    };
  }
  const wishes = row.wishes.length > 0 ? wishSentence(row.wishes) : null;
  // The wishes have a line of their own.
  const reason = row.reasons.find((one) => one !== wishes);
  return {
    ...(reason === undefined ? {} : { reason }),
    ...(wishes && { wishes }),
    mark: basisWords(row),
    beside: row.beside,
  };
}
