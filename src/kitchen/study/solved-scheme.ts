import { BAND_COUNT } from '../../engine/light/bands';
import { solveGroup } from '../../engine/light/solve';
import type { SurfaceLight } from '../../engine/light/types';
import type { RoomStudy } from './room-study';
import type { LaidScheme } from './scheme';

/** Radiosity of every patch per light group (null while not solved), patches x BAND_COUNT, per unit of group light. */
export interface SolvedScheme {
  readonly scheme: LaidScheme;
  readonly radiosity: (Float32Array | null)[];
}

/** Starts from an earlier solution of the same room where there is one: a changed finish moves it little. */
export function beginScheme(scheme: LaidScheme, groups: number): SolvedScheme {
  return { scheme, radiosity: new Array<Float32Array | null>(groups).fill(null) };
}

/** Solves one group unless it is solved already. */
export function solveSchemeGroup(
  study: RoomStudy,
  solved: SolvedScheme,
  group: number,
  warm?: SolvedScheme | null,
): void {
  if (solved.radiosity[group]) return;
  const warmStart = warm?.radiosity[group] ?? undefined;
  solved.radiosity[group] = solveGroup(study.transport, solved.scheme.reflectance, study.transport.direct[group]!, {
    bands: BAND_COUNT,
    ...(warmStart ? { warmStart } : {}),
  });
}

/** Mean indirect light on a surface from one group: BAND_COUNT values, lx at level 1 per band. */
export function indirectOn(light: SurfaceLight, radiosity: Float32Array): Float64Array {
  const out = new Float64Array(BAND_COUNT);
  const row = light.gather;
  for (let patch = 0; patch < row.length; patch++) {
    const weight = row[patch]!;
    if (weight === 0) continue;
    const base = patch * BAND_COUNT;
    for (let band = 0; band < BAND_COUNT; band++) out[band]! += weight * radiosity[base + band]!;
  }
  return out;
}
