import type { Lot } from '../../model/order/records';
import { sheenOf } from '../../model/sheens';
import type { ItemQuantity, RowColor, Schedule, ScheduleRow } from './types';

/** A cell of the table: texts may be anything somebody wrote, numbers are plain. */
export type TableCell = string | number | null;

/** Columns of the schedule as a table, in the trade's order; metric, one row an item. */
export const SCHEDULE_COLUMNS = [
  'id',
  'status',
  'room',
  'location',
  'element',
  'item',
  'class',
  'finish',
  'color_l',
  'color_a',
  'color_b',
  'color_illuminant',
  'color_observer_deg',
  'color_as_given',
  'color_provenance',
  'color_uncertainty_de00',
  'other_colors',
  'lrv',
  'sheen',
  'gloss_60_gu',
  'size_mm',
  'thickness_mm',
  'edge',
  'layout',
  'start',
  'direction_deg',
  'joint_mm',
  'grout',
  'area_m2',
  'quantity_net',
  'quantity_unit',
  'waste_percent',
  'quantity_order',
  'order_unit',
  'pack',
  'packs',
  'spare_packs',
  'supplier',
  'code',
  'batch',
  'shade',
  'calibre',
  'slabs',
  'unit_cost',
  'unit_cost_per',
  'currency',
  'total',
  'lead_time_weeks',
  'stage',
  'needed_on',
  'order_by',
  'ordered_on',
  'sample',
  'delivered_on',
  'delivered_lot',
  'delivery',
  'note',
  'care',
  'cautions',
  'rests_on',
  'to_settle',
  'revision',
  'approved_by',
  'approved_on',
  'signature',
] as const;

type Column = (typeof SCHEDULE_COLUMNS)[number];

/** The rows of a schedule as cells, superseded ones last: they say what stood there and in which revision last. */
export const scheduleTable = (
  schedule: Schedule,
  say: (text: string) => string = (text) => text,
): readonly (readonly TableCell[])[] => [
  ...schedule.rows.map((row) => inOrder(row.kind === 'extra' ? cellsOf(row) : spokenCells(cellsOf(row), say))),
  ...schedule.superseded.map(({ id, surfaces, element, item, revision }) =>
    inOrder({ id, status: 'superseded', element: surfaces.length > 0 ? say(element) : element, item, revision }),
  ),
];

const inOrder = (cells: Partial<Record<Column, TableCell>>): readonly TableCell[] =>
  SCHEDULE_COLUMNS.map((column) => cells[column] ?? null);

/** Cells of our own words; all others are data, or somebody else's. */
const OURS: readonly Column[] = ['location', 'element', 'care', 'cautions', 'rests_on', 'to_settle'];

const spokenCells = (cells: Partial<Record<Column, TableCell>>, say: (text: string) => string) => ({
  ...cells,
  ...Object.fromEntries(OURS.map((column) => [column, typeof cells[column] === 'string' ? say(cells[column]) : null])),
});

function cellsOf(row: ScheduleRow): Partial<Record<Column, TableCell>> {
  const [color] = row.colors;
  return {
    id: row.id,
    status: row.state,
    room: row.room,
    location: row.location,
    element: row.element,
    item: row.item,
    class: row.class,
    finish: row.finish,
    ...(color && colorCells(color, row.colors)),
    lrv: row.lrv === null ? null : rounded(row.lrv, 1),
    sheen: row.gloss_gu === null ? null : sheenOf(row.gloss_gu),
    gloss_60_gu: row.gloss_gu,
    size_mm: row.size_mm?.join(' x ') ?? null,
    thickness_mm: row.thickness_mm,
    edge: row.edge,
    layout: row.layout,
    start: row.start,
    direction_deg: row.direction_deg,
    joint_mm: row.joint_mm,
    grout: row.grout,
    ...(row.quantity && quantityCells(row.quantity)),
    ...(row.written && { quantity_order: row.written.amount, order_unit: row.written.unit }),
    supplier: row.supplier,
    code: row.code,
    batch: row.lot?.batch ?? null,
    shade: row.lot?.shade ?? null,
    calibre: row.lot?.calibre ?? null,
    slabs: row.lot?.slabs ?? null,
    unit_cost: row.unit_price?.amount ?? null,
    unit_cost_per: row.unit_price?.per ?? null,
    currency: row.unit_price?.currency ?? row.total?.currency ?? null,
    total: row.total === null ? null : rounded(row.total.amount, 2),
    lead_time_weeks: row.lead_time_weeks,
    stage: row.stage,
    needed_on: row.needed_on,
    order_by: row.order_by,
    ordered_on: row.ordered_on,
    sample: row.sample,
    delivered_on: row.delivery?.on ?? null,
    delivered_lot: row.delivery ? lotText(row.delivery) : null,
    delivery: row.delivery?.outcome ?? null,
    note: row.note,
    care: sentences(row.care),
    cautions: sentences(row.cautions),
    to_settle: sentences(row.problems.map(({ text }) => text)),
    revision: row.revision,
    approved_by: row.approved?.by ?? null,
    approved_on: row.approved?.on ?? null,
  };
}

const colorCells = (color: RowColor, all: readonly RowColor[]): Partial<Record<Column, TableCell>> => ({
  color_l: rounded(color.lab_d65[0], 2),
  color_a: rounded(color.lab_d65[1], 2),
  color_b: rounded(color.lab_d65[2], 2),
  color_illuminant: 'D65',
  color_observer_deg: 2,
  color_as_given: color.given,
  color_provenance: color.provenance,
  color_uncertainty_de00: rounded(color.uncertainty_de00, 1),
  other_colors:
    all
      .slice(1)
      .map(
        ({ role, share, lab_d65 }) =>
          `${role} ${rounded(100 * share, 0)} %: ${lab_d65.map((one) => rounded(one, 1)).join(' ')}`,
      )
      .join('; ') || null,
});

function quantityCells({
  area_m2,
  net,
  net_measure,
  waste_percent,
  order,
  rests_on,
}: ItemQuantity): Partial<Record<Column, TableCell>> {
  const { pack, packs, spares, quantity, measure } = order;
  return {
    area_m2: area_m2 > 0 ? rounded(area_m2, 3) : null,
    quantity_net: rounded(net, 3),
    quantity_unit: net_measure,
    waste_percent,
    quantity_order: rounded(quantity, 3),
    order_unit: measure,
    pack: pack ? [pack.container, `${rounded(pack.quantity, 4)} ${pack.measure}`].filter(Boolean).join(' of ') : null,
    packs,
    spare_packs: packs === null ? null : spares,
    rests_on: sentences(rests_on),
  };
}

/** "batch B7; slabs 12, 13". */
const lotText = ({ batch, shade, calibre, slabs }: Lot): string | null =>
  Object.entries({ batch, shade, calibre, slabs })
    .flatMap(([name, value]) => (value ? [`${name} ${value}`] : []))
    .join('; ') || null;

const sentences = (list: readonly string[]): string | null => (list.length > 0 ? list.join(' ') : null);

const rounded = (value: number, digits: number): number => Number(value.toFixed(digits));
