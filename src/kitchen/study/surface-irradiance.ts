import { xyzFromEmission } from '../../engine/color/xyz';
import { BAND_COUNT } from '../../engine/light/bands';
import { gatherNodes } from '../../engine/light/nodes';
import { irradianceSpectrum } from '../../engine/light/reading';
import { sparseRowsOf } from '../../engine/light/sparse-rows';
import type { SparseRows, SurfaceLight } from '../../engine/light/types';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import type { RoomStudy } from './room-study';
import type { SettingLight } from './setting-light';
import type { SolvedScheme } from './solved-scheme';

const rowsOf = new WeakMap<readonly SurfaceLight[], SparseRows>();

/**
 * `placeIrradiance` of every surface light of a study at once, W m-2 nm-1 and lx: one call of the kernel a group instead of a sum over
 * all patches in every place.
 */
export function surfaceIrradiance(
  { surfaceLights }: Pick<RoomStudy, 'surfaceLights'>,
  solved: SolvedScheme,
  { levels, spectra }: Pick<SettingLight, 'levels' | 'spectra'>,
): readonly { readonly irradiance: EmissionSpd; readonly lux: number }[] {
  let rows = rowsOf.get(surfaceLights);
  if (!rows) {
    rows = sparseRowsOf(surfaceLights.map(({ gather }) => gather));
    rowsOf.set(surfaceLights, rows);
  }
  const gathered = levels.map((level, group) => {
    const radiosity = solved.radiosity[group];
    return level > 0 && radiosity ? gatherNodes({ rows: rows! }, radiosity, BAND_COUNT) : null;
  });
  return surfaceLights.map(({ direct }, i) => {
    const bands = gathered.map((all) => all?.subarray(i * BAND_COUNT, (i + 1) * BAND_COUNT) ?? null);
    const irradiance = irradianceSpectrum(spectra, levels, direct, bands);
    return { irradiance, lux: xyzFromEmission(irradiance, observer2).y };
  });
}
