import type { SurfaceId } from '../../engine/surface';
import { decisionOrder } from '../../model/decision-order';
import { isEmpty } from '../../model/empty-surface';
import { isBoard } from '../../model/layouts';
import type { Finish, Option, Placement, Project } from '../../model/project';
import type { Position, StandSample } from './types';

/** What lies in a kitchen; all else stands, or is judged standing. */
const LYING: ReadonlySet<SurfaceId> = new Set(['counter', 'island-counter', 'floor']);
const FRONTS: ReadonlySet<SurfaceId> = new Set([
  'base-fronts',
  'wall-fronts',
  'tall-fronts',
  'island-fronts',
  'plinth',
]);

/** Sizes samples are handed out in (common practice, no source), m: width, height, thickness. */
const SIZES = {
  door: [0.3, 0.4, 0.02],
  metal: [0.1, 0.15, 0.004],
  brushOut: [0.21, 0.297, 0.002],
  slab: [0.3, 0.2, 0.02],
  board: [0.4, 0.12, 0.015],
  boards: [0.4, 0.4, 0.015],
  field: [0.3, 0.3, 0.009],
} as const;
/** Stiles and rails of a door sample: those of a front, m. */
const DOOR_FRAME_M = 0.064;
/** Tiles from this size are shown whole; smaller ones as a field of about this size, m. */
const FIELD_M = 0.3;
const TILE_THICKNESS_M = 0.009;
/** Boards narrower than the sample are shown side by side, m. */
const LEAST_BOARD_M = 0.1;

/**
 * The samples of one or two options: one of each finish as laid on what the room has (`present`), in the order of deciding. Of two options, which stand at the
 * same places, a surface has a sample where either option needs one, as large as the larger.
 */
export function chooseSamples(
  project: Pick<Project, 'library' | 'kitchen'>,
  options: readonly Option[],
  present: readonly SurfaceId[],
): StandSample[] {
  const [first] = options;
  if (!first) return [];
  const library = new Map(project.library.map((finish) => [finish.id, finish]));
  const needed = new Set(options.flatMap((option) => surfacesOfOwnFinish(option, present)));
  return decisionOrder(first)
    .filter((surface) => needed.has(surface))
    .map((surface) => {
      const isFivePiece = project.kitchen.fronts.style === 'five-piece' && FRONTS.has(surface);
      const position: Position = LYING.has(surface) ? 'up' : 'upright';
      const sizes = options.flatMap((option) => {
        const placement = option.scheme[surface];
        const finish = library.get(placement.finish);
        return finish ? [sizeOf(surface, finish, placement)] : [];
      });
      const most = (k: 0 | 1 | 2) => Math.max(...sizes.map((size) => size[k]));
      return {
        surface,
        position,
        size_m: [most(0), most(1), most(2)],
        grainUp: FRONTS.has(surface),
        frame_m: isFivePiece ? DOOR_FRAME_M : null,
      };
    });
}

/** The surfaces there are that have a finish, but for those whose finish lies the same way on one that is decided earlier. */
function surfacesOfOwnFinish(option: Option, present: readonly SurfaceId[]): SurfaceId[] {
  const seen = new Set<string>();
  return decisionOrder(option).filter((surface) => {
    if (!present.includes(surface) || isEmpty(option.scheme[surface])) return false;
    const { finish, laying } = option.scheme[surface];
    const key = JSON.stringify([
      finish,
      laying.layout,
      laying.joint_mm ?? 0,
      laying.grout ?? '',
      laying.direction_deg ?? 0,
    ]);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function sizeOf(surface: SurfaceId, finish: Finish, { laying }: Placement): readonly [number, number, number] {
  if (FRONTS.has(surface)) return SIZES.door;
  if (finish.class === 'metal') return SIZES.metal;
  if (laying.layout === 'planks') {
    const board = finish.piece_mm ? Math.min(...finish.piece_mm) / 1000 : SIZES.board[1];
    return [SIZES.board[0], Math.max(1, Math.round(LEAST_BOARD_M / board)) * board, SIZES.board[2]];
  }
  if (
    laying.layout === 'herringbone' ||
    laying.layout === 'hexagon' ||
    (finish.piece_mm && laying.direction_deg === 45)
  ) {
    return isBoard(finish) ? SIZES.boards : SIZES.field;
  }
  if (finish.piece_mm && laying.layout !== 'plain') {
    const joint = (laying.joint_mm ?? 0) / 1000;
    const [s, t] = finish.piece_mm.map((mm) => mm / 1000 + joint) as [number, number];
    const [along, across] = laying.layout === 'stack-upright' ? [t, s] : [s, t];
    // In a running bond half a tile stands at the ends of every other row.
    const half = laying.layout === 'running-bond' ? 2 : 1;
    return [pieces(along, half) * along, pieces(across, 1) * across, TILE_THICKNESS_M];
  }
  return finish.class === 'paint' ? SIZES.brushOut : SIZES.slab;
}

/** How many pieces make a field, in steps of 1 / `steps`. */
const pieces = (module_m: number, steps: number): number =>
  module_m >= FIELD_M ? 1 : Math.max(1, Math.round((steps * FIELD_M) / module_m) / steps);
