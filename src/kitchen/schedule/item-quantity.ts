import { surfaceName } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { FRONT_THICKNESS } from '../../model/layout/measures';
import { isBoard } from '../../model/layouts';
import type { ItemRecord } from '../../model/order/records';
import { panelSizeOf } from '../../model/panel';
import type { Finish, Option } from '../../model/project';
import { areaOfParts, coatedArea } from '../../model/quantity/area-of-parts';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import { groutMass } from '../../model/quantity/grout-mass';
import type { Measure, SizeOfOne } from '../../model/quantity/measures';
import { orderOf } from '../../model/quantity/order';
import { paintVolume } from '../../model/quantity/paint-volume';
import { piecesNeeded } from '../../model/quantity/piece-count';
import { packOf } from '../../model/quantity/supply-pack';
import { usualWaste } from '../../model/quantity/usual-waste';
import { slabSizeOf } from '../../model/slab';
import type { SurfaceTakeoff, Takeoff } from '../takeoff/types';
import { cutFromSlabs } from './item-slabs';
import { RESTS_ON } from './quantity-words';
import type { Counted, ItemQuantity, RowProblem, ScheduleItem } from './types';

/** What a need is told in, before waste, and what it rests on. */
interface Needed {
  readonly net: number;
  readonly measure: Measure;
  readonly rests_on: readonly string[];
  /** Area that is covered where it is more than one face, m2. */
  readonly coated_m2?: number;
}

/** Everything that quantities of an option's items rest on. */
export interface Measured {
  readonly option: Option;
  readonly library: ReadonlyMap<string, Finish>;
  readonly takeoff: Takeoff;
  readonly assumptions: QuantityAssumptions;
}

/** What is poured or spread. */
const WET: readonly ScheduleItem['kind'][] = ['coat', 'grout'];

/** Square meters that nobody covers: what rounding leaves of nothing. */
const NOTHING_M2 = 1e-6;
/** What is said of areas has two digits. */
const SHOWN_M2 = 0.005;

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

const sum = <T>(list: readonly T[], of: (one: T) => number): number => list.reduce((all, one) => all + of(one), 0);

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

function needOf(
  item: ScheduleItem,
  finish: Finish,
  surfaces: readonly SurfaceTakeoff[],
  measured: Measured,
  sold: Measure | undefined,
): Needed {
  const area = sum(surfaces, (one) => one.area_m2);
  switch (item.kind) {
    case 'tiles':
      return tilesOf(item, finish, area, surfaces, measured.assumptions, sold);
    case 'coat':
      return coatOf(surfaces, measured.assumptions);
    case 'grout':
      return groutOf(item, measured);
    case 'fronts':
      return { net: area, measure: 'm2', rests_on: [RESTS_ON.fronts(countOf(surfaces)), ...deducted(surfaces)] };
    case 'strip': {
      const byArea = sold === 'm2' || sold === 'ft2' || sold === 'sheet';
      const length = sum(surfaces, (one) => one.length_m ?? 0);
      const net = byArea || length === 0 ? area : length;
      return { net, measure: net === length ? 'm' : 'm2', rests_on: [RESTS_ON.strip(length)] };
    }
    case 'count':
      return { net: sum(surfaces, (one) => one.count ?? 0), measure: 'piece', rests_on: [RESTS_ON.counted] };
    default: {
      const floats = item.surfaces.includes('floor') && (isBoard(finish) || finish.class === 'vinyl');
      return {
        net: area,
        measure: 'm2',
        rests_on: [...floorWords(item, measured.assumptions), ...(floats ? [RESTS_ON.gap] : []), ...deducted(surfaces)],
      };
    }
  }
}

const floorWords = ({ surfaces }: ScheduleItem, { floor_reach }: QuantityAssumptions): readonly string[] =>
  surfaces.includes('floor') ? [RESTS_ON.floor[floor_reach]] : [];

const deducted = (surfaces: readonly SurfaceTakeoff[]): readonly string[] => {
  const taken = surfaces.flatMap(({ deductions }) => deductions.filter(({ area_m2 }) => area_m2 >= SHOWN_M2));
  const kinds = [...new Set(taken.map(({ kind }) => kind))];
  const off = sum(taken, ({ area_m2 }) => area_m2);
  return taken.length > 0 ? [RESTS_ON.deducted(off, kinds)] : [];
};

function tilesOf(
  item: ScheduleItem,
  finish: Finish,
  area: number,
  surfaces: readonly SurfaceTakeoff[],
  assumptions: QuantityAssumptions,
  sold: Measure | undefined,
): Needed {
  const { layout, joint_mm = 0 } = item.laying;
  const pieces = finish.piece_mm ? piecesNeeded(area, finish.piece_mm, joint_mm, layout) : null;
  const where = [...floorWords(item, assumptions), ...deducted(surfaces)];
  if (pieces === null) return { net: area, measure: 'm2', rests_on: where };
  const sizes = RESTS_ON.tiles(finish.piece_mm!, joint_mm);
  // What is sold by area is ordered by the area it covers, joints included.
  if (sold === 'm2' || sold === 'ft2')
    return { net: area, measure: 'm2', rests_on: [sizes, RESTS_ON.pieces(pieces), ...where] };
  return { net: pieces, measure: 'piece', rests_on: [sizes, ...where] };
}

const COUNTERS: readonly SurfaceId[] = ['counter', 'island-counter'];

const FRONTS: ReadonlySet<SurfaceId> = new Set(['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts']);

/** Is it made or bought by size, so that its parts are worth listing? */
const isMade = ({ kind }: ScheduleItem, surface: SurfaceId): boolean =>
  kind === 'fronts' ||
  kind === 'strip' ||
  kind === 'count' ||
  (kind === 'coat' && (FRONTS.has(surface) || surface === 'plinth'));

/** Walls, ceilings and trim by their own spread and coats, fronts by theirs, on one or both faces. */
function coatOf(surfaces: readonly SurfaceTakeoff[], assumptions: QuantityAssumptions): Needed {
  const fronts = surfaces.filter(({ surface }) => FRONTS.has(surface));
  const others = surfaces.filter((one) => !fronts.includes(one));
  const wall = sum(others, (one) => one.area_m2);
  const { front_coats, front_spread_m2_per_l, wall_coats, wall_spread_m2_per_l, coated_faces } = assumptions;
  const made = fronts.flatMap(({ parts }) => parts.filter(({ kind }) => kind === 'door' || kind === 'drawer'));
  const face = sum(fronts, (one) => one.area_m2);
  // What is no front (panels, fillers) shows one face.
  const front = coated_faces === 'both' ? face - areaOfParts(made) + coatedArea(made, FRONT_THICKNESS) : face;
  return {
    net: paintVolume(wall, wall_coats, wall_spread_m2_per_l) + paintVolume(front, front_coats, front_spread_m2_per_l),
    measure: 'L',
    coated_m2: wall + front,
    rests_on: [
      ...(wall > 0 ? [RESTS_ON.coat(wall, wall_coats, wall_spread_m2_per_l, strips(others))] : []),
      ...(front > 0 ? [RESTS_ON.frontCoat(front, front_coats, front_spread_m2_per_l, coated_faces)] : []),
      ...deducted(others),
    ],
  };
}

/** What is coated as walls are but is none, by name: toe kicks beside fronts. */
const strips = (surfaces: readonly SurfaceTakeoff[]): string =>
  surfaces.every(({ surface }) => surface === 'plinth')
    ? surfaces.map(({ surface }) => surfaceName(surface).toLowerCase()).join()
    : '';

function groutOf({ surfaces }: ScheduleItem, { option, library, takeoff, assumptions }: Measured): Needed {
  const { grout_depth_mm, grout_kg_per_l } = assumptions;
  const depths = new Set<number>();
  const net = sum(surfaces, (surface) => {
    const { finish: id, laying } = option.scheme[surface];
    const tile = library.get(id);
    if (!tile?.piece_mm || laying.joint_mm === undefined) return 0;
    const depth_mm = tile.thickness_mm ?? grout_depth_mm;
    depths.add(depth_mm);
    const area_m2 = takeoff.get(surface)?.area_m2 ?? 0;
    const field = { area_m2, piece_mm: tile.piece_mm, joint_mm: laying.joint_mm, depth_mm, layout: laying.layout };
    return groutMass(field, grout_kg_per_l);
  });
  return { net, measure: 'kg', rests_on: [RESTS_ON.grout([...depths], grout_kg_per_l)] };
}

/** How many there are of each kind. */
function countOf(surfaces: readonly SurfaceTakeoff[]): { readonly doors: number; readonly drawers: number } {
  const of = (kind: string) =>
    sum(surfaces, ({ parts }) =>
      sum(
        parts.filter((one) => one.kind === kind),
        ({ count }) => count,
      ),
    );
  return { doors: of('door'), drawers: of('drawer') };
}
