import type { Finish } from './project';

/** Size of a finish's figure, mm: distance of veins, size of flecks, width of boards; null where it has none. */
export function figureSizeMm({ pattern }: Finish): number | null {
  switch (pattern.kind) {
    case 'plain':
    case 'brushed':
      return null;
    case 'veined':
      return pattern.spacing_mm;
    case 'grain':
      return pattern.board_mm ? Math.min(...pattern.board_mm) : null;
    default:
      return pattern.size_mm;
  }
}
