import { gradation, indicatrix } from './sky-luminance';
import type { SkyLuminance } from './types';

/** Steps of either table; linear between. Against the formula: below 5e-5 of the luminance (see the tests). */
const STEPS = 1024;

/** A sky made ready to be read very often: its two factors in tables. */
export interface SkyTable {
  /** f(chi) times what all directions share, cd/m2, over the sine of chi / 2 from 0 to 1; smooth at the sun, unlike cos chi. */
  readonly bySun: Float64Array;
  /** phi(Z) over cos Z from 0 to 1. */
  readonly byHeight: Float64Array;
  readonly sunX: number;
  readonly sunY: number;
  readonly sunZ: number;
}

/** Tables of a sky, to be read by `readSky`. */
export function prepareSky(sky: SkyLuminance): SkyTable {
  const [sunX, sunY, sunZ] = sky.towardsSun;
  const shared = sky.zenith_cdm2 / (indicatrix(sky, sunZ) * gradation(sky, 1));
  // One entry beyond the end spares the reader a test.
  const bySun = new Float64Array(STEPS + 2);
  const byHeight = new Float64Array(STEPS + 2);
  for (let i = 0; i <= STEPS; i++) {
    const at = i / STEPS;
    bySun[i] = shared * indicatrix(sky, 1 - 2 * at * at);
    byHeight[i] = gradation(sky, at);
  }
  return { bySun, byHeight, sunX, sunY, sunZ };
}

/** Luminance in a direction (unit vector), cd/m2: `luminanceOfSky` from tables, 0 below the horizon. */
export function readSky(table: SkyTable, dx: number, dy: number, dz: number): number {
  if (dz < 0) return 0;
  const haversine = (1 - dx * table.sunX - dy * table.sunY - dz * table.sunZ) / 2;
  const sun = haversine <= 0 ? 0 : haversine >= 1 ? STEPS : Math.sqrt(haversine) * STEPS;
  const height = dz >= 1 ? STEPS : dz * STEPS;
  const i = sun | 0;
  const k = height | 0;
  const f = table.bySun[i]!;
  const phi = table.byHeight[k]!;
  return (f + (sun - i) * (table.bySun[i + 1]! - f)) * (phi + (height - k) * (table.byHeight[k + 1]! - phi));
}
