import { chromaticityFromXyz, uv1960FromXy } from '../color/chromaticity';
import { cctDuv } from '../color/correlated-temperature';
import { whiteOf } from '../color/xyz';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { colorRendering } from './color-rendering';

/** What a lamp does to colors, in the figures of the trade; null where a figure does not exist for it. */
export interface LampRecord {
  readonly xy: readonly [x: number, y: number];
  readonly uv: readonly [u: number, v: number];
  readonly cct_k: number | null;
  readonly duv: number | null;
  readonly ra: number | null;
  readonly r: readonly number[] | null;
  readonly rf?: number;
  readonly rg?: number;
}

/** The record of a lamp. `samples`: the 99 samples of CIE 224. */
export function lampRecord(spd: EmissionSpd, _samples?: readonly ReflectanceSpd[]): LampRecord {
  const white = whiteOf(spd, observer2);
  const xy = chromaticityFromXyz(white);
  const uv = uv1960FromXy(xy);
  const temperature = cctDuv(white);
  const rendering = colorRendering(spd);
  return {
    xy: [xy.x, xy.y],
    uv: [uv.u, uv.v],
    cct_k: temperature?.cct_k ?? null,
    duv: temperature?.duv ?? null,
    ra: rendering?.ra ?? null,
    r: rendering?.r ?? null,
  };
}
