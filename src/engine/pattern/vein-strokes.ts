import { type Frame, texelSize } from './frame';

/** A vein as drawn: points in mm, with half width and opacity at each; soft on one side (feather). */
export interface Stroke {
  readonly x: Float32Array;
  readonly y: Float32Array;
  readonly halfWidth: Float32Array;
  readonly opacity: Float32Array;
  /** +1: the left side (looking along the stroke) is soft, -1 the right one. */
  readonly softSide: number;
  readonly feather_mm: number;
  readonly featherOpacity: number;
}

/** Draws a stroke into a repeating field, keeping the stronger value; width is drawn by area, so hairlines stay true. */
export function drawStroke(out: Float32Array, frame: Frame, stroke: Stroke): void {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const texel = Math.sqrt(ds * dt);
  const n = stroke.x.length;
  for (let k = 0; k + 1 < n; k++) {
    const x0 = stroke.x[k]!;
    const y0 = stroke.y[k]!;
    const vx = stroke.x[k + 1]! - x0;
    const vy = stroke.y[k + 1]! - y0;
    const length = Math.hypot(vx, vy);
    const opacity = 0.5 * (stroke.opacity[k]! + stroke.opacity[k + 1]!);
    const halfWidth = 0.5 * (stroke.halfWidth[k]! + stroke.halfWidth[k + 1]!);
    if (length === 0 || opacity < 0.004) continue;
    const ux = vx / length;
    const uy = vy / length;
    const feather = stroke.feather_mm * (0.35 + Math.min(1, halfWidth));
    const soft = opacity * stroke.featherOpacity;
    const reach = halfWidth + texel + (soft > 0.01 ? 2.6 * feather : 0);
    const left = Math.floor((Math.min(x0, x0 + vx) - reach) / ds);
    const right = Math.ceil((Math.max(x0, x0 + vx) + reach) / ds);
    const bottom = Math.floor((Math.min(y0, y0 + vy) - reach) / dt);
    const top = Math.ceil((Math.max(y0, y0 + vy) + reach) / dt);
    for (let j = bottom; j < top; j++) {
      const py = (j + 0.5) * dt - y0;
      const row = (((j % height) + height) % height) * width;
      for (let i = left; i < right; i++) {
        const px = (i + 0.5) * ds - x0;
        const along = px * ux + py * uy;
        const across = px * uy - py * ux;
        const past = along < 0 ? -along : along > length ? along - length : 0;
        const d = past > 0 ? Math.sqrt(across * across + past * past) : Math.abs(across);
        if (d > reach) continue;
        // Part of the texel's width that the line covers.
        const covered = Math.min(d + texel / 2, halfWidth) - Math.max(d - texel / 2, -halfWidth);
        let value = covered > 0 ? (opacity * covered) / texel : 0;
        if (soft > 0.01 && d > halfWidth - texel) {
          const fall = across * stroke.softSide < 0 ? feather : 0.3 * feather;
          const faded = soft * Math.exp(-Math.max(0, d - halfWidth) / fall);
          if (faded > value) value = faded;
        }
        const at = row + (((i % width) + width) % width);
        if (value > out[at]!) out[at] = value;
      }
    }
  }
}

/** Adds a soft round patch to a repeating field: the drift of vein colour around a bundle is made of many. */
export function addPatch(out: Float32Array, frame: Frame, x: number, y: number, sigma: number, amount: number): void {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const reach = 2.6 * sigma;
  const scale = -1 / (2 * sigma * sigma);
  for (let j = Math.floor((y - reach) / dt); j <= Math.ceil((y + reach) / dt); j++) {
    const py = (j + 0.5) * dt - y;
    const row = (((j % height) + height) % height) * width;
    for (let i = Math.floor((x - reach) / ds); i <= Math.ceil((x + reach) / ds); i++) {
      const px = (i + 0.5) * ds - x;
      out[row + (((i % width) + width) % width)]! += amount * Math.exp(scale * (px * px + py * py));
    }
  }
}
