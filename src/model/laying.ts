import type { SurfaceId } from '../engine/surface';
import type { Bounds } from './check-number';
import { isBoard, layoutsFor } from './layouts';
import type { Finish, Laying } from './project';

/** Joints in mm: glazed wall tile 2, everything else laid in pieces 3 (common practice; never under 1.6, ANSI A108.02). */
const WALL_JOINT_MM = 2;
const WIDE_JOINT_MM = 3;

/** Joints that can be set, mm: never under 1/16 in (ANSI A108.02); wider than 20 mm is no tile work (common practice, no source). */
export const JOINT_MM: Bounds = [1.6, 20, 'mm'];

/** How far a slab can be moved along its length, mm: to the other end of the longest. */
export const SLAB_SHIFT_MM: Bounds = [-4000, 4000, 'mm'];

/** A side longer than this wants the wide joint in running bond, and an offset of a third at most: ANSI A108.02, 15 in. */
const LONG_TILE_MM = 381;

/** From this length to width on, tiles are usually laid half a tile apart (common practice, no source). */
const OBLONG = 1.3;

/**
 * How a finish is usually laid on a surface: tiles in running bond or stacked, with a joint and the first grout of the
 * library; boards as planks; everything else plain (grain then follows the surface: upright on fronts). Keeps layout, joint, grout
 * and start of `before` when tiles follow tiles that can be laid so.
 */
export function layingFor(
  finish: Finish,
  surface: SurfaceId,
  library: readonly Finish[] = [],
  before?: Laying,
): Laying {
  const [usual] = layoutsFor(finish, surface);
  if (usual === 'plain' || usual === undefined) return { layout: 'plain' };
  if (isBoard(finish)) return { layout: 'planks' };
  return tiled(finish, finish.piece_mm!, surface, library, before);
}

/** Is the laying one of tiles with joints? */
export const isTiled = (finish: Finish, { layout }: Laying): boolean =>
  layout !== 'plain' && layout !== 'planks' && !isBoard(finish);

/** Are the tiles so long that ANSI A108.02 allows a running bond only up to a third of an offset? */
export const wantsSmallOffset = (finish: Finish, { layout }: Laying): boolean =>
  layout === 'running-bond' && finish.piece_mm !== undefined && Math.max(...finish.piece_mm) > LONG_TILE_MM;

function tiled(
  finish: Finish,
  piece: readonly [number, number],
  surface: SurfaceId,
  library: readonly Finish[],
  before?: Laying,
): Laying {
  const long = Math.max(...piece);
  const layout = long / Math.min(...piece) >= OBLONG ? 'running-bond' : 'stack';
  const wide = surface === 'floor' || finish.class !== 'glazed' || long > LONG_TILE_MM;
  const keeps = before?.grout ? before : undefined;
  const grout = keeps?.grout ?? library.find((one) => one.class === 'grout')?.id;
  const start = before?.start ? { start: before.start } : {};
  if (!grout) return { layout, ...start };
  return { layout, joint_mm: keeps?.joint_mm ?? (wide ? WIDE_JOINT_MM : WALL_JOINT_MM), grout, ...start };
}
