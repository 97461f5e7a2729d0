import { lensTowards } from '../engine/light/lens';
import type { Rect, Vec3, Viewpoint } from '../engine/light/types';
import { dollied, type EyeLimits, eyeOf, type Orbit, orbitFromEye, turned } from './orbit';
import { pickRect } from './pick';

/** Where the camera is now. */
export interface Pose {
  readonly eye: Vec3;
  readonly target: Vec3;
  readonly fov_deg: number;
}

interface Flight {
  readonly from: Pose;
  readonly to: Pose;
  readonly start_ms: number;
}

const FLIGHT_MS = 200;
/** The camera counts as moving this long after the last touch, so that a pause in a drag does not flicker. */
const SETTLE_MS = 160;
/** The eye keeps this far from what it moves towards, m. */
const CLEARANCE_M = 0.06;
/** Eyes of people, from seated children to tall people standing, m. */
const LEAST_EYE_M = 0.9;
const MOST_EYE_M = 2;
/** What reaches higher than this above the floor cannot be stepped on, m. */
const STEP_OVER_M = 0.1;

/** The camera of the picture: flies to viewpoints, turns about the target, walks, keeps out of walls and furniture. */
export class CameraRig {
  #pose: Pose;
  #orbit: Orbit;
  #flight: Flight | null = null;
  #touched_ms = Number.NEGATIVE_INFINITY;

  constructor(
    viewpoint: Viewpoint,
    private rects: readonly Rect[],
    private limits: EyeLimits,
  ) {
    this.#pose = poseOf(viewpoint);
    this.#orbit = orbitOf(this.#pose);
  }

  /** A changed room: the camera stays where it is. */
  moveInto(rects: readonly Rect[], limits: EyeLimits): void {
    this.rects = rects;
    this.limits = limits;
  }

  fly(viewpoint: Viewpoint, now_ms: number, atOnce: boolean): void {
    const to = poseOf(viewpoint);
    this.#orbit = orbitOf(to);
    this.#flight = atOnce ? null : { from: this.#pose, to, start_ms: now_ms };
    if (atOnce) this.#pose = to;
  }

  /** The pose at a time; call once per frame. */
  poseAt(now_ms: number): Pose {
    if (this.#flight) {
      const t = Math.min(1, Math.max(0, (now_ms - this.#flight.start_ms) / FLIGHT_MS));
      this.#pose = posesMixed(this.#flight.from, this.#flight.to, 1 - (1 - t) ** 3);
      if (t === 1) this.#flight = null;
    }
    return this.#pose;
  }

  get flying(): boolean {
    return this.#flight !== null;
  }

  isMoving(now_ms: number): boolean {
    return this.flying || now_ms - this.#touched_ms < SETTLE_MS;
  }

  /** Turns about the target by angles in radians. */
  turn(byAzimuth: number, byElevation: number, now_ms: number): void {
    this.#try(turned(this.#settled(), byAzimuth, byElevation), now_ms);
  }

  /** Moves towards (factor < 1) or away from the target. */
  dolly(factor: number, now_ms: number): void {
    this.#try(dollied(this.#settled(), factor, this.#pose.eye), now_ms);
  }

  /** Steps on the floor, m, as one looks; the view goes along. Where something stands, the eye slides along it or stays. */
  walk(forward_m: number, right_m: number, now_ms: number): void {
    const orbit = this.#settled();
    this.#touched_ms = now_ms;
    const { eye } = this.#pose;
    const { right } = lensTowards(eye, orbit.target);
    const [x, y] = [-right[1] * forward_m + right[0] * right_m, right[0] * forward_m + right[1] * right_m];
    for (const [dx, dy] of [
      [x, y],
      [x, 0],
      [0, y],
    ] as const) {
      const to: Vec3 = [this.#within(eye[0] + dx, 0), this.#within(eye[1] + dy, 1), eye[2]];
      const isFurniture = this.#standsOnFurniture(to) && !this.#standsOnFurniture(eye);
      if ((to[0] !== eye[0] || to[1] !== eye[1]) && !isFurniture && !this.#isBlocked(eye, to)) {
        this.#stand(to, moved(orbit.target, to[0] - eye[0], to[1] - eye[1], 0));
        return;
      }
    }
  }

  /** Brings the eye to a height above the floor, m; one goes on looking at the same point. */
  standAt(height_m: number, now_ms: number): void {
    const orbit = this.#settled();
    this.#touched_ms = now_ms;
    const { eye } = this.#pose;
    // Where the eye is beyond these already (over an island, before a sample stand) it may stay.
    const height = Math.min(Math.max(MOST_EYE_M, eye[2]), Math.max(Math.min(LEAST_EYE_M, eye[2]), height_m));
    const to: Vec3 = [eye[0], eye[1], this.#within(height, 2)];
    if (!this.#isBlocked(eye, to)) this.#stand(to, orbit.target);
  }

  /** Moves the eye upward, or downward (negative), m; the view goes along. */
  lift(by_m: number, now_ms: number): void {
    const before = this.#settled();
    const from = this.#pose.eye[2];
    this.standAt(from + by_m, now_ms);
    const { eye } = this.#pose;
    if (eye[2] !== from) this.#stand(eye, moved(before.target, 0, 0, eye[2] - from));
  }

  /** How far the eye moves sideways for what is looked at to move by a pixel, m; `height_px` of the picture. */
  metersPerPixel(height_px: number): number {
    const { eye, target, fov_deg } = this.#pose;
    const distance = Math.hypot(eye[0] - target[0], eye[1] - target[1], eye[2] - target[2]);
    return (2 * distance * Math.tan((fov_deg * Math.PI) / 360)) / Math.max(1, height_px);
  }

  #within(value: number, axis: 0 | 1 | 2): number {
    return Math.min(this.limits.max[axis], Math.max(this.limits.min[axis], value));
  }

  #standsOnFurniture(at: Vec3): boolean {
    const below = pickRect(this.rects, at, [0, 0, -1]);
    return below !== null && at[2] - below.distance > STEP_OVER_M;
  }

  #stand(eye: Vec3, target: Vec3): void {
    this.#pose = { ...this.#pose, eye, target };
    this.#orbit = orbitOf(this.#pose);
  }

  #settled(): Orbit {
    // A hand on the camera ends a flight where it is.
    if (this.#flight) {
      this.#flight = null;
      this.#orbit = orbitOf(this.#pose);
    }
    return this.#orbit;
  }

  #try(orbit: Orbit, now_ms: number): void {
    this.#touched_ms = now_ms;
    const eye = eyeOf(orbit, this.limits);
    if (!eye || this.#isBlocked(this.#pose.eye, eye)) return;
    this.#orbit = orbit;
    this.#pose = { eye, target: orbit.target, fov_deg: orbit.fov_deg };
  }

  #isBlocked(from: Vec3, to: Vec3): boolean {
    const path: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
    const length = Math.hypot(...path);
    return length > 1e-9 && pickRect(this.rects, from, path, 1 + CLEARANCE_M / length) !== null;
  }
}

const moved = ([x, y, z]: Vec3, dx: number, dy: number, dz: number): Vec3 => [x + dx, y + dy, z + dz];

function poseOf(viewpoint: Viewpoint): Pose {
  return { eye: viewpoint.eye, target: viewpoint.target, fov_deg: viewpoint.fov_deg };
}

function orbitOf(pose: Pose): Orbit {
  return orbitFromEye(pose.eye, pose.target, pose.fov_deg);
}

function posesMixed(from: Pose, to: Pose, t: number): Pose {
  const mix = (a: Vec3, b: Vec3) => [0, 1, 2].map((k) => a[k]! + t * (b[k]! - a[k]!)) as unknown as Vec3;
  return {
    eye: mix(from.eye, to.eye),
    target: mix(from.target, to.target),
    fov_deg: from.fov_deg + t * (to.fov_deg - from.fov_deg),
  };
}
