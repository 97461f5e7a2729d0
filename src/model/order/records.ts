import type { Price, PriceUnit } from '../price';
import type { Day } from './day';
import type { FittingStage, Stage } from './stages';

/** Whom the work is for and when: kept with a project, never in a link. */
export interface Job {
  readonly prepared_for?: string;
  readonly prepared_by?: string;
  readonly place?: string;
  /** What is wanted, in a few sentences. */
  readonly brief?: string;
  /** First day of installing. */
  readonly starts_on?: Day;
  /** Days between a delivery and its need; `USUAL_MARGIN_DAYS` where absent. */
  readonly margin_days?: number;
  /** Days each stage takes; `USUAL_STAGE_DAYS` where absent. */
  readonly stage_days?: { readonly [S in Stage]?: number };
}

/** What tells one production run, one slab from another: as boxes, cans and slabs say it. */
export interface Lot {
  readonly batch?: string;
  readonly shade?: string;
  readonly calibre?: string;
  readonly slabs?: string;
}

/** What came, held against what was agreed. */
export interface Delivery extends Lot {
  readonly on: Day;
  readonly by?: string;
  readonly outcome: 'accepted' | 'rejected';
  readonly note?: string;
}

/** What an item was offered for: one of something, or all of it, as who cuts and lays names it. */
export interface ItemPrice extends Omit<Price, 'per'> {
  readonly per?: PriceUnit | 'all';
  /** A mark of what the row was when all of it was offered for this. */
  readonly of?: string;
}

/**
 * What is said of one item of an option's schedule beyond its finish and its laying. It is said of `finish` alone: another finish under
 * the same tag begins anew.
 */
export interface ItemRecord {
  readonly item: string;
  readonly finish: string;
  readonly waste_percent?: number;
  readonly spare_packs?: number;
  /** From whom, under which code, in which packs ("box of 1.2 m2") and for how much: instead of what the finish says. */
  readonly supplier?: string;
  readonly code?: string;
  readonly unit?: string;
  readonly price?: ItemPrice;
  /** Instead of the finish's own. */
  readonly lead_time_weeks?: number;
  /** Instead of the first day of its stage. */
  readonly needed_on?: Day;
  readonly ordered_on?: Day;
  readonly lot?: Lot;
  readonly delivery?: Delivery;
  /** `of`: a mark of what the row was when it was approved. */
  readonly approved?: { readonly by: string; readonly on: Day; readonly of?: string };
  readonly note?: string;
}

/** Something to order that no surface shows: primer, sealer, trim, clips. */
export interface ExtraItem {
  /** X1, X2, ... */
  readonly id: string;
  readonly what: string;
  readonly where?: string;
  readonly quantity?: number;
  readonly unit?: string;
  readonly supplier?: string;
  readonly code?: string;
  readonly price?: Price;
  readonly lead_time_weeks?: number;
  readonly stage: FittingStage;
  readonly ordered_on?: Day;
  readonly note?: string;
}

export const SAMPLE_STATUSES = ['wanted', 'ordered', 'received', 'approved', 'rejected'] as const;
export type SampleStatus = (typeof SAMPLE_STATUSES)[number];

/** What somebody found who looked at a sample in one light. */
export interface SampleVerdict {
  readonly light: string;
  readonly by: string;
  readonly on: Day;
  readonly verdict: 'holds' | 'fails' | 'unsure';
  readonly note?: string;
}

/** A physical sample of a finish. */
export interface SampleRecord {
  readonly finish: string;
  readonly status: SampleStatus;
  /** When it came to be so. */
  readonly on?: Day;
  readonly batch?: string;
  readonly verdicts: readonly SampleVerdict[];
}
