import { anyAbove, ORIGIN_OFFSET_M } from './emitter-irradiance';
import type { RectBvh } from './rect-bvh';
import { sunIrradiance } from './sun-irradiance';
import { windowIrradiance } from './window-irradiance';
import { PARTS, type WindowLight } from './window-light';
import { windowShares } from './window-shares';

const whole = new Float64Array(PARTS);
const shares = new Float64Array(PARTS);

/**
 * Direct illuminance in lx that one window gives at a point with unit normal n, added to its light groups in `out`: exact
 * unshadowed values times visible shares, and the sun where one looks `finest`.
 */
export function addWindowDirect(
  window: WindowLight,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  finest: boolean,
  out: Float64Array,
): void {
  const { corners, normal, groups } = window;
  const before = (x - corners[0]!) * normal[0]! + (y - corners[1]!) * normal[1]! + (z - corners[2]!) * normal[2]!;
  if (before <= 1e-7 || !anyAbove(corners, x, y, z, nx, ny, nz)) return;
  const ox = x + nx * ORIGIN_OFFSET_M;
  const oy = y + ny * ORIGIN_OFFSET_M;
  const oz = z + nz * ORIGIN_OFFSET_M;
  if (finest && window.sun) out[window.sunGroup]! += sunIrradiance(window, bvh, ox, oy, oz, nx, ny, nz, true);
  windowShares(window, bvh, ox, oy, oz, nx, ny, nz, finest, shares);
  if (shares[0] === 0 && shares[1] === 0 && shares[2] === 0) return;
  windowIrradiance(window, x, y, z, nx, ny, nz, whole);
  for (let part = 0; part < PARTS; part++) out[groups[part]!]! += whole[part]! * shares[part]!;
}
