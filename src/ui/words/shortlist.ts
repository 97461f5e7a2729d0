import type { AcceptedFinish, RejectedFinish } from '../../engine/judge/shortlist/types';

/** Words of the shortlist in the drawer. */
export const SHORTLIST = {
  order: 'Order',
  orders: { fit: 'By fit', library: 'Library' },
  waiting: (count: number) => `Holding ${count} finishes against what is settled.`,
  judging: 'Judging the best in place…',
  again: 'Order again',
  changed: 'Judged in place, some stand elsewhere now.',
  fixed: 'Fixed: it stays, so nothing is shortlisted. This is the plain library.',
  sections: {
    clear: 'Nothing settled clashes with these',
    free: 'All that is made for it',
    compare: 'May clash: compare samples',
    part: 'A vein, fleck or fitting clashes: look before you choose',
    rejected: 'Rejected',
    'not-made': 'Not usually made for it',
  },
  more: 'More filters',
  lrvFrom: 'LRV from',
  lrvTo: 'LRV to',
  sheen: 'Sheen',
  anySheen: 'Any sheen',
  price: 'Price',
  anyPrice: 'Any price',
  available: 'Availability',
  anyAvailable: 'Any',
  notMade: (count: number) => `Show what is not usually made for it (${count})`,
  clear: 'Clear filters',
  why: 'Why',
  whyOf: (label: string) => `Why: ${label}`,
  back: 'Back to the list',
  lay: 'Lay it',
  asked: 'Looking it up…',
  numbers: 'Numbers',
  lies: 'It lies there now.',
  inPlace: 'in place',
  asSample: 'as sample',
  whyKey: 'The question mark key tells all reasons.',
} as const;

/** How a finish was judged, short enough for a list. */
export const basisWords = ({ basis }: Pick<AcceptedFinish | RejectedFinish, 'basis'>): string =>
  basis === 'installed' ? SHORTLIST.inPlace : SHORTLIST.asSample;
