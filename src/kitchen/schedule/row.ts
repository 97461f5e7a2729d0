import { joined, surfaceName } from '../../engine/judge/surface-words';
import type { Caution } from '../../model/cautions';
import type { Kitchen } from '../../model/kitchen';
import { asBought } from '../../model/order/own-supply';
import { recordOfItem } from '../../model/order/record-of';
import type { ItemRecord, SampleRecord } from '../../model/order/records';
import { panelSizeOf } from '../../model/panel';
import type { Finish, Option, Supply } from '../../model/project';
import { costOf } from '../../model/quantity/cost';
import { slabSizeOf } from '../../model/slab';
import { deliveryDifferences } from './delivery-differences';
import { itemQuantity, sizeOfOne } from './item-quantity';
import type { Measured } from './measured';
import { elementOf, locationOf } from './place-words';
import { careOf, rowCautions } from './row-cautions';
import { rowColors } from './row-colors';
import { type Calendar, neededAt, rowDates } from './row-dates';
import type { BareRow } from './row-spec';
import type { Counted, RowProblem, ScheduleItem, ScheduleRow } from './types';

/** What rows are made from besides their items. */
export interface RowBasis {
  readonly kitchen: Kitchen;
  readonly measured: Measured;
  readonly calendar: Calendar;
  readonly cautions: readonly Caution[];
  readonly samples: readonly SampleRecord[];
}

const WORDS = {
  noFinish: 'Nothing is chosen yet.',
  noPrice: 'No price is known.',
  otherUnit: (per: string) => `The price is per ${per}, which the quantity cannot be told in.`,
  noOrderDate: 'It is ordered, but not said when.',
  orderedButOpen: (day: string, state: string) => `It was ordered on ${day}, but its state says ${state}.`,
  rejected: 'What came was rejected.',
  partlyOpen: (surfaces: string) => `Still open: ${surfaces}.`,
  noGrout: 'No grout is chosen for its joints.',
};

/** The row of an item. `revision` is added where revisions are looked through. */
export function rowOf(planned: ScheduleItem, basis: RowBasis): BareRow {
  const record = recordOfItem(planned, planned.finish?.id, basis.measured.option.items);
  const item = { ...planned, finish: planned.finish && asBought(planned.finish, record) };
  const { finish, laying, kind, stage, state, surfaces } = item;
  const { quantity, problems } = itemQuantity(item, record, basis.measured);
  const colors = finish ? rowColors(finish) : { colors: [], lrv: null };
  const supply: Supply = finish?.supply ?? {};
  const isBought = finish !== null && state !== 'fixed';
  const weeks = record?.lead_time_weeks ?? supply.lead_time_weeks;
  const ordered_on = record?.ordered_on;
  const dates =
    isBought && state !== 'ordered'
      ? rowDates(kind, neededAt(surfaces, stage, basis.calendar), weeks, record ?? {}, basis.calendar)
      : { needed_on: null, order_by: null, problems: [] };
  const cost = priceOf(isBought ? finish : null, record?.price, quantity);
  const isLaid = kind === 'tiles' || kind === 'boards';
  return {
    id: item.id,
    kind,
    surfaces,
    stage,
    room: basis.kitchen.name,
    location: locationOf(basis.kitchen, surfaces),
    element: elementOf(item),
    item: finish?.label ?? '',
    finish: finish?.id ?? null,
    class: finish?.class ?? null,
    colors: colors.colors,
    lrv: colors.lrv,
    gloss_gu: finish?.gloss_gu ?? null,
    size_mm: finish ? (cutSize(finish, kind) ?? finish.piece_mm ?? slabSizeOf(finish)?.size_mm ?? null) : null,
    thickness_mm: finish?.thickness_mm ?? (kind === 'slab' ? basis.kitchen.counter.thickness : null),
    edge:
      kind === 'slab' && surfaces.some((one) => one !== 'upstand' && one !== 'backsplash')
        ? basis.kitchen.counter.edge
        : null,
    layout: finish && kind !== 'grout' && kind !== 'count' && kind !== 'coat' ? laying.layout : null,
    start: isLaid ? (laying.start ?? 'centered') : null,
    direction_deg:
      finish && kind !== 'grout' && kind !== 'count' && kind !== 'coat' ? (laying.direction_deg ?? 0) : null,
    joint_mm: kind === 'tiles' || kind === 'grout' ? (laying.joint_mm ?? null) : null,
    grout: kind === 'tiles' ? (laying.grout ?? null) : null,
    quantity,
    written: null,
    supplier: supply.supplier ?? null,
    code: supply.code ?? null,
    lot: record?.lot ?? null,
    unit_price: supply.price
      ? { amount: supply.price.amount, currency: supply.price.currency ?? null, per: supply.price.per ?? null }
      : null,
    priced_for: record?.price?.of ?? null,
    total: cost.total,
    lead_time_weeks: weeks ?? null,
    needed_on: dates.needed_on ?? record?.needed_on ?? null,
    order_by: dates.order_by,
    ordered_on: ordered_on ?? null,
    sample: basis.samples.find((one) => one.finish === finish?.id)?.status ?? null,
    delivery: record?.delivery ?? null,
    note: record?.note ?? null,
    care: careOf(finish),
    cautions: rowCautions(item, basis.cautions),
    state,
    approved: record?.approved ?? null,
    problems: [
      ...(finish ? [] : [{ code: 'no-finish', text: WORDS.noFinish } as const]),
      ...partlyOpen(item, basis.measured.option),
      ...problems,
      ...(kind === 'tiles' && laying.grout === undefined && state !== 'fixed'
        ? [{ code: 'no-grout', text: WORDS.noGrout } as const]
        : []),
      ...deliveryProblems(record),
      ...(state === 'ordered' && ordered_on === undefined
        ? [{ code: 'no-order-date', text: WORDS.noOrderDate } as const]
        : []),
      ...(state !== 'ordered' && isBought && ordered_on !== undefined
        ? [{ code: 'ordered-but-open', text: WORDS.orderedButOpen(ordered_on, state) } as const]
        : []),
      ...cost.problems,
      ...dates.problems,
    ],
  };
}

/** The panels that wooden counters are cut from. */
const cutSize = (finish: Finish, kind: ScheduleItem['kind']) => (kind === 'slab' ? panelSizeOf(finish) : null);

function priceOf(
  finish: Finish | null,
  agreed: ItemRecord['price'],
  quantity: Counted['quantity'],
): { readonly total: ScheduleRow['total']; readonly problems: readonly RowProblem[] } {
  if (!finish) return { total: null, problems: [] };
  if (agreed?.per === 'all') {
    return { total: { amount: agreed.amount, currency: agreed.currency ?? null }, problems: [] };
  }
  const price = finish.supply?.price;
  if (!price) return { total: null, problems: [{ code: 'no-price', text: WORDS.noPrice }] };
  if (!quantity) return { total: null, problems: [] };
  const cost = costOf(price, quantity.order, sizeOfOne(finish));
  if (cost.amount === null) {
    return { total: null, problems: [{ code: 'price-for-other-unit', text: WORDS.otherUnit(price.per ?? 'unit') }] };
  }
  return { total: { amount: cost.amount, currency: cost.currency ?? null }, problems: [] };
}

/** Which surfaces keep an item open whose others are decided. */
function partlyOpen({ surfaces }: ScheduleItem, { scheme }: Option): readonly RowProblem[] {
  const open = surfaces.filter((surface) => scheme[surface].state === 'open');
  if (open.length === 0 || open.length === surfaces.length) return [];
  return [{ code: 'partly-open', text: WORDS.partlyOpen(joined(open.map((one) => surfaceName(one).toLowerCase()))) }];
}

function deliveryProblems(record: ItemRecord | undefined): readonly RowProblem[] {
  if (!record?.delivery) return [];
  const differs = deliveryDifferences(record.lot, record.delivery).map(
    ({ what, agreed, came }) => `${what}: agreed ${agreed}, came ${came}.`,
  );
  return [
    ...(differs.length > 0 ? [{ code: 'delivery-differs', text: differs.join(' ') } as const] : []),
    ...(record.delivery.outcome === 'rejected' ? [{ code: 'delivery-rejected', text: WORDS.rejected } as const] : []),
  ];
}
