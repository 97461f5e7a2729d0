import type { SurfaceId } from '../engine/surface';
import type { Bounds } from './check-number';
import type { Finish, Laying } from './project';

/** Joints in mm: glazed wall tile 2, everything else laid in pieces 3 (common practice; never under 1.6, ANSI A108.02). */
const WALL_JOINT_MM = 2;
const WIDE_JOINT_MM = 3;

/** Joints that can be set, mm: never under 1/16 in (ANSI A108.02); wider than 20 mm is no tile work (common practice, no source). */
export const JOINT_MM: Bounds = [1.6, 20, 'mm'];

/** A side longer than this wants the wide joint in running bond: ANSI A108.02, 15 in. */
const LONG_TILE_MM = 381;

/** From this length to width on, tiles are usually laid half a tile apart (common practice, no source). */
const OBLONG = 1.3;

/** Surfaces on which pieces are laid one beside the other. Elsewhere a finish is one sheet, slab or coat. */
const TAKES_PIECES: readonly SurfaceId[] = ['floor', 'backsplash', 'wall', 'upstand'];

const SHEETS: readonly Finish['class'][] = ['paint', 'metal', 'solid surface', 'grout'];

/** Is the laying one of tiles with joints? */
const isTiled = (laying: Laying): boolean => laying.layout === 'stack' || laying.layout === 'running-bond';

/**
 * How a finish is usually laid on a surface: tiles in running bond or stacked, with a joint and the first grout of the
 * library; boards as planks; everything else plain (grain then follows the surface: upright on fronts). Keeps joint and grout of `before` when tiles follow tiles.
 */
export function layingFor(
  finish: Finish,
  surface: SurfaceId,
  library: readonly Finish[] = [],
  before?: Laying,
): Laying {
  // An upstand is cut from the counter's slab; only tile goes up the wall in pieces.
  const inPieces = surface !== 'upstand' || finish.class === 'glazed' || finish.class === 'porcelain';
  if (inPieces && TAKES_PIECES.includes(surface) && !SHEETS.includes(finish.class)) {
    if (finish.pattern.kind === 'grain' && finish.pattern.board_mm) return { layout: 'planks' };
    if (finish.piece_mm) return tiled(finish, finish.piece_mm, surface, library, before);
  }
  return { layout: 'plain' };
}

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
  const keeps = before && isTiled(before) && before.grout ? before : undefined;
  const grout = keeps?.grout ?? library.find((one) => one.class === 'grout')?.id;
  if (!grout) return { layout };
  return { layout, joint_mm: keeps?.joint_mm ?? (wide ? WIDE_JOINT_MM : WALL_JOINT_MM), grout };
}
