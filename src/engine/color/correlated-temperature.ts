import { observer2 } from '../spectrum/observers';
import { planckSpd } from '../spectrum/planck';
import { chromaticityFromXyz, uv1960FromXy } from './chromaticity';
import type { Chromaticity, White, Xyz } from './types';
import { whiteOf } from './xyz';

/** Correlated colour temperature and signed distance from the Planckian locus in CIE 1960 u, v (+ is greenish). */
export interface CorrelatedTemperature {
  readonly cct_k: number;
  readonly duv: number;
}

/** Beyond this distance a colour temperature says nothing (CIE 15). */
const MAX_DUV = 0.05;

const COOLEST_K = 1000;
const HOTTEST_K = 100_000;
const STEP = 1.03;

interface LocusPoint {
  readonly mired: number;
  readonly u: number;
  readonly v: number;
}

let coarseLocus: readonly LocusPoint[] | null = null;

/**
 * Correlated colour temperature and Duv of a light, 2 degree observer. The nearest point of the Planckian locus is
 * bracketed in a table, as Ohno does (LEUKOS 10, 47, 2013), then found on exact Planck spectra instead of by his
 * table correction, to about 0.01 K.
 * Null beyond |Duv| 0.05, outside 1000-100000 K and for black.
 */
export function cctDuv(color: Chromaticity | Xyz<White>): CorrelatedTemperature | null {
  const { u, v } = uv1960FromXy('z' in color ? chromaticityFromXyz(color) : color);
  if (!Number.isFinite(u) || !Number.isFinite(v)) return null;
  coarseLocus ??= locusTable();
  const squared = (point: LocusPoint) => (point.u - u) ** 2 + (point.v - v) ** 2;
  let nearest = 0;
  for (let i = 1; i < coarseLocus.length; i++) {
    if (squared(coarseLocus[i]!) < squared(coarseLocus[nearest]!)) nearest = i;
  }
  if (nearest === 0 || nearest === coarseLocus.length - 1) return null;

  // Distance is smooth in reciprocal temperature: a parabola through three points closes in quickly.
  let low = coarseLocus[nearest + 1]!;
  let middle = coarseLocus[nearest]!;
  let high = coarseLocus[nearest - 1]!;
  for (let round = 0; round < 4; round++) {
    const mired = vertex(low, middle, high, squared);
    const reach = (high.mired - low.mired) / 40;
    [low, middle, high] = [locusPoint(mired - reach), locusPoint(mired), locusPoint(mired + reach)];
  }
  const closest = locusPoint(vertex(low, middle, high, squared));
  const distance = Math.sqrt(squared(closest));
  const cct_k = 1e6 / closest.mired;
  if (distance > MAX_DUV || cct_k < COOLEST_K - 0.1 || cct_k > HOTTEST_K * 1.0001) return null;
  // Above the locus = the side of greater v, which is also the side of the normal that points to green.
  const side = (high.u - low.u) * (v - closest.v) - (high.v - low.v) * (u - closest.u);
  return { cct_k, duv: side >= 0 ? distance : -distance };
}

function locusPoint(mired: number): LocusPoint {
  const { u, v } = uv1960FromXy(chromaticityFromXyz(whiteOf(planckSpd(1e6 / mired), observer2)));
  return { mired, u, v };
}

function locusTable(): LocusPoint[] {
  const points: LocusPoint[] = [];
  // One step beyond either end, so that the nearest point of any light in between has neighbours.
  for (let cct_k = COOLEST_K / STEP; cct_k < HOTTEST_K * STEP * STEP; cct_k *= STEP)
    points.push(locusPoint(1e6 / cct_k));
  return points;
}

function vertex(a: LocusPoint, b: LocusPoint, c: LocusPoint, f: (point: LocusPoint) => number): number {
  const left = (b.mired - a.mired) * (f(b) - f(c));
  const right = (b.mired - c.mired) * (f(b) - f(a));
  const bend = left - right;
  if (bend === 0) return b.mired;
  const step = ((b.mired - a.mired) * left - (b.mired - c.mired) * right) / (2 * bend);
  return b.mired - Math.max(a.mired - b.mired, Math.min(step, b.mired - a.mired));
}
