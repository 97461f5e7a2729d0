import { jointShare } from '../../engine/pattern/joint-share';
import type { Layout } from '../../engine/pattern/types';

/** A field of tiles to grout: area in m2, the rest in mm. */
export interface GroutedField {
  readonly area_m2: number;
  readonly piece_mm: readonly [number, number];
  readonly joint_mm: number;
  readonly depth_mm: number;
  readonly layout: Layout;
}

/**
 * Mass of grout that fills the joints, kg, before waste: A (L + W) / (L W) J D density, as makers of grout give it for rectangles (a little
 * more than the joints hold, as crossings count twice); of hexagons by the share of the joints. 0 where a piece has no area.
 */
export function groutMass(field: GroutedField, kg_per_l: number): number {
  const { area_m2, piece_mm, joint_mm, depth_mm, layout } = field;
  const [length, width] = piece_mm;
  if (!(length > 0 && width > 0)) return 0;
  const joints =
    layout === 'hexagon' ? jointShare(piece_mm, joint_mm, layout) : ((length + width) / (length * width)) * joint_mm;
  return area_m2 * joints * depth_mm * kg_per_l;
}
