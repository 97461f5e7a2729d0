import { BAND_COUNT } from './bands';
import { grayReflectance, type TintScheme } from './gray-surfaces';
import { lightShare, lightWhites } from './light-mix';
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

/** A tint shorter than this (in a*, b*) has no source worth naming: it is below what a reading can tell. */
export const LEAST_TINT = 0.05;

/**
 * Which surfaces the tint of each place comes from: every surface in turn is made gray of its own luminous reflectance,
 * the light solved again, and the change of a perfect white's a*, b* projected on the tint. What the lights alone bring
 * (`lightShare`) is not theirs: positive parts are scaled to sum to the rest of the tint, 1 under lights of one spectrum,
 * largest first. Yields after each surface; the work of one step is a warm-started solve per group.
 */
export function* tintSources(
  transport: Transport,
  scheme: TintScheme,
  lights: readonly SurfaceLight[],
): Generator<number, TintSource[][]> {
  const gray = grayReflectance(scheme);
  const present = [...new Set(transport.patches.surface)].filter((s) => s >= 0).sort((a, b) => a - b);
  const base = lights.map((light) => placeWhite(scheme, light, scheme.radiosity));
  const parts: TintSource[][] = lights.map(() => []);
  for (const surface of present) {
    const reflectance = grayed(scheme, surface, gray[surface]!);
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
  const whites = lightWhites(transport, scheme, lights);
  return parts.map((sources, index) => {
    const [a, b] = base[index]!;
    return Math.hypot(a, b) < LEAST_TINT ? [] : scaled(sources, 1 - lightShare({ a, b }, whites[index]!));
  });
}

/** The positive parts, scaled to sum to `whole`; none where the surfaces bring nothing. */
function scaled(sources: readonly TintSource[], whole: number): TintSource[] {
  if (whole <= 0) return [];
  const positive = sources.filter(({ share }) => share > 0).sort((p, q) => q.share - p.share);
  const total = positive.reduce((sum, { share }) => sum + share, 0);
  return positive.map((source) => ({ ...source, share: (whole * source.share) / total }));
}

/** The reflectances with one surface gray. */
const grayed = ({ reflectance }: TintScheme, surface: number, gray: number): Float32Array =>
  Float32Array.from(reflectance).fill(gray, surface * BAND_COUNT, (surface + 1) * BAND_COUNT);

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
