import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import { GRID_COUNT, wavelengthNm } from '../spectrum/grid';
import { DESIGN_RUNS, designSign } from './design';
import type { MaterialSpread } from './spread.data';
import { FAR_RED, RED_EDGE, smoothTerms, VIOLET, YELLOW_EDGE } from './terms';

/** Departures in z from a curve of this colour, one per run of the design, before the colour is brought back. */
export function departuresFrom(z: Float64Array, lab: Lab<'D65-2'>, spread: MaterialSpread): Float64Array[] {
  const rise = riseOf(z);
  const chroma = chromaOf(lab);
  const yellow = chroma > 0 ? Math.max(0, lab.b / chroma) : 0;
  const blue = chroma > 0 ? Math.max(0, -lab.b / chroma) : 0;
  const smooth = Math.hypot(spread.floor, spread.smooth * rise);
  const factors = [
    ...smoothTerms(spread.correlation_nm).map((shape) => ({ height: smooth, shape })),
    { height: spread.violet, shape: VIOLET },
    { height: spread.yellowEdge * rise * yellow, shape: YELLOW_EDGE },
    { height: spread.redEdge * rise * yellow, shape: RED_EDGE },
    { height: spread.farRed * rise * blue, shape: FAR_RED },
  ];
  return Array.from({ length: DESIGN_RUNS }, (_, run) => {
    const sum = new Float64Array(GRID_COUNT);
    factors.forEach(({ height, shape }, k) => {
      const signed = designSign(run, k) * height;
      for (let i = 0; i < GRID_COUNT; i++) sum[i] = sum[i]! + signed * shape[i]!;
    });
    return sum;
  });
}

/** Greatest less least z where the eye sees colour. */
function riseOf(z: Float64Array): number {
  const seen = z.filter((_, i) => wavelengthNm(i) >= 400 && wavelengthNm(i) <= 700);
  return Math.max(...seen) - Math.min(...seen);
}
