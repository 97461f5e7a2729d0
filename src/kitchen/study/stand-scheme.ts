import { yFromLightness } from '../../engine/color/lab';
import type { FinishComponent } from '../../engine/finish/types';
import { BAND_COUNT } from '../../engine/light/bands';
import { GRID_COUNT, reflectanceSpd } from '../../engine/spectrum/grid';
import type { Backing } from '../stand/types';
import type { LaidScheme, LaidSurface } from './scheme';

/** L* of what the samples stand before: a light gray, or a white as light as white paint. Both without hue. */
const LIGHTNESS: { readonly [B in Backing]: number } = { gray: 75, white: 94 };
/** The booth about the stage is darker, so that its lamps decide what light what stands gets. */
const BOOTH_LIGHTNESS = 50;

/** Reflectance of a backing, the same at every wavelength, 0-1. */
export const backingReflectance = (backing: Backing): number => yFromLightness(LIGHTNESS[backing]) / 100;
/** The same of the booth. */
export const BOOTH_REFLECTANCE = yFromLightness(BOOTH_LIGHTNESS) / 100;

/** A scheme as it is seen on a stand: the same finishes, then the backing and the booth. */
export function standScheme(scheme: LaidScheme, backing: Backing): LaidScheme {
  const grays = [backingReflectance(backing), BOOTH_REFLECTANCE];
  const own = scheme.surfaces.length * BAND_COUNT;
  const reflectance = new Float32Array(own + grays.length * BAND_COUNT);
  reflectance.set(scheme.reflectance);
  grays.forEach((value, i) => {
    reflectance.fill(value, own + i * BAND_COUNT, own + (i + 1) * BAND_COUNT);
  });
  return {
    ...scheme,
    surfaces: [...scheme.surfaces, laidGray(LIGHTNESS[backing]), laidGray(BOOTH_LIGHTNESS)],
    reflectance,
  };
}

function laidGray(lightness: number): LaidSurface {
  const spectrum = reflectanceSpd(new Float64Array(GRID_COUNT).fill(yFromLightness(lightness) / 100));
  const component: FinishComponent = {
    role: 'base',
    share: 1,
    labD65: { l: lightness, a: 0, b: 0 },
    spectrum,
    spectrumSource: 'measured',
    provenance: 'measured',
    uncertaintyDe00: 0,
  };
  return {
    surface: 'stand',
    placement: { finish: 'stand', state: 'fixed', laying: { layout: 'plain' } },
    finish: { id: 'stand', label: 'stand', class: 'paint', glossGu: 0, components: [component] },
    average: spectrum,
    pattern: null,
  };
}
