import type { FinishClass } from '../../engine/finish/types';
import type { Finish } from '../../model/project';
import { undertoneLabel } from '../words/findings';
import { CLASS_WORDS } from '../words/finishes';
import { knownFacts } from './finish-facts';

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
}

export const NO_FILTERS: FinishFilters = {
  search: '',
  kind: 'all',
  lrvFrom: '',
  lrvTo: '',
  sheen: 'all',
  price: 'all',
  available: 'all',
};

/** Gloss units at 60 degrees by the words in use here; the words are loose, the numbers count. */
export const SHEENS = [
  { id: 'flat', words: 'Flat, to 5 GU', from: 0, to: 5 },
  { id: 'matte', words: 'Matte, 5 to 10 GU', from: 5, to: 10 },
  { id: 'low', words: 'Low sheen, 10 to 20 GU', from: 10, to: 20 },
  { id: 'satin', words: 'Satin, 20 to 35 GU', from: 20, to: 35 },
  { id: 'semi', words: 'Semi-gloss, 35 to 70 GU', from: 35, to: 70 },
  { id: 'gloss', words: 'Gloss, from 70 GU', from: 70, to: 100 },
] as const;
export type SheenId = (typeof SHEENS)[number]['id'];

/** Whether a finish passes. One whose figure is not known yet is shown. */
export function passes(finish: Finish, filters: FinishFilters): boolean {
  const { kind, sheen, price, available } = filters;
  if (kind !== 'all' && finish.class !== kind) return false;
  if (price !== 'all' && finish.supply?.price_band !== price) return false;
  if (available !== 'all' && finish.supply?.availability !== available) return false;
  const range = SHEENS.find(({ id }) => id === sheen);
  if (range && (finish.gloss_gu < range.from || finish.gloss_gu > range.to)) return false;
  return isInLrv(finish, filters) && fits(finish, filters.search.trim().toLowerCase());
}

function isInLrv(finish: Finish, { lrvFrom, lrvTo }: FinishFilters): boolean {
  const lrv = knownFacts(finish)?.lrv;
  if (lrv === undefined) return true;
  const [from, to] = [numberOf(lrvFrom, 0), numberOf(lrvTo, 100)];
  return lrv >= from && lrv <= to;
}

/** What cannot be read as a number hides nothing. */
function numberOf(text: string, otherwise: number): number {
  const value = Number(text.trim().replace(',', '.'));
  return text.trim() === '' || !Number.isFinite(value) ? otherwise : value;
}

function fits(finish: Finish, search: string): boolean {
  if (!search) return true;
  const facts = knownFacts(finish);
  const text = `${finish.label} ${CLASS_WORDS[finish.class]} ${facts ? undertoneLabel(facts) : ''}`.toLowerCase();
  return search.split(/\s+/).every((word) => text.includes(word));
}
