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

/** Whether the view is straight up or down: then the back wall is at the top of the picture, else the ceiling is. */
export function isPlumb(pose: Pose): boolean {
  return Math.hypot(pose.target[0] - pose.eye[0], pose.target[1] - pose.eye[1]) < 1e-6;
}

/** Direction (not unit) from the eye through a point of the picture; x and y from -1 (left, bottom) to 1. */
export function rayThrough(pose: Pose, aspect: number, x: number, y: number): Vec3 {
  const forward = unit(minus(pose.target, pose.eye));
  const level = Math.hypot(forward[0], forward[1]);
  const right: Vec3 = isPlumb(pose) ? [1, 0, 0] : [forward[1] / level, -forward[0] / level, 0];
  const up: Vec3 = [
    right[1] * forward[2] - right[2] * forward[1],
    right[2] * forward[0] - right[0] * forward[2],
    right[0] * forward[1] - right[1] * forward[0],
  ];
  const tan = Math.tan((verticalFovDeg(pose.fov_deg, aspect) * Math.PI) / 360);
  return [0, 1, 2].map((k) => forward[k]! + x * tan * aspect * right[k]! + y * tan * up[k]!) as unknown as Vec3;
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

function unit(a: Vec3): Vec3 {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
}
