import type { Emitter } from './emitters';
import { luminanceThrough } from './overcast-sky';
import { quadFactor } from './polygon-factor';

const cellStack = new Float64Array(5 * 64);
const quad = new Float64Array(12);
const GAUSS = 0.5 / Math.sqrt(3);
const MAX_DEPTH = 6;
const CELL_ANGLE = 0.7;

/**
 * Unshadowed light of a window: the aperture cut into cells small against their distance (and along the horizon),
 * each with its exact form factor times the mean luminance at 2 x 2 Gauss points.
 */
export function windowIrradiance(
  emitter: Emitter,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): number {
  const { origin, u, v } = emitter.rect;
  const lu = Math.hypot(u[0], u[1], u[2]);
  const lv = Math.hypot(v[0], v[1], v[2]);
  let depth = pushRoots(emitter, z);
  let sum = 0;
  while (depth > 0) {
    const at = 5 * --depth;
    const u0 = cellStack[at]!;
    const u1 = cellStack[at + 1]!;
    const v0 = cellStack[at + 2]!;
    const v1 = cellStack[at + 3]!;
    const level = cellStack[at + 4]!;
    const um = (u0 + u1) / 2;
    const vm = (v0 + v1) / 2;
    const distance = Math.hypot(
      origin[0] + u[0] * um + v[0] * vm - x,
      origin[1] + u[1] * um + v[1] * vm - y,
      origin[2] + u[2] * um + v[2] * vm - z,
    );
    const du = (u1 - u0) * lu;
    const dv = (v1 - v0) * lv;
    const longest = Math.max(du, dv);
    if (longest > CELL_ANGLE * distance && level < 2 * MAX_DEPTH) {
      if (du >= dv) {
        depth = push(depth, u0, um, v0, v1, level + 1);
        depth = push(depth, um, u1, v0, v1, level + 1);
      } else {
        depth = push(depth, u0, u1, v0, vm, level + 1);
        depth = push(depth, u0, u1, vm, v1, level + 1);
      }
      continue;
    }
    for (let k = 0; k < 3; k++) {
      const o = origin[k]!;
      const uk = u[k]!;
      const vk = v[k]!;
      quad[k] = o + uk * u0 + vk * v0;
      quad[3 + k] = o + uk * u1 + vk * v0;
      quad[6 + k] = o + uk * u1 + vk * v1;
      quad[9 + k] = o + uk * u0 + vk * v1;
    }
    const factor = quadFactor(x, y, z, nx, ny, nz, quad);
    if (factor > 0) sum += factor * meanLuminance(emitter, x, y, z, nx, ny, nz, u0, u1, v0, v1);
  }
  return Math.PI * sum;
}

function push(depth: number, u0: number, u1: number, v0: number, v1: number, level: number): number {
  const at = 5 * depth;
  cellStack[at] = u0;
  cellStack[at + 1] = u1;
  cellStack[at + 2] = v0;
  cellStack[at + 3] = v1;
  cellStack[at + 4] = level;
  return depth + 1;
}

/** The whole aperture, or its parts above and below the horizon of a point at height z. */
function pushRoots(emitter: Emitter, z: number): number {
  const { origin, u, v } = emitter.rect;
  const alongU = u[2] !== 0 ? (z - origin[2]) / u[2] : -1;
  const alongV = v[2] !== 0 ? (z - origin[2]) / v[2] : -1;
  if (alongU > 0 && alongU < 1) return push(push(0, 0, alongU, 0, 1, 0), alongU, 1, 0, 1, 0);
  if (alongV > 0 && alongV < 1) return push(push(0, 0, 1, 0, alongV, 0), 0, 1, alongV, 1, 0);
  return push(0, 0, 1, 0, 1, 0);
}

function meanLuminance(
  emitter: Emitter,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  u0: number,
  u1: number,
  v0: number,
  v1: number,
): number {
  const { rect, normal, outside } = emitter;
  const { origin, u, v } = rect;
  let sum = 0;
  let weights = 0;
  let plain = 0;
  for (let g = 0; g < 4; g++) {
    const fu = (u0 + u1) / 2 + (g & 1 ? GAUSS : -GAUSS) * (u1 - u0);
    const fv = (v0 + v1) / 2 + (g & 2 ? GAUSS : -GAUSS) * (v1 - v0);
    const dx = origin[0] + u[0] * fu + v[0] * fv - x;
    const dy = origin[1] + u[1] * fu + v[1] * fv - y;
    const dz = origin[2] + u[2] * fu + v[2] * fv - z;
    const d2 = dx * dx + dy * dy + dz * dz;
    const d = Math.sqrt(d2);
    const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
    const luminance = luminanceThrough(outside!, dz / d, Math.min(1, Math.max(0, toFace / d)));
    const w = Math.max(0, dx * nx + dy * ny + dz * nz) * (toFace / (d2 * d2));
    sum += w * luminance;
    weights += w;
    plain += luminance / 4;
  }
  return weights > 0 ? sum / weights : plain;
}
