import { cctDuv } from '../engine/color/correlated-temperature';
import { whiteOf } from '../engine/color/xyz';
import { emissionSpd } from '../engine/spectrum/grid';
import { observer2 } from '../engine/spectrum/observers';
import { planckSpd } from '../engine/spectrum/planck';
import type { EmissionSpd } from '../engine/spectrum/types';

/**
 * Color temperature of a filament against its flux, both relative: T ~ V^0.42, flux ~ V^3.4 (IES Lighting Handbook; exponents
 * from memory). Lamps that dim to warm are built to follow it.
 */
const KELVIN_BY_FLUX = 0.42 / 3.4;
/** Warmer than this no such lamp goes (common practice, no source). */
const WARMEST_K = 1800;

/**
 * The light of a lamp that dims to warm, at a level 0-1, relative: its spectrum times the ratio of black bodies of a filament's
 * color temperatures, dimmed and full. Exact for filaments, continuous at full level for any lamp; one that is no white stays.
 */
export function dimmedLight(full: EmissionSpd, level: number): EmissionSpd {
  if (!(level > 0) || level >= 1) return full;
  const color = cctDuv(whiteOf(full, observer2));
  if (!color) return full;
  const dimmed_k = Math.max(Math.min(WARMEST_K, color.cct_k), color.cct_k * level ** KELVIN_BY_FLUX);
  const from = planckSpd(color.cct_k);
  const to = planckSpd(dimmed_k);
  return emissionSpd(full.map((power, i) => (power * to[i]!) / from[i]!));
}
