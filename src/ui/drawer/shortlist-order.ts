import type { AcceptedFinish, RejectedFinish, Shortlist } from '../../engine/judge/shortlist/types';
import { wishSentence } from '../../engine/judge/shortlist/wishes';
import type { Finish } from '../../model/project';
import { basisWords, SHORTLIST } from '../words/shortlist';
import type { FinishRow, FinishSection } from './FinishBox';

export type SectionId = keyof typeof SHORTLIST.sections;

/** Which finish stands where in the list: kept while a drawer is open, for a list that moves under the finger cannot be gone back in. */
export type ShortlistOrder = readonly { readonly finish: string; readonly section: SectionId }[];

const SECTIONS: readonly SectionId[] = ['free', 'clear', 'compare', 'part', 'rejected', 'not-made'];

export function orderOf({ accepted, rejected, held_against }: Shortlist): ShortlistOrder {
  const isFree = held_against.length === 0;
  return [
    ...accepted.map(({ finish, group }) => ({ finish, section: isFree ? ('free' as const) : group })),
    ...rejected.map(({ finish, code }) => ({
      finish,
      section: code === 'not-made-for-it' ? ('not-made' as const) : ('rejected' as const),
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

type Told = AcceptedFinish | RejectedFinish;

/**
 * The sections of a list in a kept order, with what is said of each finish now. A finish that came since stands first in its section.
 * @param library finishes that are shown, by id
 */
export function sectionsOf(
  order: ShortlistOrder,
  list: Shortlist,
  library: ReadonlyMap<string, Finish>,
): readonly FinishSection[] {
  const told = new Map<string, Told>([...list.accepted, ...list.rejected].map((row) => [row.finish, row]));
  const known = new Set(order.map(({ finish }) => finish));
  const all = [...orderOf(list).filter(({ finish }) => !known.has(finish)), ...order];
  return SECTIONS.flatMap((section) => {
    const rows = all.flatMap((one): FinishRow[] => {
      const finish = library.get(one.finish);
      const row = told.get(one.finish);
      return one.section === section && finish && row ? [rowOf(finish, row)] : [];
    });
    return rows.length === 0 ? [] : [{ id: section, title: SHORTLIST.sections[section], rows }];
  });
}

function rowOf(finish: Finish, row: Told): FinishRow {
  if ('reason' in row) {
    const isNotMade = row.code === 'not-made-for-it';
    return {
      finish,
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
    finish,
    ...(reason === undefined ? {} : { reason }),
    ...(wishes && { wishes }),
    mark: basisWords(row),
    beside: row.beside,
  };
}
