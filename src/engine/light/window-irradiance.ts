import { addCell, cell, cellCorners, clearCells, nextCell } from './face-cells';
import { readGlass } from './glass';
import { quadFactor } from './polygon-factor';
import { luminanceOutside, PARTS, partTowards, type WindowLight } from './window-light';

const quad = new Float64Array(12);
const means = new Float64Array(PARTS);
const GAUSS = 0.5 / Math.sqrt(3);
const MOST_HALVINGS = 12;
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
  const { rect } = window;
  clearCells();
  addBands(window, x, y, z);
  const cellAngle = window.isUneven ? CLEAR_CELL_ANGLE : CELL_ANGLE;
  while (nextCell(rect, x, y, z, cellAngle, MOST_HALVINGS)) {
    cellCorners(rect, quad);
    const factor = quadFactor(x, y, z, nx, ny, nz, quad);
    if (factor <= 0) continue;
    meanLuminances(window, x, y, z, nx, ny, nz);
    for (let part = 0; part < PARTS; part++) out[part]! += Math.PI * factor * means[part]!;
  }
}

/** The whole aperture, or its parts below the horizon of a point, before the wall across the way, and above. */
function addBands({ rect, wallTangent, outX, outY }: WindowLight, x: number, y: number, z: number): void {
  const { origin, u, v } = rect;
  const rise = u[2] + v[2];
  if (rise === 0) {
    addCell(0, 1, 0, 1);
    return;
  }
  // Seen from the point the wall's edge is a plane along the wall: it crosses the glass in a level line.
  const ahead = (origin[0] - x) * outX + (origin[1] - y) * outY;
  const horizon = (z - origin[2]) / rise;
  const edge = (z + ahead * wallTangent - origin[2]) / rise;
  const first = clamped(Math.min(horizon, edge));
  const second = clamped(Math.max(horizon, edge));
  addBand(u[2] !== 0, 0, first);
  addBand(u[2] !== 0, first, second);
  addBand(u[2] !== 0, second, 1);
}

/** A level band of the aperture, if there is any of it. */
function addBand(alongU: boolean, from: number, to: number): void {
  if (to <= from) return;
  if (alongU) addCell(from, to, 0, 1);
  else addCell(0, 1, from, to);
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
): void {
  const { rect, normal } = window;
  const [u0, u1, v0, v1] = cell as unknown as [number, number, number, number];
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
