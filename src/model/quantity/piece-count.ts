import { HEXAGON_ROW, laidSize } from '../../engine/pattern/pieces';
import type { Layout } from '../../engine/pattern/types';

/**
 * Area a piece takes up in a field with its joint, m2: (L + J)(W + J) of rectangles in every bond and in herringbone,
 * (W + J)^2 sqrt(3) / 2 of hexagons W from flat to flat. Sizes in mm.
 */
export function moduleArea(piece_mm: readonly [number, number], joint_mm: number, layout: Layout = 'stack'): number {
  const [a, b] = laidSize(piece_mm, layout);
  return ((a + joint_mm) * (b + joint_mm) * (layout === 'hexagon' ? HEXAGON_ROW : 1)) / 1e6;
}

/** Pieces that cover an area (m2) without waste, a fraction left as it is; null where a piece has no area. */
export function piecesNeeded(
  area_m2: number,
  piece_mm: readonly [number, number],
  joint_mm: number,
  layout: Layout = 'stack',
): number | null {
  const module = moduleArea(piece_mm, joint_mm, layout);
  return module > 0 ? area_m2 / module : null;
}
