import type { Vec3 } from './types';

/**
 * Up to this tilt the picture's plane stays upright and the lens is shifted instead, as architectural photographers do: walls
 * and cabinets stand straight. Beyond it the rest of the tilt turns the plane.
 */
const MOST_SHIFT_RAD = (24 * Math.PI) / 180;

/** A camera with a shift lens; unit vectors. A point of the picture plane is forward + x right + (y + shift) up. */
export interface Lens {
  readonly forward: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
  /** How far the middle of the picture lies above the axis, as a tangent (negative: below). */
  readonly shift: number;
}

/** The lens that has `target` in the middle of its picture. z is up; straight up or down, the back wall is at the top. */
export function lensTowards(eye: Vec3, target: Vec3): Lens {
  const x = target[0] - eye[0];
  const y = target[1] - eye[1];
  const level = Math.hypot(x, y);
  const [east, north] = level > 1e-6 ? [x / level, y / level] : [0, 1];
  const tilt = Math.atan2(target[2] - eye[2], level);
  const shifted = Math.min(MOST_SHIFT_RAD, Math.max(-MOST_SHIFT_RAD, tilt));
  const turned = tilt - shifted;
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  return {
    forward: [east * cos, north * cos, sin],
    right: [north, -east, 0],
    up: [-east * sin, -north * sin, cos],
    shift: Math.tan(shifted),
  };
}

/** Direction (not unit) through a point of the picture; x, y as tangents from its middle. */
export function directionThrough({ forward, right, up, shift }: Lens, x: number, y: number): Vec3 {
  const v = y + shift;
  return [
    forward[0] + x * right[0] + v * up[0],
    forward[1] + x * right[1] + v * up[1],
    forward[2] + x * right[2] + v * up[2],
  ];
}
