import type { ExtraItem } from '../../model/order/records';
import type { RowBasis } from './row';
import { rowDates } from './row-dates';
import type { BareRow } from './row-spec';
import type { RowProblem } from './types';

/** The row of something no surface shows: quantities are what somebody wrote. */
export function extraRow(extra: ExtraItem, { kitchen, calendar }: RowBasis): BareRow {
  const { quantity, price } = extra;
  const dates = rowDates('extra', extra.stage, extra.lead_time_weeks, extra, calendar);
  const problems: readonly RowProblem[] = price ? [] : [{ code: 'no-price', text: 'No price is known.' }];
  return {
    id: extra.id,
    kind: 'extra',
    surfaces: [],
    stage: extra.stage,
    room: kitchen.name,
    location: extra.where ?? '',
    element: extra.what,
    item: extra.what,
    finish: null,
    class: null,
    colors: [],
    lrv: null,
    gloss_gu: null,
    size_mm: null,
    thickness_mm: null,
    edge: null,
    layout: null,
    start: null,
    direction_deg: null,
    joint_mm: null,
    grout: null,
    quantity: null,
    written: quantity === undefined ? null : { amount: quantity, unit: extra.unit ?? null },
    supplier: extra.supplier ?? null,
    code: extra.code ?? null,
    lot: null,
    unit_price: price ? { amount: price.amount, currency: price.currency ?? null, per: price.per ?? null } : null,
    priced_for: null,
    total:
      price && quantity !== undefined && price.per === undefined
        ? { amount: price.amount * quantity, currency: price.currency ?? null }
        : null,
    lead_time_weeks: extra.lead_time_weeks ?? null,
    needed_on: dates.needed_on,
    order_by: dates.order_by,
    ordered_on: extra.ordered_on ?? null,
    sample: null,
    delivery: null,
    note: extra.note ?? null,
    care: [],
    cautions: [],
    state: extra.ordered_on === undefined ? 'decided' : 'ordered',
    approved: null,
    problems: [...problems, ...dates.problems],
  };
}
