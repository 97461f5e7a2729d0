import type { Stroke } from './vein-strokes';
import { wander } from './wander';

/** Length of one step along a vein, mm. */
export const STEP_MM = 2.5;

/** A bare path: places one step apart, mm. */
export interface Path {
  readonly x: Float32Array;
  readonly y: Float32Array;
  /** Heading on the whole, rad. */
  readonly direction: number;
}

/** A path that keeps to a direction (rad) on the whole, bending slowly, kinking often: a healed crack. */
export function crackPath(
  x0: number,
  y0: number,
  direction: number,
  length_mm: number,
  restless: number,
  random: () => number,
): Path {
  const n = Math.max(8, Math.round(length_mm / STEP_MM));
  const slow = wander(n, 360 / STEP_MM, random);
  const middle = wander(n, 85 / STEP_MM, random);
  const kinks = wander(n, 21 / STEP_MM, random);
  const jitter = wander(n, 6 / STEP_MM, random);
  const x = new Float32Array(n);
  const y = new Float32Array(n);
  let px = x0;
  let py = y0;
  for (let i = 0; i < n; i++) {
    const h = direction + restless * (0.34 * slow[i]! + 0.34 * middle[i]! + 0.17 * kinks[i]! + 0.1 * jitter[i]!);
    x[i] = px;
    y[i] = py;
    px += STEP_MM * Math.cos(h);
    py += STEP_MM * Math.sin(h);
  }
  return { x, y, direction };
}

/** What a stroke along a path looks like; lengths in mm. */
export interface StrokeStyle {
  readonly halfWidth: number;
  readonly opacity: number;
  /** How far to one side of the path (below 0: the other) the stroke keeps, and how far it strays from there to either side. */
  readonly beside: number;
  readonly stray: number;
  readonly feather: number;
  readonly featherOpacity: number;
  /** Fade in at the start (false for a branch that leaves another vein). */
  readonly fadeStart: boolean;
}

/** A stroke along a path: swelling and thinning, here and there broken, fading out at its ends. */
export function strokeAlong(path: Path, style: StrokeStyle, random: () => number): Stroke {
  const n = path.x.length;
  const stray = wander(n, 190 / STEP_MM, random);
  const ripple = wander(n, 30 / STEP_MM, random);
  const swell = wander(n, 210 / STEP_MM, random);
  const pinch = wander(n, 24 / STEP_MM, random);
  const ragged = wander(n, 9 / STEP_MM, random);
  const strength = wander(n, 170 / STEP_MM, random);
  const x = new Float32Array(n);
  const y = new Float32Array(n);
  const halfWidth = new Float32Array(n);
  const opacity = new Float32Array(n);
  // Sideways is taken across the path as a whole, so that neighbours of one bundle do not tangle at kinks.
  const normalX = Math.sin(path.direction);
  const normalY = Math.cos(path.direction);
  for (let i = 0; i < n; i++) {
    const f = i / (n - 1);
    const start = style.fadeStart ? Math.min(1, f / 0.22) : 1;
    const end = Math.min(1, (1 - f) / 0.3);
    const fade = Math.min(start, end);
    const free = style.fadeStart ? 1 : Math.min(1, f * 6);
    const aside =
      (style.beside * Math.min(1, 4 * f, 4 * (1 - f)) + style.stray * (stray[i]! + 0.12 * ripple[i]!)) * free;
    x[i] = path.x[i]! - aside * normalX;
    y[i] = path.y[i]! + aside * normalY;
    const thick =
      Math.min(1.2, Math.max(0.1, 0.5 + 0.55 * swell[i]! + 0.16 * pinch[i]!)) ** 1.35 * (1 + 0.14 * ragged[i]!);
    halfWidth[i] = style.halfWidth * 1.9 * thick * (0.25 + 0.75 * fade);
    opacity[i] = style.opacity * Math.min(1, Math.max(0.1, 0.72 + 0.6 * strength[i]!)) * Math.sqrt(fade);
  }
  return {
    x,
    y,
    halfWidth,
    opacity,
    softSide: random() < 0.5 ? 1 : -1,
    feather_mm: style.feather,
    featherOpacity: style.featherOpacity,
  };
}
