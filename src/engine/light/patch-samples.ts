import type { FaceSamples } from './face-samples';

/**
 * Sample points along an edge of a patch: two far from the face that lights it, up to eight where the light changes fast, more in
 * a narrow beam. `gap`: distance to that face, m; `width`: of its beam, rad, 1 for wide ones.
 */
export const samplesAlong = (edge: number, gap: number, width = 1): number =>
  Math.min(width < 0.5 ? 16 : 8, Math.max(edge < 0.1 ? 1 : 2, Math.ceil((2 * edge) / (gap * width))));

/** Distance from the point at `center[at ..]` to the nearest point of a face, m. */
export function distanceToFace(center: Float64Array, at: number, { corners }: Pick<FaceSamples, 'corners'>): number {
  let sum = 0;
  for (let k = 0; k < 3; k++) {
    const low = Math.min(corners[k]!, corners[6 + k]!);
    const high = Math.max(corners[k]!, corners[6 + k]!);
    const c = center[at + k]!;
    const off = c < low ? low - c : c > high ? c - high : 0;
    sum += off * off;
  }
  return Math.sqrt(sum);
}
