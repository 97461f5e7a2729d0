import type { FinishClass } from '../../engine/finish/types';
import type { ComponentRecord } from '../../engine/judge/assessment';
import type { Wish } from '../../engine/judge/shortlist/wish';
import { codeOf } from '../../model/merge-finishes';
import type { Finish } from '../../model/project';
import { isFound, searchable } from '../../model/search-words';
import { SHEENS, type SheenId } from '../../model/sheens';
import { undertoneLabel } from '../words/findings';
import { CLASS_WORDS } from '../words/finishes';
import { knownFacts } from './known-facts';

/** What is shown of a library; an empty text or `all` hides nothing. */
export interface FinishFilters {
  readonly search: string;
  readonly kind: FinishClass | 'all';
  /** Light reflectance value as typed. */
  readonly lrvFrom: string;
  readonly lrvTo: string;
  readonly sheen: SheenId | 'all';
  readonly price: string;
  readonly available: string;
  /** Empty: any. */
  readonly tag: string;
}

export const NO_FILTERS: FinishFilters = {
  search: '',
  kind: 'all',
  lrvFrom: '',
  lrvTo: '',
  sheen: 'all',
  price: 'all',
  available: 'all',
  tag: '',
};

/** Whether a finish passes. One whose figure is not known yet is shown. */
export function passes(finish: Finish, filters: FinishFilters): boolean {
  const { kind, sheen, price, available, tag } = filters;
  if (kind !== 'all' && finish.class !== kind) return false;
  if (price !== 'all' && finish.supply?.price_band !== price) return false;
  if (available !== 'all' && finish.supply?.availability !== available) return false;
  if (tag !== '' && !finish.tags?.includes(tag)) return false;
  const range = SHEENS.find(({ id }) => id === sheen);
  if (range && (finish.gloss_gu < range.from || finish.gloss_gu > range.to)) return false;
  return isInLrv(finish, filters) && fits(finish, filters.search);
}

/** Whether it takes more than what is given of a finish to tell if it passes. */
export const asksFacts = ({ search, lrvFrom, lrvTo }: FinishFilters): boolean =>
  search.trim() !== '' || lrvFrom !== '' || lrvTo !== '';

function isInLrv(finish: Finish, { lrvFrom, lrvTo }: FinishFilters): boolean {
  const lrv = knownFacts(finish)?.lrv;
  if (lrv === undefined) return true;
  const { from, to } = lrvRange(lrvFrom, lrvTo);
  return lrv >= from && lrv <= to;
}

/** A range of LRV as typed; what cannot be read as a number sets no bound. */
export const lrvRange = (from: string, to: string): { readonly from: number; readonly to: number } => ({
  from: numberOf(from, 0),
  to: numberOf(to, 100),
});

function numberOf(text: string, otherwise: number): number {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() === '' || !Number.isFinite(value) ? otherwise : Math.min(100, Math.max(0, value));
}

/** How many filters are set, the search apart. */
export const filterCount = (filters: FinishFilters): number => wishesOf(filters).length + (filters.tag === '' ? 0 : 1);

/** The filters as wishes: what they would hide comes later instead. The search and tags look for words and are none. */
export function wishesOf({ kind, lrvFrom, lrvTo, sheen, price, available }: FinishFilters): readonly Wish[] {
  const range = lrvRange(lrvFrom, lrvTo);
  const gloss = SHEENS.find(({ id }) => id === sheen);
  return [
    ...(kind === 'all' ? [] : [{ kind: 'class', class: kind } as const]),
    ...(range.from > 0 || range.to < 100 ? [{ kind: 'lrv', ...range } as const] : []),
    ...(gloss ? [{ kind: 'sheen', from: gloss.from, to: gloss.to } as const] : []),
    ...(price === 'all' ? [] : [{ kind: 'price', bands: [price] } as const]),
    ...(available === 'all' ? [] : [{ kind: 'availability', words: available } as const]),
  ];
}

/** Whether a finish has every word of a search, in the trade's words and spellings of either country. */
export const fits = (finish: Finish, search: string): boolean =>
  search.trim() === '' || isFound(search, searchText(finish));

const texts = new WeakMap<Finish, { readonly facts: ComponentRecord | null; readonly text: string }>();

/** What a search looks through, put together once. */
function searchText(finish: Finish): string {
  const facts = knownFacts(finish);
  const before = texts.get(finish);
  if (before?.facts === facts) return before.text;
  const { label, id, tags = [], origin, supply } = finish;
  const words = [
    label,
    id,
    codeOf(finish),
    CLASS_WORDS[finish.class],
    facts && undertoneLabel(facts),
    supply?.supplier,
    origin?.name,
    ...tags,
  ];
  const text = searchable(words.filter(Boolean).join(' '));
  texts.set(finish, { facts, text });
  return text;
}
