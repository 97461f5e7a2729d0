import { xyzFromEmission } from '../../engine/color/xyz';
import { irradianceSpectrum } from '../../engine/light/reading';
import { indirectOn } from '../../engine/light/surface-light';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd } from '../../engine/spectrum/types';
import type { PlaceLight } from './light-parts';
import type { SettingLight } from './setting-light';
import type { SolvedScheme } from './solved-scheme';

/** Light at a place under a setting, W m-2 nm-1, and its illuminance in lx. Groups not solved yet bring no indirect light. */
export function placeIrradiance(
  place: PlaceLight,
  solved: SolvedScheme,
  { levels, spectra }: Pick<SettingLight, 'levels' | 'spectra'>,
): { readonly irradiance: EmissionSpd; readonly lux: number } {
  const indirect = levels.map((level, group) => {
    const radiosity = solved.radiosity[group];
    return level > 0 && radiosity ? indirectOn(place, radiosity) : null;
  });
  const irradiance = irradianceSpectrum(spectra, levels, place.direct, indirect);
  return { irradiance, lux: xyzFromEmission(irradiance, observer2).y };
}
