import { surfaceName } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { FRONT_THICKNESS } from '../../model/layout/measures';
import { isBoard } from '../../model/layouts';
import type { Finish } from '../../model/project';
import { areaOfParts, coatedArea } from '../../model/quantity/area-of-parts';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import { groutMass } from '../../model/quantity/grout-mass';
import type { Measure } from '../../model/quantity/measures';
import { paintVolume } from '../../model/quantity/paint-volume';
import { piecesNeeded } from '../../model/quantity/piece-count';
import type { SurfaceTakeoff } from '../takeoff/types';
import type { Measured } from './measured';
import { RESTS_ON } from './quantity-words';
import type { ScheduleItem } from './types';

/** What a need is told in, before waste, and what it rests on. */
export interface Needed {
  readonly net: number;
  readonly measure: Measure;
  readonly rests_on: readonly string[];
  /** Area that is covered where it is more than one face, m2. */
  readonly coated_m2?: number;
}

/** What is said of areas has two digits. */
const SHOWN_M2 = 0.005;

export const FRONTS: ReadonlySet<SurfaceId> = new Set(['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts']);

export const sum = <T>(list: readonly T[], of: (one: T) => number): number =>
  list.reduce((all, one) => all + of(one), 0);

/** What an item needs before waste, in what it is counted in where it is sold in `sold`. */
export function needOf(
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
