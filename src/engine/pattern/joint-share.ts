import { laidSize } from './pieces';
import type { Layout } from './types';

/**
 * Area share of the joints in a field of pieces, 0-1. Rectangles L x W with joints J: 1 - L W / ((L + J)(W + J)), in every bond
 * and in herringbone, as each piece stands in a cell of L + J by W + J. Hexagons W from flat to flat: 1 - (W / (W + J))^2.
 * `piece_mm` is the piece without its joint.
 */
export function jointShare(piece_mm: readonly [number, number], joint_mm: number, layout: Layout = 'stack'): number {
  const [a, b] = laidSize(piece_mm, layout);
  return 1 - (a * b) / ((a + joint_mm) * (b + joint_mm));
}
