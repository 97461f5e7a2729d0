import type { Rect } from './types';

/** Samples at an edge are moved in by this much, so that they do not lie inside what stands against the edge. */
const EDGE_INSET_M = 1e-3;

/** Writes the point of a rectangle at fractions fu, fv, kept a millimetre from its edges, into `out`. */
export function samplePoint(rect: Rect, fu: number, fv: number, out: Float64Array): void {
  const iu = Math.min(0.5, EDGE_INSET_M / Math.hypot(rect.u[0], rect.u[1], rect.u[2]));
  const iv = Math.min(0.5, EDGE_INSET_M / Math.hypot(rect.v[0], rect.v[1], rect.v[2]));
  const u = Math.min(1 - iu, Math.max(iu, fu));
  const v = Math.min(1 - iv, Math.max(iv, fv));
  for (let k = 0; k < 3; k++) out[k] = rect.origin[k]! + rect.u[k]! * u + rect.v[k]! * v;
}
