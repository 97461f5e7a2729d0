import { directionThrough, lensTowards } from '../engine/light/lens';
import type { Vec3 } from '../engine/light/types';
import type { Pose } from './camera-rig';

const WIDEST_FOV_DEG = 100;

/**
 * Vertical field of view for a picture of this aspect (width / height), degrees. A viewpoint's angle counts for the shorter
 * side, so that a narrow picture (a phone, half of a split) does not lose what the viewpoint is about.
 */
export function verticalFovDeg(fov_deg: number, aspect: number): number {
  if (aspect >= 1) return fov_deg;
  const widened = (2 * 180 * Math.atan(Math.tan((fov_deg * Math.PI) / 360) / aspect)) / Math.PI;
  return Math.max(fov_deg, Math.min(WIDEST_FOV_DEG, widened));
}

/** Direction (not unit) from the eye through a point of the picture; x and y from -1 (left, bottom) to 1. */
export function rayThrough(pose: Pose, aspect: number, x: number, y: number): Vec3 {
  const tan = Math.tan((verticalFovDeg(pose.fov_deg, aspect) * Math.PI) / 360);
  return directionThrough(lensTowards(pose.eye, pose.target), x * tan * aspect, y * tan);
}
