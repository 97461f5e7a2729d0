import type { ItemQuantity, ScheduleRow } from '../../kitchen/schedule/types';
import { type Measure, toMeasure } from '../../model/quantity/measures';
import { roundUp } from '../../model/quantity/round-up';
import { SCHEDULE } from '../words/schedule';
import { localeNow, unitNow } from '../words/spoken';

/** What metric measures are shown in where inches are chosen. */
const US: Partial<Record<Measure, Measure>> = { m2: 'ft2', m: 'ft', L: 'gal', kg: 'lb' };
const METRIC: Partial<Record<Measure, Measure>> = { ft2: 'm2', ft: 'm', gal: 'L', lb: 'kg' };

/** A quantity in the unit system chosen: "14.68 m²", "158 sq ft", "3 slabs". */
function amountText(value: number, measure: Measure, rounded: Rounding = 'nearest'): string {
  const to = (unitNow() === 'in' ? US : METRIC)[measure] ?? measure;
  return asSold(toMeasure(value, measure, to) ?? value, to, rounded);
}

/** What is bought is never told as less than it is. */
type Rounding = 'nearest' | 'up';

/** The same in the unit it is sold in, whatever is chosen. */
function asSold(value: number, measure: Measure, rounded: Rounding = 'nearest'): string {
  const digits = value >= 100 ? 0 : value >= 10 ? 1 : 2;
  const shown = rounded === 'up' ? roundUp(value * 10 ** digits) / 10 ** digits : value;
  const text = new Intl.NumberFormat(localeNow(), { maximumFractionDigits: digits }).format(shown);
  return `${text} ${SCHEDULE.measures[measure][value === 1 ? 0 : 1]}`;
}

/** What is bought: "7 boxes of 0.96 m²", "2 slabs", "14.7 m²". */
export function orderText({ order }: Pick<ItemQuantity, 'order'>): string {
  const { packs, pack, quantity, measure } = order;
  if (packs === null || !pack) return amountText(quantity, measure, 'up');
  if (pack.container === null) return asSold(packs * pack.quantity, pack.measure);
  return SCHEDULE.packsOf(packs, pack.container, asSold(pack.quantity, pack.measure));
}

/** How much of a row is bought, measured or as somebody wrote it: "7 boxes of 0.96 m²", "2 cans"; empty where nothing is known. */
export const boughtText = ({ quantity, written }: Pick<ScheduleRow, 'quantity' | 'written'>): string =>
  quantity ? orderText(quantity) : written ? writtenText(written) : '';

const writtenText = ({ amount, unit }: NonNullable<ScheduleRow['written']>): string =>
  [new Intl.NumberFormat(localeNow()).format(amount), unit].filter(Boolean).join(' ');

/** What is needed before waste, with its area where that is told in something else. */
export function netText({ net, net_measure, area_m2 }: ItemQuantity): string {
  const area = area_m2 > 0 && net_measure !== 'm2' ? ` (${amountText(area_m2, 'm2')})` : '';
  const shown = ['piece', 'panel', 'slab'].includes(net_measure) ? Math.ceil(net - 1e-6) : net;
  return `${amountText(shown, net_measure)}${area}`;
}
