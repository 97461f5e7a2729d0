import type { ItemQuantity, Schedule, ScheduleRow } from '../../kitchen/schedule/types';
import type { Pack } from '../../model/quantity/supply-pack';
import { wrapped } from './figures';

/** A schedule in plain text, item by item. */
export function scheduleText({ project, option, rows, superseded, problems }: Schedule): string {
  return [
    `${project}, option ${option}: ${rows.length} items in the order of installing`,
    ...problems.map(({ text }) => text),
    ...rows.flatMap(itemLines),
    ...(superseded.length > 0 ? ['', 'Superseded:'] : []),
    ...superseded.map(({ id, element, item, revision }) =>
      wrapped(`${id}  ${element}: ${item} (last in ${revision})`, '  '),
    ),
    '',
    'Planning aid only. Measure on site, ask suppliers, and check physical samples in the room before ordering.',
  ].join('\n');
}

function itemLines(row: ScheduleRow): readonly string[] {
  const { id, element, item, location, state, quantity, written, supplier, code, total, order_by, problems } = row;
  return [
    '',
    wrapped(`${id}  ${element}: ${item || 'nothing chosen'} [${state}]`, ''),
    ...(location ? [wrapped(location, '  ')] : []),
    ...(quantity ? [wrapped(quantityText(quantity), '  '), wrapped(quantity.rests_on.join(' '), '    ')] : []),
    ...(written ? [`  order ${[figure(written.amount), written.unit].filter(Boolean).join(' ')}`] : []),
    ...(state === 'fixed' ? ['  stays: nothing to order'] : []),
    ...(supplier || code ? [wrapped([supplier, code].filter(Boolean).join(', '), '  ')] : []),
    ...(total ? [`  ${total.amount.toFixed(2)}${total.currency ? ` ${total.currency}` : ''} in all`] : []),
    ...(order_by ? [`  order by ${order_by}`] : []),
    ...problems.map(({ text }) => wrapped(`to settle: ${text}`, '  ')),
  ];
}

function quantityText({ net, net_measure, area_m2, order }: ItemQuantity): string {
  const net_words = `${figure(net)} ${words(net_measure, net)} net`;
  const area = area_m2 > 0 && net_measure !== 'm2' ? `, ${figure(area_m2)} m2` : '';
  const { quantity, measure, packs, pack, spares } = order;
  const bought =
    packs === null || !pack
      ? `order ${figure(quantity)} ${words(measure, quantity)}`
      : pack.container === null && pack.quantity === 1
        ? `order ${packs} ${words(measure, packs)}`
        : `order ${packs} × ${packText(pack)}`;
  return `${net_words}${area}; ${bought}${spares > 0 ? `, ${spares} of them spare` : ''}`;
}

/** "can of 2.5 L". */
export const packText = ({ container, quantity, measure }: Pack): string =>
  `${container ?? 'pack'} of ${figure(quantity)} ${words(measure, quantity)}`;

const COUNTED: Readonly<Record<string, string>> = { piece: 'pieces', panel: 'panels', slab: 'slabs', sheet: 'sheets' };

const words = (measure: string, count: number): string => (count === 1 ? measure : (COUNTED[measure] ?? measure));

const figure = (value: number): string => String(Number(value.toFixed(2)));
