import type { Frame } from './frame';
import type { PieceMap } from './tile';

/** How much of the light a gap between boards swallows. */
const GAP_LOSS = 0.6;

/** Draws the gaps between boards, and the eased edges beside them, into the gain. `distance`: from the board's edge, mm. */
export function drawGaps(gain: Float32Array, map: PieceMap, distance: Float32Array): void {
  for (let i = 0; i < gain.length; i++) {
    const eased = 1 - 0.05 * Math.exp(-distance[i]! / 1.5);
    gain[i]! *= eased * (1 - GAP_LOSS * (1 - map.cover[i]!));
  }
}

/** Half of the seam between two slabs, mm, and how much darker its resin is than the stone. */
const HALF_SEAM_MM = 0.9;
const SEAM_LOSS = 0.3;

/** Darkens the ends of a slab, where it is joined to the next. */
export function drawSeams(gain: Float32Array, { width, height, width_mm, height_mm }: Frame): void {
  const part = (texel: number, count: number, length_mm: number): number => {
    const step = length_mm / count;
    const fromEnd = Math.min(texel, count - 1 - texel) * step;
    return Math.max(0, Math.min(1, (HALF_SEAM_MM - fromEnd) / step));
  };
  for (let y = 0; y < height; y++) {
    const across = part(y, height, height_mm);
    for (let x = 0; x < width; x++) {
      const seam = Math.max(across, part(x, width, width_mm));
      if (seam > 0) gain[y * width + x]! *= 1 - SEAM_LOSS * seam;
    }
  }
}
