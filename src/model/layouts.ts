import type { Layout } from '../engine/pattern/types';
import type { SurfaceId } from '../engine/surface';
import type { Finish, Laying } from './project';

/** Surfaces on which pieces are laid one beside the other. Elsewhere a finish is one sheet, slab or coat. */
const TAKES_PIECES: readonly SurfaceId[] = ['floor', 'backsplash', 'wall', 'upstand'];

const SHEETS: readonly Finish['class'][] = ['paint', 'metal', 'solid surface', 'grout', 'glass'];

/** Longer boards are not laid in herringbone, mm (common practice, no source). */
const LONGEST_HERRINGBONE_MM = 1300;

/** Herringbone wants a piece at least this many times as long as wide, or it reads as a stack (common practice, no source). */
const LEAST_HERRINGBONE = 2;

/** Hexagons are not made wider than this, mm (common practice, no source). */
const WIDEST_HEXAGON_MM = 300;

/** From this length to width on, tiles have an upright and a level way to lie. */
const OBLONG = 1.05;

/** Sold as boards with the grain along them. */
export const isBoard = ({ pattern }: Finish): boolean => pattern.kind === 'grain' && pattern.board_mm !== undefined;

/** The layouts a finish may take on a surface, the usual one first. */
export function layoutsFor(finish: Finish, surface: SurfaceId): readonly Layout[] {
  // An upstand is cut from the counter's slab; only tile goes up the wall in pieces.
  const inPieces = surface !== 'upstand' || finish.class === 'glazed' || finish.class === 'porcelain';
  if (!inPieces || !TAKES_PIECES.includes(surface) || SHEETS.includes(finish.class)) return ['plain'];
  const board = isBoard(finish);
  const size = board && finish.pattern.kind === 'grain' ? finish.pattern.board_mm : finish.piece_mm;
  if (!size) return ['plain'];
  const [long, short] = [Math.max(...size), Math.min(...size)];
  const herringbone: readonly Layout[] =
    long / short >= LEAST_HERRINGBONE && long <= LONGEST_HERRINGBONE_MM ? ['herringbone'] : [];
  if (board) return ['planks', ...herringbone];
  if (long / short >= OBLONG) {
    const bonds: readonly Layout[] = ['running-bond', 'third-offset', 'stack', 'stack-upright'];
    return [...bonds, ...herringbone];
  }
  return ['stack', 'running-bond', 'third-offset', ...(short <= WIDEST_HEXAGON_MM ? (['hexagon'] as const) : [])];
}

/** The ways a laying can be turned; [0] where turning it changes nothing one would want. */
export function directionsFor(finish: Finish, { layout }: Laying): readonly (0 | 45 | 90)[] {
  switch (layout) {
    case 'plain':
      return turnsWithFigure(finish) ? [0, 90] : [0];
    case 'stack-upright':
      return [0];
    case 'herringbone':
    case 'stack':
      return isBoard(finish) || layout === 'herringbone' ? [0, 45, 90] : [0, 45];
    default:
      return [0, 90];
  }
}

const turnsWithFigure = ({ pattern }: Finish): boolean =>
  pattern.kind === 'grain' || pattern.kind === 'veined' || pattern.kind === 'linear' || pattern.kind === 'brushed';
