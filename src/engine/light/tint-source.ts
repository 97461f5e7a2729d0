import type { White, Xyz } from '../color/types';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd } from '../spectrum/types';
import { BAND_COUNT, bandColorMatrix } from './bands';
import { installedLab, irradianceSpectrum } from './reading';
import { solveGroup } from './solve';
import { indirectOn } from './surface-light';
import type { Transport } from './transport';
import type { SurfaceLight } from './types';

/** A surface's part in the tint of a place: its share of the tint, and the a* and b* it brings. */
export interface TintSource {
  readonly surface: number;
  readonly share: number;
  readonly da: number;
  readonly db: number;
}

/** A solved scheme under one setting, all per light group. */
export interface TintScheme {
  /** Per surface and band, as given to `solveGroup`. */
  readonly reflectance: Float32Array;
  /** Spectra per lux, levels, and radiosity at level 1; groups without a solution are left out. */
  readonly spectra: readonly EmissionSpd[];
  readonly levels: ArrayLike<number>;
  readonly radiosity: readonly (Float32Array | null)[];
  readonly adoptedWhite: Xyz<White>;
}

/** A tint shorter than this (in a*, b*) has no source worth naming: it is below what a reading can tell. */
const LEAST_TINT = 0.05;

/**
 * Which surfaces the tint of each place comes from: every surface in turn is made gray of its own luminous reflectance,
 * the light solved again, and the change of a perfect white's a*, b* projected on the tint. Positive parts are scaled to
 * sum to 1, largest first. Yields after each surface; the work of one step is a warm-started solve per group.
 */
export function* tintSources(
  transport: Transport,
  scheme: TintScheme,
  lights: readonly SurfaceLight[],
): Generator<number, TintSource[][]> {
  const present = [...new Set(transport.patches.surface)].filter((s) => s >= 0).sort((a, b) => a - b);
  const base = lights.map((light) => placeWhite(scheme, light, scheme.radiosity));
  const parts: TintSource[][] = lights.map(() => []);
  for (const surface of present) {
    const reflectance = grayed(scheme, surface);
    const radiosity = scheme.radiosity.map((b, group) =>
      b && scheme.levels[group]! > 0
        ? solveGroup(transport, reflectance, transport.direct[group]!, { warmStart: b, tolerance: 1e-4 })
        : null,
    );
    lights.forEach((light, index) => {
      const [a, b] = base[index]!;
      const [grayA, grayB] = placeWhite(scheme, light, radiosity);
      const tint = Math.hypot(a, b);
      const along = tint > 0 ? ((a - grayA) * a + (b - grayB) * b) / tint : 0;
      parts[index]!.push({ surface, share: along, da: a - grayA, db: b - grayB });
    });
    yield surface;
  }
  return parts.map((sources, index) => (Math.hypot(...base[index]!) < LEAST_TINT ? [] : normalised(sources)));
}

function normalised(sources: readonly TintSource[]): TintSource[] {
  const positive = sources.filter(({ share }) => share > 0).sort((p, q) => q.share - p.share);
  const total = positive.reduce((sum, { share }) => sum + share, 0);
  return positive.map((source) => ({ ...source, share: source.share / total }));
}

/** The reflectances with one surface gray: its mean under the setting's lamps, weighted by what the eye sees. */
function grayed({ reflectance, spectra, levels }: TintScheme, surface: number): Float32Array {
  const weight = new Float64Array(BAND_COUNT);
  spectra.forEach((spectrum, group) => {
    const matrix = bandColorMatrix(spectrum, null, observer2);
    for (let k = 0; k < BAND_COUNT; k++) weight[k]! += levels[group]! * matrix[3 * k + 1]!;
  });
  const at = surface * BAND_COUNT;
  let sum = 0;
  let total = 0;
  for (let k = 0; k < BAND_COUNT; k++) {
    sum += weight[k]! * reflectance[at + k]!;
    total += weight[k]!;
  }
  return Float32Array.from(reflectance).fill(total > 0 ? sum / total : 0, at, at + BAND_COUNT);
}

/** a* and b* of a perfect white under a surface's mean light. */
function placeWhite(
  scheme: TintScheme,
  light: SurfaceLight,
  radiosity: readonly (Float32Array | null)[],
): [number, number] {
  const indirect = radiosity.map((b) => (b ? indirectOn(light, b) : null));
  const irradiance = irradianceSpectrum(scheme.spectra, scheme.levels, light.direct, indirect);
  const { a, b } = installedLab(irradiance, null, scheme.adoptedWhite);
  // A place without light has no tint.
  return Number.isFinite(a) && Number.isFinite(b) ? [a, b] : [0, 0];
}
