import { type Frame, texelSize } from './frame';
import type { PieceRows } from './pieces';
import type { PieceMap } from './tile';

/** How much of the light a gap between boards swallows. */
const GAP_LOSS = 0.6;

/** Draws the gaps between boards, and the eased edges beside them, into the gain. */
export function drawGaps(gain: Float32Array, frame: Frame, rows: PieceRows, map: PieceMap): void {
  const [, dt] = texelSize(frame);
  const [, mt] = rows.module_mm;
  for (let y = 0; y < frame.height; y++) {
    const v = ((y + 0.5) * dt) % mt;
    const fromEdge = Math.min(v, mt - v);
    const eased = 1 - 0.05 * Math.exp(-fromEdge / 1.5);
    for (let x = 0; x < frame.width; x++) {
      const i = y * frame.width + x;
      gain[i]! *= eased * (1 - GAP_LOSS * (1 - map.cover[i]!));
    }
  }
}
