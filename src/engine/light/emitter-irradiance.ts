import type { Emitter } from './emitters';
import { lampIrradiance } from './lamp-irradiance';
import type { RectBvh } from './rect-bvh';
import { visibleShare } from './visible-share';

export const ORIGIN_OFFSET_M = 1e-4;
/** Beside a narrow beam no shadow rays are sent for less light than this share of the face's exitance (our judgment). */
const DARK = 1e-9;

/**
 * Direct illuminance in lx (level 1) that one emitter gives at a point with unit normal n: the exact unshadowed value
 * times the visible share, weighted by what each part of the face would give.
 */
export function emitterIrradiance(
  emitter: Emitter,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  finest: boolean,
): number {
  const { corners, normal } = emitter;
  const before = (x - corners[0]!) * normal[0]! + (y - corners[1]!) * normal[1]! + (z - corners[2]!) * normal[2]!;
  if (before <= 1e-7 || !anyAbove(corners, x, y, z, nx, ny, nz)) return 0;
  const ox = x + nx * ORIGIN_OFFSET_M;
  const oy = y + ny * ORIGIN_OFFSET_M;
  const oz = z + nz * ORIGIN_OFFSET_M;
  if (emitter.beam) {
    const light = lampIrradiance(emitter, x, y, z, nx, ny, nz);
    return light > DARK * emitter.exitance ? light * visibleShare(emitter, bvh, ox, oy, oz, nx, ny, nz, finest) : 0;
  }
  const share = visibleShare(emitter, bvh, ox, oy, oz, nx, ny, nz, finest);
  if (share === 0) return 0;
  return lampIrradiance(emitter, x, y, z, nx, ny, nz) * share;
}

/** Whether any of four corners lies in front of a plane through a point. */
export function anyAbove(
  corners: Float64Array,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): boolean {
  for (let k = 0; k < 12; k += 3) {
    if ((corners[k]! - x) * nx + (corners[k + 1]! - y) * ny + (corners[k + 2]! - z) * nz > 1e-9) return true;
  }
  return false;
}
