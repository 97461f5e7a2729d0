import { type ReadyBeam, relativeIntensity } from '../photometry/relative-intensity';
import type { Emitter } from './emitters';
import { quadFactor } from './polygon-factor';

const cellStack = new Float64Array(5 * 64);
const quad = new Float64Array(12);
const GAUSS = 0.5 / Math.sqrt(3);
const MAX_DEPTH = 12;
/** Cells this small against their distance, or against the beam's width, need 2 x 2 points only. */
const CELL_ANGLE = 0.25;
/** In beams of under 6 degrees cells stay this large, or a large face would take thousands; nothing one sees is that sharp. */
const LEAST_CELL_ANGLE = 0.05;

/**
 * Unshadowed direct illuminance in lx (level 1) that a lamp face gives at a point with unit normal n. Lambert: exactly, by
 * the polygon's form factor. Other beams: every part of the face radiates with the beam's intensity, E = integral of
 * I cos / d2 over the face, in cells small against their distance and against the beam.
 */
export function lampIrradiance(
  emitter: Emitter,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): number {
  const { beam, corners, exitance, rect } = emitter;
  if (!beam) return exitance * quadFactor(x, y, z, nx, ny, nz, corners);
  const { origin, u, v } = rect;
  const lu = Math.hypot(u[0], u[1], u[2]);
  const lv = Math.hypot(v[0], v[1], v[2]);
  const widest = Math.max(LEAST_CELL_ANGLE, Math.min(CELL_ANGLE, beam.width));
  let depth = push(0, 0, 1, 0, 1, 0);
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
    if (Math.max(du, dv) > widest * distance && level < MAX_DEPTH) {
      if (du >= dv) {
        depth = push(depth, u0, um, v0, v1, level + 1);
        depth = push(depth, um, u1, v0, v1, level + 1);
      } else {
        depth = push(depth, u0, u1, v0, vm, level + 1);
        depth = push(depth, u0, u1, vm, v1, level + 1);
      }
      continue;
    }
    sum += cellLight(emitter, beam, x, y, z, nx, ny, nz, u0, u1, v0, v1);
  }
  return exitance * sum;
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

/**
 * What a cell gives for an exitance of 1: I cos / d2 at 2 x 2 Gauss points, or, where the receiver's horizon cuts the cell,
 * the exact form factor of what is above it times the mean luminance there.
 */
function cellLight(
  emitter: Emitter,
  beam: ReadyBeam,
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
  const { rect, area } = emitter;
  const above = cornersAbove(emitter, x, y, z, nx, ny, nz, u0, u1, v0, v1);
  if (above === 0) return 0;
  const { origin, u, v } = rect;
  let light = 0;
  let weights = 0;
  for (let g = 0; g < 4; g++) {
    const fu = (u0 + u1) / 2 + (g & 1 ? GAUSS : -GAUSS) * (u1 - u0);
    const fv = (v0 + v1) / 2 + (g & 2 ? GAUSS : -GAUSS) * (v1 - v0);
    const dx = origin[0] + u[0] * fu + v[0] * fv - x;
    const dy = origin[1] + u[1] * fu + v[1] * fv - y;
    const dz = origin[2] + u[2] * fu + v[2] * fv - z;
    const d2 = dx * dx + dy * dy + dz * dz;
    const cosine = Math.max(0, dx * nx + dy * ny + dz * nz);
    const toFace = -(dx * emitter.normal[0]! + dy * emitter.normal[1]! + dz * emitter.normal[2]!);
    light += (cosine * intensityTowards(emitter, beam, -dx, -dy, -dz)) / (d2 * Math.sqrt(d2));
    weights += (cosine * toFace) / (d2 * d2);
  }
  if (above === 4) return (light * area * (u1 - u0) * (v1 - v0)) / 4;
  const factor = quadFactor(x, y, z, nx, ny, nz, quad);
  if (weights > 0) return (Math.PI * factor * light) / weights;
  return Math.PI * factor * cornerLuminance(emitter, beam, x, y, z, nx, ny, nz);
}

/** Sets `quad` to the cell's corners; how many of them the receiver has above its horizon. */
function cornersAbove(
  { rect: { origin, u, v } }: Emitter,
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
  let above = 0;
  for (let c = 0; c < 4; c++) {
    const fu = c === 0 || c === 3 ? u0 : u1;
    const fv = c < 2 ? v0 : v1;
    const cx = origin[0] + u[0] * fu + v[0] * fv;
    const cy = origin[1] + u[1] * fu + v[1] * fv;
    const cz = origin[2] + u[2] * fu + v[2] * fv;
    quad[3 * c] = cx;
    quad[3 * c + 1] = cy;
    quad[3 * c + 2] = cz;
    if ((cx - x) * nx + (cy - y) * ny + (cz - z) * nz > 0) above++;
  }
  return above;
}

/** Luminance per exitance at the corner of `quad` that stands highest over the receiver's horizon. */
function cornerLuminance(
  emitter: Emitter,
  beam: ReadyBeam,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): number {
  const { normal } = emitter;
  let highest = 0;
  let luminance = 0;
  for (let k = 0; k < 12; k += 3) {
    const dx = quad[k]! - x;
    const dy = quad[k + 1]! - y;
    const dz = quad[k + 2]! - z;
    const height = dx * nx + dy * ny + dz * nz;
    if (height <= highest) continue;
    highest = height;
    const d = Math.sqrt(dx * dx + dy * dy + dz * dz);
    const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!) / d;
    luminance = toFace > 0 ? intensityTowards(emitter, beam, -dx, -dy, -dz) / toFace : 0;
  }
  return luminance;
}

/** The beam's intensity per front lumen from the face towards (dx, dy, dz), which need not be of unit length. */
export function intensityTowards(emitter: Emitter, beam: ReadyBeam, dx: number, dy: number, dz: number): number {
  const { normal, rect } = emitter;
  const { u, v } = rect;
  const d = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const dn = (dx * normal[0]! + dy * normal[1]! + dz * normal[2]!) / d;
  if (!beam.web) return relativeIntensity(beam, 0, 0, dn);
  const du = (dx * u[0] + dy * u[1] + dz * u[2]) / (d * Math.sqrt(u[0] * u[0] + u[1] * u[1] + u[2] * u[2]));
  const dv = (dx * v[0] + dy * v[1] + dz * v[2]) / (d * Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]));
  return relativeIntensity(beam, du, dv, dn);
}
