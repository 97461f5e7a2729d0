import { readGlass } from './glass';
import type { RectBvh } from './rect-bvh';
import { isBlocked } from './rect-trace';
import type { WindowLight } from './window-light';

/** Tangent of the sun's mean angular radius, 16 arc minutes (15.99 at 1 au): its edge blurs shadows. */
const SUN_RADIUS = Math.tan((0.2666 * Math.PI) / 180);
/** Points of the sun's disc: its centre and rim first, then all over it. */
const PROBES = 5;
const DISC = 24;
const GOLDEN_TURN = (3 - Math.sqrt(5)) / 2;
const DISC_A = new Float64Array(PROBES + DISC);
const DISC_B = new Float64Array(PROBES + DISC);
for (let k = 0; k < PROBES + DISC; k++) {
  const radius = k === 0 ? 0 : k < PROBES ? 0.98 : Math.sqrt((k - PROBES + 0.5) / DISC);
  const turn = k < PROBES ? ((k - 1) * Math.PI) / 2 : k * GOLDEN_TURN;
  DISC_A[k] = radius * Math.cos(turn);
  DISC_B[k] = radius * Math.sin(turn);
}
/** Rays end this far before the glass, so as not to meet it. */
const GLASS_GAP_M = 3e-4;

/**
 * Illuminance by the sun through one window at a point with unit normal n, lx: the share of the sun's disc that is seen past
 * the edges of the glass and all rectangles, times beam, cosine and glass. Patches of sun have the soft edge they have in a room;
 * without `disc` the sun is a point.
 */
export function sunIrradiance(
  window: WindowLight,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  disc: boolean,
): number {
  const { sun, normal, corners } = window;
  if (!sun) return 0;
  const [sx, sy, sz] = sun.towards;
  const facing = nx * sx + ny * sy + nz * sz;
  if (facing <= 0) return 0;
  const before = (x - corners[0]!) * normal[0]! + (y - corners[1]!) * normal[1]! + (z - corners[2]!) * normal[2]!;
  if (before <= 1e-7) return 0;
  const cosine = -(sx * normal[0]! + sy * normal[1]! + sz * normal[2]!);
  const distance = before / cosine;
  if (!passesGlass(window, x + sx * distance, y + sy * distance, z + sz * distance, (distance * SUN_RADIUS) / cosine)) {
    return 0;
  }
  // Two directions across the beam, for the disc.
  const ax = Math.abs(sz) < 0.9 ? sy : 0;
  const ay = Math.abs(sz) < 0.9 ? -sx : sz;
  const az = Math.abs(sz) < 0.9 ? 0 : -sy;
  const length = Math.sqrt(ax * ax + ay * ay + az * az);
  const scale = SUN_RADIUS / length;
  const bx = sy * az - sz * ay;
  const by = sz * ax - sx * az;
  const bz = sx * ay - sy * ax;
  let seen = 0;
  let of = disc ? PROBES : 1;
  for (let k = 0; k < (disc ? PROBES + DISC : 1); k++) {
    if (k === PROBES) {
      if (seen === 0 || seen === PROBES) break;
      seen = 0;
      of = DISC;
    }
    const p = DISC_A[k]! * scale;
    const q = DISC_B[k]! * scale;
    const dx = sx + ax * p + bx * q;
    const dy = sy + ay * p + by * q;
    const dz = sz + az * p + bz * q;
    const towards = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
    if (towards <= 1e-9) continue;
    const t = before / towards;
    if (!passesGlass(window, x + dx * t, y + dy * t, z + dz * t, 0)) continue;
    if (!isBlocked(bvh, x, y, z, dx, dy, dz, Math.max(0, t - GLASS_GAP_M / towards))) seen++;
  }
  return (sun.normal_lx * facing * readGlass(window.glass, cosine) * seen) / of;
}

/** Whether a point of the glass plane lies within the glass, or no farther from it than `margin`, m. */
function passesGlass(
  { rect: { origin, u, v } }: WindowLight,
  x: number,
  y: number,
  z: number,
  margin: number,
): boolean {
  const px = x - origin[0];
  const py = y - origin[1];
  const pz = z - origin[2];
  const lu = Math.abs(u[0] + u[1] + u[2]);
  const lv = Math.abs(v[0] + v[1] + v[2]);
  const alongU = (px * u[0] + py * u[1] + pz * u[2]) / lu;
  const alongV = (px * v[0] + py * v[1] + pz * v[2]) / lv;
  return alongU >= -margin && alongU <= lu + margin && alongV >= -margin && alongV <= lv + margin;
}
