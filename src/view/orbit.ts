import type { Vec3 } from '../engine/light/types';

/** A camera in orbit: from `target`, the eye stands at `azimuth` (about z, from +x) and `elevation`, radians. */
export interface Orbit {
  readonly target: Vec3;
  readonly azimuth: number;
  readonly elevation: number;
  /** The distance asked for, m; walls may hold the eye nearer. */
  readonly distance: number;
  readonly fov_deg: number;
}

/** The box the eye may move in, m. */
export interface EyeLimits {
  readonly min: Vec3;
  readonly max: Vec3;
}

export const LEAST_DISTANCE_M = 0.3;
const MOST_DISTANCE_M = 20;
/** Beyond these the picture would turn over (radians, about 83 degrees up and 40 down). */
const MOST_ELEVATION = 1.45;
const LEAST_ELEVATION = -0.7;

/** The orbit whose eye and target these are. */
export function orbitFromEye(eye: Vec3, target: Vec3, fov_deg: number): Orbit {
  const [x, y, z] = [eye[0] - target[0], eye[1] - target[1], eye[2] - target[2]];
  const distance = Math.max(Math.hypot(x, y, z), 1e-6);
  return { target, azimuth: Math.atan2(y, x), elevation: Math.asin(z / distance), distance, fov_deg };
}

/** Unit vector from the target towards the eye. */
function outward(orbit: Orbit): Vec3 {
  const level = Math.cos(orbit.elevation);
  return [level * Math.cos(orbit.azimuth), level * Math.sin(orbit.azimuth), Math.sin(orbit.elevation)];
}

/**
 * Where the eye stands: at the distance asked for, or as near to it as the limits allow along that direction. Null when no
 * point in that direction, at the least distance or more, is inside the limits.
 */
export function eyeOf(orbit: Orbit, limits: EyeLimits): Vec3 | null {
  const direction = outward(orbit);
  let nearest = LEAST_DISTANCE_M;
  let farthest = MOST_DISTANCE_M;
  for (let k = 0; k < 3; k++) {
    const low = limits.min[k]! - orbit.target[k]!;
    const high = limits.max[k]! - orbit.target[k]!;
    const d = direction[k]!;
    if (Math.abs(d) < 1e-9) {
      if (low > 0 || high < 0) return null;
      continue;
    }
    nearest = Math.max(nearest, Math.min(low / d, high / d));
    farthest = Math.min(farthest, Math.max(low / d, high / d));
  }
  if (nearest > farthest) return null;
  const distance = Math.min(farthest, Math.max(nearest, orbit.distance));
  return [0, 1, 2].map((k) => orbit.target[k]! + distance * direction[k]!) as unknown as Vec3;
}

/** Turns about the target, radians; elevation stays within its limits, or moves back towards them. */
export function turned(orbit: Orbit, byAzimuth: number, byElevation: number): Orbit {
  const high = Math.max(MOST_ELEVATION, orbit.elevation);
  const low = Math.min(LEAST_ELEVATION, orbit.elevation);
  return {
    ...orbit,
    azimuth: orbit.azimuth + byAzimuth,
    elevation: Math.min(high, Math.max(low, orbit.elevation + byElevation)),
  };
}

/** Moves towards (factor < 1) or away from the target, starting at the distance the eye really has. */
export function dollied(orbit: Orbit, factor: number, eye: Vec3): Orbit {
  const real = Math.hypot(eye[0] - orbit.target[0], eye[1] - orbit.target[1], eye[2] - orbit.target[2]);
  return { ...orbit, distance: Math.min(MOST_DISTANCE_M, Math.max(LEAST_DISTANCE_M, real * factor)) };
}
