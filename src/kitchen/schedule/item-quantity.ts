import type { SurfaceId } from '../../engine/surface';
import type { ItemRecord } from '../../model/order/records';
import { panelSizeOf } from '../../model/panel';
import type { Finish } from '../../model/project';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import type { SizeOfOne } from '../../model/quantity/measures';
import { orderOf } from '../../model/quantity/order';
import { packOf } from '../../model/quantity/supply-pack';
import { usualWaste } from '../../model/quantity/usual-waste';
import { slabSizeOf } from '../../model/slab';
import { FRONTS, needOf, sum } from './item-need';
import { cutFromSlabs } from './item-slabs';
import type { Measured } from './measured';
import { RESTS_ON } from './quantity-words';
import type { Counted, ItemQuantity, RowProblem, ScheduleItem } from './types';

/** What is poured or spread. */
const WET: readonly ScheduleItem['kind'][] = ['coat', 'grout'];

/** Square meters that nobody covers: what rounding leaves of nothing. */
const NOTHING_M2 = 1e-6;
/** How much of an item is bought. */
export function itemQuantity(item: ScheduleItem, record: ItemRecord | undefined, measured: Measured): Counted {
  const { finish } = item;
  if (!finish || item.state === 'fixed') return { quantity: null, problems: [] };
  const surfaces = item.surfaces.flatMap((surface) => measured.takeoff.get(surface) ?? []);
  const area_m2 = sum(surfaces, (one) => one.area_m2);
  const count = sum(surfaces, (one) => one.count ?? 0);
  const isNothing = item.kind === 'count' ? count === 0 : area_m2 < NOTHING_M2;
  if (isNothing) {
    return { quantity: null, problems: [{ code: 'measures-nothing', text: RESTS_ON.measuresNothing }] };
  }
  if (item.kind === 'slab') return cutFromSlabs(item, finish, record, surfaces, measured);
  const pack = packOf(finish.supply ?? {});
  const needed = needOf(item, finish, surfaces, measured, pack?.measure);
  const usual = finish.class === 'glass' && item.kind === 'sheet' ? 0 : wasteOf(item, finish, measured.assumptions);
  const waste_percent = record?.waste_percent ?? usual;
  const isKept = item.kind === 'tiles' || item.kind === 'boards';
  const spare_packs = record?.spare_packs ?? (isKept ? measured.assumptions.spare_packs : 0);
  const order = orderOf(
    { net: needed.net, measure: needed.measure, waste_percent, spare_packs },
    pack,
    sizeOfOne(finish),
  );
  const rests_on = [
    ...needed.rests_on,
    ...(waste_percent > 0
      ? [RESTS_ON.waste(waste_percent, WET.includes(item.kind), record?.waste_percent !== undefined)]
      : []),
    ...(order.spares > 0 ? [RESTS_ON.spares(order.spares)] : []),
  ];
  const quantity: ItemQuantity = {
    area_m2: needed.coated_m2 ?? area_m2,
    net: needed.net,
    net_measure: needed.measure,
    waste_percent,
    order,
    rests_on,
    parts: surfaces.filter(({ surface }) => isMade(item, surface)).flatMap(({ parts }) => parts),
    slabs: null,
  };
  const isWoodenTop = finish.class === 'wood' && item.surfaces.some((surface) => COUNTERS.includes(surface));
  if (isWoodenTop) return { quantity, problems: [{ code: 'no-panel-size', text: RESTS_ON.noPanel }] };
  const problems: RowProblem[] =
    order.packs === null && item.kind !== 'count' && item.kind !== 'fronts'
      ? [{ code: 'no-pack', text: RESTS_ON.noPack(finish.supply?.unit) }]
      : [];
  return { quantity, problems };
}

function wasteOf({ kind, laying }: ScheduleItem, { piece_mm }: Finish, assumptions: QuantityAssumptions): number {
  if (kind === 'coat') return assumptions.paint_waste_percent;
  if (kind === 'grout') return assumptions.grout_waste_percent;
  const turn = laying.direction_deg;
  return usualWaste({
    kind,
    layout: laying.layout,
    ...(turn !== undefined && { turn_deg: turn }),
    ...(piece_mm && { piece_mm }),
  });
}

/** What one piece, slab or sheet of a finish covers. */
export function sizeOfOne(finish: Finish): SizeOfOne {
  const piece = panelSizeOf(finish) ?? boardOf(finish);
  const slab = slabSizeOf(finish);
  return {
    ...(piece && { piece_m2: areaOf(piece) }),
    ...(slab && { slab_m2: areaOf(slab.size_mm), sheet_m2: areaOf(slab.size_mm) }),
  };
}

const areaOf = ([a, b]: readonly [number, number]): number => (a * b) / 1e6;

const boardOf = ({ piece_mm, pattern }: Finish): readonly [number, number] | undefined =>
  piece_mm ?? (pattern.kind === 'grain' ? pattern.board_mm : undefined);

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];

/** Is it made or bought by size, so that its parts are worth listing? */
const isMade = ({ kind }: ScheduleItem, surface: SurfaceId): boolean =>
  kind === 'fronts' ||
  kind === 'strip' ||
  kind === 'count' ||
  (kind === 'coat' && (FRONTS.has(surface) || surface === 'plinth'));
