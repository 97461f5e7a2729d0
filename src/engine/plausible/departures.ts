import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import { GRID_COUNT, GRID_START_NM, GRID_STEP_NM, wavelengthNm } from '../spectrum/grid';
import { DESIGN_RUNS, designSign } from './design';
import type { MaterialSpread } from './spread.data';
import { FAR_RED, RED_EDGE, smoothTerms, TITANIUM_EDGE, VIOLET, YELLOW_EDGE } from './terms';

const AT_450_NM = (450 - GRID_START_NM) / GRID_STEP_NM;

/** Departures in z from a curve of this colour, one per run of the design, before the colour is brought back. */
export function departuresFrom(z: Float64Array, lab: Lab<'D65-2'>, spread: MaterialSpread): Float64Array[] {
  const rise = riseOf(z);
  const chroma = chromaOf(lab);
  const yellow = chroma > 0 ? Math.max(0, lab.b / chroma) : 0;
  const blue = chroma > 0 ? Math.max(0, -lab.b / chroma) : 0;
  const smooth = Math.hypot(spread.floor, spread.smooth * rise);
  const edge = spread.titanium * titaniumEdgeDepth(z);
  const factors: readonly Factor[] = [
    ...smoothTerms(spread.correlation_nm).map((shape) => ({ height: smooth, shape })),
    // With or without the edge of titanium white: from 0 to all of it.
    { middle: -edge / 2, height: edge / 2, shape: TITANIUM_EDGE },
    { middle: -spread.violet[0], height: spread.violet[1], shape: VIOLET },
    { height: spread.yellowEdge * rise * yellow, shape: YELLOW_EDGE },
    { height: spread.redEdge * rise * yellow, shape: RED_EDGE },
    {
      middle: spread.farRed[0],
      height: Math.hypot(spread.farRed[1], spread.bluePigment * rise * blue),
      shape: FAR_RED,
    },
  ];
  return Array.from({ length: DESIGN_RUNS }, (_, run) => {
    const sum = new Float64Array(GRID_COUNT);
    factors.forEach(({ middle = 0, height, shape }, k) => {
      const part = middle + designSign(run, k) * height;
      for (let i = 0; i < GRID_COUNT; i++) sum[i] = sum[i]! + part * shape[i]!;
    });
    return sum;
  });
}

interface Factor {
  readonly middle?: number;
  readonly height: number;
  readonly shape: Float64Array;
}

/** Greatest less least z where the eye sees colour. */
function riseOf(z: Float64Array): number {
  const seen = z.filter((_, i) => wavelengthNm(i) >= 400 && wavelengthNm(i) <= 700);
  return Math.max(...seen) - Math.min(...seen);
}

/** Depth of the edge of the whitest chart white (Ohta 1997), rounded up. */
const DEEPEST_EDGE = 1.9;

/**
 * Depth of the edge of titanium white, z, in a paint of the given curve: full in whites, none where other pigments absorb the
 * violet anyway. The straight line through the whites and grays of a chart (Ohta 1997).
 */
function titaniumEdgeDepth(z: Float64Array): number {
  return Math.min(DEEPEST_EDGE, Math.max(0, 0.9 + 0.68 * z[AT_450_NM]!));
}
