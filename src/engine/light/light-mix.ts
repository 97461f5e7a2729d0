import type { Lab } from '../color/types';
import type { EmissionSpd } from '../spectrum/types';
import { BAND_COUNT } from './bands';
import { grayReflectance, type TintScheme } from './gray-surfaces';
import { installedLab, irradianceSpectrum } from './reading';
import { solveGroup } from './solve';
import type { Transport } from './transport';
import type { SurfaceLight } from './types';

const NEUTRAL: Lab<'D65-2'> = { l: 100, a: 0, b: 0 };

/**
 * What a perfect white reads in each place were every surface gray: the doing of the lights alone. Under lights of one
 * spectrum that is their own white everywhere; under several it is how they mix there, gray bounce included.
 */
export function lightWhites(transport: Transport, scheme: TintScheme, lights: readonly SurfaceLight[]): Lab<'D65-2'>[] {
  if (areOneSpectrum(scheme.spectra, scheme.levels)) {
    const only = scheme.spectra.find((_, group) => scheme.levels[group]! > 0);
    const alone = only ? readable(installedLab(only, null, scheme.adoptedWhite)) : NEUTRAL;
    return lights.map(() => alone);
  }
  const { spectra, levels } = scheme;
  const mixed = byKind(spectra, levels);
  const bands = mixed.length;
  const gray = grayReflectance(scheme);
  // Gray bounces every wavelength alike, so one number stands for a spectrum: they are solved together, each as a band.
  const radiosity = solveGroup(
    transport,
    Float32Array.from({ length: gray.length * bands }, (_, i) => gray[Math.floor(i / bands)]!),
    Float32Array.from({ length: transport.patches.count * bands }, (_, i) =>
      mixed[i % bands]!.groups.reduce(
        (sum, group) => sum + levels[group]! * transport.direct[group]![Math.floor(i / bands)]!,
        0,
      ),
    ),
    { bands },
  );
  return lights.map((light) => {
    const direct = mixed.map(({ groups }) =>
      groups.reduce((sum, group) => sum + levels[group]! * light.direct[group]!, 0),
    );
    const bounced = gathered(light, radiosity, bands).map((lx) => new Float64Array(BAND_COUNT).fill(lx));
    const irradiance = irradianceSpectrum(
      mixed.map(({ spectrum }) => spectrum),
      mixed.map(() => 1),
      direct,
      bounced,
    );
    return readable(installedLab(irradiance, null, scheme.adoptedWhite));
  });
}

/** The groups that burn, those of one spectrum together. */
function byKind(spectra: readonly EmissionSpd[], levels: ArrayLike<number>) {
  const kinds: { readonly spectrum: EmissionSpd; readonly groups: number[] }[] = [];
  spectra.forEach((spectrum, group) => {
    if (!(levels[group]! > 0)) return;
    const kind = kinds.find((one) => isSameSpectrum(one.spectrum, spectrum));
    if (kind) kind.groups.push(group);
    else kinds.push({ spectrum, groups: [group] });
  });
  return kinds;
}

/**
 * Share (0-1) of the tint of a place that the lights alone bring: their part along the tint.
 * @param place a*, b* of a perfect white there
 * @param light the same were every surface gray
 */
export function lightShare(place: Pick<Lab<'D65-2'>, 'a' | 'b'>, light: Pick<Lab<'D65-2'>, 'a' | 'b'>): number {
  const squared = place.a ** 2 + place.b ** 2;
  if (squared === 0) return 0;
  return Math.min(1, Math.max(0, (light.a * place.a + light.b * place.b) / squared));
}

/** Whether all groups that burn have one spectrum, so that no place can be tinted by their mix. */
export function areOneSpectrum(spectra: readonly EmissionSpd[], levels: ArrayLike<number>): boolean {
  const [first, ...others] = spectra.filter((_, group) => levels[group]! > 0);
  return others.every((other) => isSameSpectrum(other, first!));
}

export const isSameSpectrum = (one: EmissionSpd, other: EmissionSpd): boolean =>
  one === other || one.every((power, i) => power === other[i]);

/** Closer to neutral than this is rounding. */
const ROUNDING = 1e-6;

/** A place without light has no tint. */
const readable = ({ l, a, b }: Lab<'D65-2'>): Lab<'D65-2'> => (Math.hypot(a, b) > ROUNDING ? { l, a, b } : NEUTRAL);

function gathered({ gather }: SurfaceLight, radiosity: Float32Array, bands: number): number[] {
  const sums = new Array<number>(bands).fill(0);
  for (let patch = 0; patch < gather.length; patch++) {
    for (let k = 0; k < bands; k++) sums[k]! += gather[patch]! * radiosity[patch * bands + k]!;
  }
  return sums;
}
