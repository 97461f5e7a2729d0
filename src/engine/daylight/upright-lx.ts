import type { Vec3 } from '../light/types';
import { skyLx } from './sky-illuminance';
import type { Outdoors } from './types';

/**
 * Illuminance outside of an unobstructed plane with this outward unit normal, lx: sky, sun and level ground. Meant for
 * upright planes, right for any tilt.
 */
export function uprightLx(outdoors: Outdoors, outwardNormal: Vec3): number {
  return skyLx(outdoors.sky, outwardNormal) + sunLx(outdoors, outwardNormal) + groundLx(outdoors, outwardNormal);
}

/** The sun's part, lx. */
export function sunLx({ sun }: Outdoors, [nx, ny, nz]: Vec3): number {
  if (!sun) return 0;
  const [sx, sy, sz] = sun.towards;
  return sun.normal_lx * Math.max(0, nx * sx + ny * sy + nz * sz);
}

/** The part of a level ground without end, lx: the plane sees (1 - cos tilt) / 2 of a half space of it. */
export const groundLx = ({ ground_cdm2 }: Outdoors, [, , nz]: Vec3): number => (Math.PI * ground_cdm2 * (1 - nz)) / 2;

/**
 * Luminance of a long, upright, diffuse wall across the way that looks back at a window, cd/m2. It is lit by what an
 * open plane of its facing gets; that the window's own house shades it is left out. A window that looks straight up has
 * no wall across: 0.
 */
export function facingLuminance(outdoors: Outdoors, outwardNormal: Vec3): number {
  const normal = facingNormal(outwardNormal);
  return normal ? (outdoors.facing_reflectance * uprightLx(outdoors, normal)) / Math.PI : 0;
}

/** Unit normal of the upright wall that looks back; null for a window that looks straight up or down. */
export function facingNormal([x, y]: Vec3): Vec3 | null {
  const level = Math.hypot(x, y);
  return level > 1e-6 ? [-x / level, -y / level, 0] : null;
}
