import { readGlass } from './glass';
import { quadFactor } from './polygon-factor';
import { luminanceOutside, PARTS, partTowards, type WindowLight } from './window-light';

const cellStack = new Float64Array(5 * 64);
const quad = new Float64Array(12);
const means = new Float64Array(PARTS);
const GAUSS = 0.5 / Math.sqrt(3);
const MAX_DEPTH = 6;
const CELL_ANGLE = 0.7;
/** The same under a clear sky, which is bright round the sun. */
const CLEAR_CELL_ANGLE = 0.35;

/**
 * Unshadowed light of a window by what is seen through it, pi times luminance summed into `out` (sky, ground, facing wall;
 * lx): the aperture cut into cells small against their distance (and along the horizon and the upper edge of the wall), each
 * with its exact form factor times the mean luminance at 2 x 2 Gauss points.
 */
export function windowIrradiance(
  window: WindowLight,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  out: Float64Array,
): void {
  out.fill(0);
  const { origin, u, v } = window.rect;
  const lu = Math.hypot(u[0], u[1], u[2]);
  const lv = Math.hypot(v[0], v[1], v[2]);
  let depth = pushRoots(window, x, y, z);
  const cellAngle = window.isUneven ? CLEAR_CELL_ANGLE : CELL_ANGLE;
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
    if (Math.max(du, dv) > cellAngle * distance && level < 2 * MAX_DEPTH) {
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
    if (factor <= 0) continue;
    meanLuminances(window, x, y, z, nx, ny, nz, u0, u1, v0, v1);
    for (let part = 0; part < PARTS; part++) out[part]! += Math.PI * factor * means[part]!;
  }
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

/** The whole aperture, or its parts below the horizon of a point, before the wall across the way, and above. */
function pushRoots({ rect, wallTangent, outX, outY }: WindowLight, x: number, y: number, z: number): number {
  const { origin, u, v } = rect;
  const rise = u[2] + v[2];
  if (rise === 0) return push(0, 0, 1, 0, 1, 0);
  // Seen from the point the wall's edge is a plane along the wall: it crosses the glass in a level line.
  const ahead = (origin[0] - x) * outX + (origin[1] - y) * outY;
  const horizon = (z - origin[2]) / rise;
  const edge = (z + ahead * wallTangent - origin[2]) / rise;
  const first = clamped(Math.min(horizon, edge));
  const second = clamped(Math.max(horizon, edge));
  const depth = pushBand(pushBand(0, u[2] !== 0, 0, first), u[2] !== 0, first, second);
  return pushBand(depth, u[2] !== 0, second, 1);
}

/** A level band of the aperture, if there is any of it. */
function pushBand(depth: number, alongU: boolean, from: number, to: number): number {
  if (to <= from) return depth;
  return alongU ? push(depth, from, to, 0, 1, 0) : push(depth, 0, 1, from, to, 0);
}

const clamped = (share: number): number => Math.min(1, Math.max(0, share));

/** Mean luminance of a cell by part, weighted by what each point gives, into `means`. */
function meanLuminances(
  window: WindowLight,
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
): void {
  const { rect, normal } = window;
  const { origin, u, v } = rect;
  means.fill(0);
  let weights = 0;
  for (let pass = 0; pass < 2 && weights === 0; pass++) {
    for (let g = 0; g < 4; g++) {
      const fu = (u0 + u1) / 2 + (g & 1 ? GAUSS : -GAUSS) * (u1 - u0);
      const fv = (v0 + v1) / 2 + (g & 2 ? GAUSS : -GAUSS) * (v1 - v0);
      const dx = origin[0] + u[0] * fu + v[0] * fv - x;
      const dy = origin[1] + u[1] * fu + v[1] * fv - y;
      const dz = origin[2] + u[2] * fu + v[2] * fv - z;
      const d2 = dx * dx + dy * dy + dz * dz;
      const d = Math.sqrt(d2);
      const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
      // A cell cut by the receiver's own plane may show it none of its four points: then all count alike.
      const w = pass === 0 ? Math.max(0, dx * nx + dy * ny + dz * nz) * (toFace / (d2 * d2)) : 1;
      if (w === 0) continue;
      const part = partTowards(window, dx / d, dy / d, dz / d);
      const luminance = luminanceOutside(window, part, dx / d, dy / d, dz / d);
      means[part]! += w * luminance * readGlass(window.glass, Math.min(1, Math.max(0, toFace / d)));
      weights += w;
    }
  }
  for (let part = 0; part < PARTS; part++) means[part]! /= weights;
}
