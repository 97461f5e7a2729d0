/** Widths cabinets are made in, mm, with what each costs a row in looks: few, even, not too narrow units are best. */
const WIDTH_COST: ReadonlyMap<number, number> = new Map([
  [300, 1.4],
  [400, 1.15],
  [450, 1.1],
  [500, 1.05],
  [600, 1],
  [800, 1.15],
  [900, 1.1],
  [1000, 1.25],
]);
const STEP_MM = 50;

/**
 * Standard module widths (mm) that sum exactly to `length_mm`, fewest and most even first; null when no set does.
 * An empty row for 0. Lengths are multiples of 50 mm. Widths: European modules, common practice.
 */
export function moduleWidths(length_mm: number): readonly number[] | null {
  const steps = Math.round(length_mm / STEP_MM);
  if (steps < 0 || Math.abs(steps * STEP_MM - length_mm) > 1e-6) return null;
  const best: ({ cost: number; widths: number[] } | null)[] = [{ cost: 0, widths: [] }];
  for (let n = 1; n <= steps; n++) {
    let found: { cost: number; widths: number[] } | null = null;
    for (const [width, cost] of WIDTH_COST) {
      const rest = best[n - width / STEP_MM];
      if (!rest) continue;
      const last = rest.widths[rest.widths.length - 1] ?? width;
      const total = rest.cost + cost + Math.abs(last - width) / 4000;
      if (!found || total < found.cost - 1e-9) found = { cost: total, widths: [...rest.widths, width] };
    }
    best.push(found);
  }
  return best[steps]?.widths ?? null;
}

/** The longest row of standard modules not longer than `limit_mm`, in mm. Empty when not even the narrowest fits. */
export function longestRow(limit_mm: number): readonly number[] {
  for (let length = Math.floor(limit_mm / STEP_MM + 1e-6) * STEP_MM; length > 0; length -= STEP_MM) {
    const widths = moduleWidths(length);
    if (widths) return widths;
  }
  return [];
}
