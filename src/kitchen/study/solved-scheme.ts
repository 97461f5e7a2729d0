import { BAND_COUNT } from '../../engine/light/bands';
import { solveGroup } from '../../engine/light/solve';
import type { RoomBasis } from './room-study';
import type { LaidScheme } from './scheme';

/** Radiosity of every patch per light group (null while not solved), patches x BAND_COUNT, per unit of group light. */
export interface SolvedScheme {
  readonly scheme: LaidScheme;
  readonly radiosity: (Float32Array | null)[];
}

export const beginScheme = (scheme: LaidScheme, groups: number): SolvedScheme => ({
  scheme,
  radiosity: new Array<Float32Array | null>(groups).fill(null),
});

/**
 * Solves one group unless it is solved already. Always from the start: measured, an earlier solution saves nothing, and so
 * the result does not depend on what was shown before.
 */
export function solveSchemeGroup(basis: RoomBasis, solved: SolvedScheme, group: number): void {
  if (solved.radiosity[group]) return;
  solved.radiosity[group] = solveDirect(basis, solved.scheme, basis.transport.direct[group]!);
}

/** Radiosity of every patch and band from `direct`, lx a patch. */
export const solveDirect = (
  { transport }: Pick<RoomBasis, 'transport'>,
  { reflectance }: LaidScheme,
  direct: Float32Array,
): Float32Array => solveGroup(transport, reflectance, direct, { bands: BAND_COUNT });
