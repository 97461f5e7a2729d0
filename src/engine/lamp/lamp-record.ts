import { chromaticityFromXyz, uv1960FromXy } from '../color/chromaticity';
import { cctDuv } from '../color/correlated-temperature';
import { whiteOf } from '../color/xyz';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { colorFidelity } from './color-fidelity';
import { colorRendering } from './color-rendering';

/** What a lamp does to colors, in the figures of the trade; null where a figure does not exist for the lamp. */
export interface LampRecord {
  /** CIE 1931 x, y. */
  readonly xy: readonly [x: number, y: number];
  /** CIE 1976 u', v'. */
  readonly uv: readonly [u: number, v: number];
  /** Correlated colour temperature and distance from the Planckian locus (CIE 1960 u, v); null for a coloured light. */
  readonly cct_k: number | null;
  readonly duv: number | null;
  /** Ra and R1-R14 of CIE 13.3; null without a reference light. */
  readonly ra: number | null;
  readonly r: readonly number[] | null;
  /** The light lies too far from its reference for Ra to mean much: more than 5.4e-3 in CIE 1960 u, v (CIE 13.3). */
  readonly outside_tolerance: boolean;
  /** Rf (CIE 224) and Rg (TM-30), only with the samples at hand; Rg needs one in every hue sector. */
  readonly rf?: number;
  readonly rg?: number;
}

/** The record of a lamp with visible power, 2 degree observer. `samples`: the 99 samples of CIE 224, where the user has them. */
export function lampRecord(spd: EmissionSpd, samples?: readonly ReflectanceSpd[]): LampRecord {
  const white = whiteOf(spd, observer2);
  const xy = chromaticityFromXyz(white);
  const { u, v } = uv1960FromXy(xy);
  const temperature = cctDuv(white);
  const rendering = colorRendering(spd);
  const fidelity = samples ? colorFidelity(spd, samples) : null;
  return {
    xy: [xy.x, xy.y],
    uv: [u, 1.5 * v],
    cct_k: temperature?.cct_k ?? null,
    duv: temperature?.duv ?? null,
    ra: rendering?.ra ?? null,
    r: rendering?.r ?? null,
    outside_tolerance: rendering?.isOutsideTolerance ?? false,
    ...(fidelity && { rf: fidelity.rf }),
    ...(fidelity && fidelity.rg !== null && { rg: fidelity.rg }),
  };
}
