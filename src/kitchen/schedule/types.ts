import type { LabTriple } from '../../engine/judge/assessment';
import type { DecisionState, SurfaceId } from '../../engine/surface';
import type { Day } from '../../model/order/day';
import type { Delivery, ItemRecord, Lot, SampleStatus } from '../../model/order/records';
import type { FittingStage, Stage } from '../../model/order/stages';
import type { Finish, Laying } from '../../model/project';
import type { Order } from '../../model/quantity/order';
import type { SlabLayout, SlabNoun } from '../../model/quantity/slab-types';
import type { PurchaseKind } from '../../model/quantity/usual-waste';
import type { MeasuredPart } from '../takeoff/types';

/** What is ordered as one: one finish for one purpose, put in at one stage, equally settled. */
export interface ScheduleItem {
  /** The tag of its first surface; of grout with a G behind. */
  readonly id: string;
  readonly kind: PurchaseKind;
  readonly surfaces: readonly SurfaceId[];
  /** Null: nothing is chosen yet. */
  readonly finish: Finish | null;
  /** Of the first surface. */
  readonly laying: Laying;
  readonly state: DecisionState;
  readonly stage: FittingStage;
}

/** What one has to know of a row before one orders by it. */
export interface RowProblem {
  readonly code:
    | 'no-finish'
    | 'measures-nothing'
    | 'slab-too-small'
    | 'seam-place'
    | 'seams-unmatched'
    | 'no-panel-size'
    | 'no-pack'
    | 'no-price'
    | 'price-for-other-unit'
    | 'no-lead-time'
    | 'order-by-passed'
    | 'no-order-date'
    | 'delivery-differs'
    | 'delivery-rejected'
    | 'changed-since-approved'
    | 'ordered-but-open'
    | 'partly-open'
    | 'changed-since-offered'
    | 'no-grout';
  readonly text: string;
}

/** How much is bought, and what it rests on. */
export interface ItemQuantity {
  /** Area of one face, m2; of what is counted 0. */
  readonly area_m2: number;
  /** What is needed before waste, in `net_measure`. */
  readonly net: number;
  readonly net_measure: Order['measure'];
  readonly waste_percent: number;
  readonly order: Order;
  /** Each in a sentence, in meters and millimeters. */
  readonly rests_on: readonly string[];
  /** What is made or cut, where that is more than a field. */
  readonly parts: readonly MeasuredPart[];
  readonly slabs: (SlabLayout & { readonly slab_mm: readonly [number, number]; readonly noun: SlabNoun }) | null;
}

/** A quantity, or why there is none, with what one has to know of it. */
export interface Counted {
  readonly quantity: ItemQuantity | null;
  readonly problems: readonly RowProblem[];
}

export interface RowColor {
  readonly role: string;
  readonly share: number;
  /** CIELAB, D65, 2 degrees. */
  readonly lab_d65: LabTriple;
  readonly lrv: number;
  /** As it was given, with its light and observer. */
  readonly given: string;
  readonly provenance: Finish['provenance'];
  readonly uncertainty_de00: number;
}

/** A row of the schedule: plain data, the same for screen, print, table and command line. */
export interface ScheduleRow {
  readonly id: string;
  readonly kind: PurchaseKind | 'extra';
  readonly surfaces: readonly SurfaceId[];
  readonly stage: FittingStage;
  readonly room: string;
  readonly location: string;
  readonly element: string;
  /** What is said of the item; empty where nothing is chosen. */
  readonly item: string;
  readonly finish: string | null;
  readonly class: Finish['class'] | null;
  readonly colors: readonly RowColor[];
  /** Of the area mean, D65, 10 degrees. */
  readonly lrv: number | null;
  readonly gloss_gu: number | null;
  readonly size_mm: readonly [number, number] | null;
  readonly thickness_mm: number | null;
  readonly edge: string | null;
  readonly layout: Laying['layout'] | null;
  readonly start: 'centered' | 'corner' | null;
  readonly direction_deg: number | null;
  readonly joint_mm: number | null;
  readonly grout: string | null;
  /** Null: stays as it is, or nothing can be said. */
  readonly quantity: ItemQuantity | null;
  /** How much somebody wrote of what no surface shows, in a unit of their own; null where they wrote nothing, and for all else. */
  readonly written: { readonly amount: number; readonly unit: string | null } | null;
  readonly supplier: string | null;
  readonly code: string | null;
  readonly lot: Lot | null;
  readonly unit_price: {
    readonly amount: number;
    readonly currency: string | null;
    readonly per: string | null;
  } | null;
  /** A mark of what the row was when somebody named a price for all of it; null where nobody did. */
  readonly priced_for: string | null;
  readonly total: { readonly amount: number; readonly currency: string | null } | null;
  readonly lead_time_weeks: number | null;
  readonly needed_on: Day | null;
  readonly order_by: Day | null;
  readonly ordered_on: Day | null;
  readonly sample: SampleStatus | null;
  readonly delivery: Delivery | null;
  readonly note: string | null;
  readonly care: readonly string[];
  readonly cautions: readonly string[];
  /** The frozen revision since which it stands so; null: in none yet. */
  readonly revision: string | null;
  readonly state: DecisionState;
  readonly approved: ItemRecord['approved'] | null;
  /** A mark of what is ordered, where, how laid and how much: what an approval is given for. */
  readonly spec: string;
  readonly problems: readonly RowProblem[];
}

export interface ScheduleProblem {
  readonly code: 'no-start-day';
  readonly text: string;
}

/** A row of a frozen revision that is not so any more. */
export interface SupersededRow {
  readonly id: string;
  /** The last revision that had it. */
  readonly revision: string;
  readonly surfaces: readonly SurfaceId[];
  readonly element: string;
  readonly item: string;
  /** What was ordered of it; null where nothing was. */
  readonly order: Order | null;
  readonly approved: ScheduleRow['approved'];
}

export interface Schedule {
  readonly project: string;
  readonly option: string;
  readonly rows: readonly ScheduleRow[];
  readonly superseded: readonly SupersededRow[];
  /** The first day of each stage; null where no first day of installing is known. */
  readonly days: { readonly [S in Stage]: Day } | null;
  /** What holds for all rows. */
  readonly problems: readonly ScheduleProblem[];
}
