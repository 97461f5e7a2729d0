import { type ReadyBeam, relativeIntensity } from '../photometry/relative-intensity';
import type { Emitter } from './emitters';
import { addCell, cell, cellCorners, clearCells, nextCell } from './face-cells';
import { quadFactor } from './polygon-factor';

const quad = new Float64Array(12);
const GAUSS = 0.5 / Math.sqrt(3);
const MOST_HALVINGS = 12;
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
  const widest = Math.max(LEAST_CELL_ANGLE, Math.min(CELL_ANGLE, beam.width));
  clearCells();
  addCell(0, 1, 0, 1);
  let sum = 0;
  while (nextCell(rect, x, y, z, widest, MOST_HALVINGS)) sum += cellLight(emitter, beam, x, y, z, nx, ny, nz);
  return exitance * sum;
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
): number {
  const { rect, area } = emitter;
  const [u0, u1, v0, v1] = cell as unknown as [number, number, number, number];
  cellCorners(rect, quad);
  const above = cornersAbove(x, y, z, nx, ny, nz);
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

/** How many corners of `quad` the receiver has above its horizon. */
function cornersAbove(x: number, y: number, z: number, nx: number, ny: number, nz: number): number {
  let above = 0;
  for (let k = 0; k < 12; k += 3) {
    if ((quad[k]! - x) * nx + (quad[k + 1]! - y) * ny + (quad[k + 2]! - z) * nz > 0) above++;
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
