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

/** Area of a stroke's line weighted by its opacity, mm2. */
export function lineArea(stroke: Stroke): number {
  let area = 0;
  for (let k = 0; k + 1 < stroke.x.length; k++) {
    const step = Math.hypot(stroke.x[k + 1]! - stroke.x[k]!, stroke.y[k + 1]! - stroke.y[k]!);
    area += 2 * stroke.halfWidth[k]! * stroke.opacity[k]! * step;
  }
  return area;
}

/** How far a feather is drawn, in feather lengths; it is lowered so that it ends at nothing there. */
const FEATHER_REACH = 2.6;
const FEATHER_END = Math.exp(-FEATHER_REACH);
/** Length of the feather on a stroke's hard side, against its soft side. */
const HARD_SIDE = 0.3;

/** Draws the line of a stroke into a repeating field, keeping the stronger value; by area, so hairlines stay true. */
export function drawLine(out: Float32Array, frame: Frame, stroke: Stroke, widthScale: number): void {
  drawSegments(out, frame, stroke, widthScale, false);
}

/** Draws what fades away beside a stroke, far on its soft side and little on the other. Smooth: a coarse field will do. */
export function drawFeather(out: Float32Array, frame: Frame, stroke: Stroke): void {
  if (stroke.featherOpacity > 0) drawSegments(out, frame, stroke, 1, true);
}

function drawSegments(out: Float32Array, frame: Frame, stroke: Stroke, widthScale: number, feather: boolean): void {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const texel = Math.sqrt(ds * dt);
  const n = stroke.x.length;
  const step = Math.hypot(stroke.x[1]! - stroke.x[0]!, stroke.y[1]! - stroke.y[0]!);
  // Steps much shorter than a texel (or than the feather is soft) are taken together.
  const stride = Math.max(1, Math.floor((feather ? Math.max(texel, 0.6 * stroke.feather_mm) : 0.8 * texel) / step));
  const soft = stroke.featherOpacity / (1 - FEATHER_END);
  for (let k = 0; k + 1 < n; k += stride) {
    const next = Math.min(n - 1, k + stride);
    const x0 = stroke.x[k]!;
    const y0 = stroke.y[k]!;
    const vx = stroke.x[next]! - x0;
    const vy = stroke.y[next]! - y0;
    const length = Math.hypot(vx, vy);
    const opacity = 0.5 * (stroke.opacity[k]! + stroke.opacity[next]!);
    const halfWidth = 0.5 * widthScale * (stroke.halfWidth[k]! + stroke.halfWidth[next]!);
    if (length === 0 || opacity < 0.004) continue;
    const ux = vx / length;
    const uy = vy / length;
    const reach = halfWidth + (feather ? FEATHER_REACH * stroke.feather_mm : texel);
    const left = Math.floor((Math.min(x0, x0 + vx) - reach) / ds);
    const right = Math.ceil((Math.max(x0, x0 + vx) + reach) / ds);
    const bottom = Math.floor((Math.min(y0, y0 + vy) - reach) / dt);
    const top = Math.ceil((Math.max(y0, y0 + vy) + reach) / dt);
    const first = ((left % width) + width) % width;
    for (let j = bottom; j < top; j++) {
      const py = (j + 0.5) * dt - y0;
      const row = (((j % height) + height) % height) * width;
      let column = first - 1;
      for (let i = left; i < right; i++) {
        column = column + 1 === width ? 0 : column + 1;
        const px = (i + 0.5) * ds - x0;
        const across = px * uy - py * ux;
        if (across > reach || across < -reach) continue;
        const along = px * ux + py * uy;
        const past = along < 0 ? -along : along > length ? along - length : 0;
        if (past > reach) continue;
        const d = past > 0 ? Math.sqrt(across * across + past * past) : Math.abs(across);
        let value: number;
        if (feather) {
          const fall = across * stroke.softSide < 0 ? stroke.feather_mm : HARD_SIDE * stroke.feather_mm;
          const beyond = (d - halfWidth) / fall;
          if (beyond >= FEATHER_REACH) continue;
          value = opacity * soft * ((beyond > 0 ? Math.exp(-beyond) : 1) - FEATHER_END);
        } else {
          const covered = Math.min(d + texel / 2, halfWidth) - Math.max(d - texel / 2, -halfWidth);
          if (covered <= 0) continue;
          value = (opacity * covered) / texel;
        }
        const at = row + column;
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
