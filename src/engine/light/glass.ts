/** Refractive index of clear float glass, as CIE 171 and daylight practice take it. */
const GLASS_INDEX = 1.52;
const STEPS = 512;

/**
 * Transmittance of a number of clear panes one behind the other, for unpolarised light at the given cosine of incidence: all
 * reflections between their 2 n faces, no absorption, T = mean over s and p of (1 - R) / (1 + (2 n - 1) R), R by Fresnel's
 * equations (G. Stokes, 1862). No pane: 1.
 */
export function paneTransmittance(cosine: number, panes = 1): number {
  if (panes === 0) return 1;
  const c = Math.min(1, Math.max(0, cosine));
  if (c === 0) return 0;
  const inside = Math.sqrt(1 - (1 - c * c) / (GLASS_INDEX * GLASS_INDEX));
  const s = (c - GLASS_INDEX * inside) / (c + GLASS_INDEX * inside);
  const p = (GLASS_INDEX * c - inside) / (GLASS_INDEX * c + inside);
  const through = (r: number) => (1 - r) / (1 + (2 * panes - 1) * r);
  return (through(s * s) + through(p * p)) / 2;
}

/** A table over the cosine of incidence 0-1 of `paneTransmittance`. */
export function glassTable(panes: number): Float64Array {
  return Float64Array.from({ length: STEPS + 2 }, (_, i) => paneTransmittance(i / STEPS, panes));
}

/** Reads a table made by `glassTable`, linear between entries. */
export function readGlass(table: Float64Array, cosine: number): number {
  const x = cosine * STEPS;
  const i = Math.floor(x);
  return table[i]! + (table[i + 1]! - table[i]!) * (x - i);
}
