const MM2_PER_M2 = 1e6;

/** Alike rectangles, mm: pieces of a counter, fronts. One where no count is said. */
export interface Rectangles {
  readonly length_mm: number;
  readonly width_mm: number;
  readonly count?: number;
}

/** Area of one face of all parts, m2. Holes are not taken off: what is cut out is bought all the same. */
export const areaOfParts = (parts: readonly Rectangles[]): number =>
  parts.reduce((sum, { length_mm, width_mm, count = 1 }) => sum + length_mm * width_mm * count, 0) / MM2_PER_M2;

/** Area of what is coated on fronts on both faces and all four edges, m2. */
export function coatedArea(fronts: readonly Rectangles[], thickness_mm: number): number {
  const edges_mm = fronts.reduce(
    (sum, { length_mm, width_mm, count = 1 }) => sum + 2 * (length_mm + width_mm) * count,
    0,
  );
  return 2 * areaOfParts(fronts) + (edges_mm * thickness_mm) / MM2_PER_M2;
}
