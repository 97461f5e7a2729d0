import { fractalNoise } from './noise';
import type { VeinDrawing } from './vein-bundle';
import { drawFeather } from './vein-strokes';

/** Weight of the densest haze. */
const MOST_HAZE = 0.8;

/** Feathers and haze on the coarse field, the haze as dense as `wanted` (mean weight of both) asks for. */
export function softParts(drawing: VeinDrawing, wanted: number, seed: number): { field: Float32Array; mean: number } {
  const { frame, softFrame, feathers, haze, spacing } = drawing;
  const texel = Math.sqrt((softFrame.width_mm / softFrame.width) * (softFrame.height_mm / softFrame.height));
  for (const stroke of drawing.strokes) if (stroke.feather_mm > 0.4 * texel) drawFeather(feathers, softFrame, stroke);
  const smoke = fractalNoise(
    softFrame.width,
    softFrame.height,
    frame.width_mm / (spacing * 0.55),
    frame.height_mm / (spacing * 0.55),
    5,
    seed + 211,
    0.56,
  );
  for (let i = 0; i < haze.length; i++) haze[i]! *= Math.max(0, 0.75 + 0.7 * smoke[i]!);
  const softAt = (i: number, density: number): number => {
    const cloud = MOST_HAZE * (1 - Math.exp(-density * haze[i]!));
    return Math.max(feathers[i]!, cloud + 0.5 * feathers[i]! * (1 - cloud));
  };
  let low = 0;
  let high = wanted > 0 ? 4 : 0;
  for (let step = 0; step < 8; step++) {
    const middle = (low + high) / 2;
    let sum = 0;
    let n = 0;
    for (let i = 0; i < haze.length; i += 7) {
      sum += softAt(i, middle);
      n++;
    }
    if (sum / n > wanted) high = middle;
    else low = middle;
  }
  let mean = 0;
  for (let i = 0; i < haze.length; i++) {
    haze[i] = softAt(i, (low + high) / 2);
    mean += haze[i]! / haze.length;
  }
  return { field: haze, mean };
}
