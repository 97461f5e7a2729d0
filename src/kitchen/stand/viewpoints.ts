import { lensTowards } from '../../engine/light/lens';
import type { Solid, Vec3, Viewpoint } from '../../engine/light/types';
import { BOOTH } from './booth';

/** Eyes over the table: a person seated at a counter, and one who stands at it, m. */
const SEATED_M = 0.32;
const STANDING_M = 0.72;
const ABOVE_M = 1.25;
/** From the foremost sample to the eye, m. */
const AWAY_M = 0.85;
const AWAY_ABOVE_M = 0.3;
/** The eye keeps this far from the booth's front, m. */
const LEAST_Y_M = 0.2;
/** A picture this many times as wide as high takes in all samples, with a margin about them. */
const ASPECT = 1.35;
const MARGIN = 1.14;
/** The lowest part of a picture's height, where the controls lie over it: no sample is there. On a screen of 1280 x 800 it is this much. */
const FOOT_PART = 0.21;
/** The highest part, where a note may stand. */
const HEAD_PART = 0.05;
/** Rounds in which the samples come to the middle of what is left of the picture. */
const ROUNDS = 8;

/** Where one sits or stands before the samples, and how one looks down on them. */
export function standViewpoints(samples: readonly Solid[]): Viewpoint[] {
  const front = Math.min(...samples.map(({ min }) => min[1]));
  const corners = samples.flatMap(cornersOf);
  const look = (id: string, name: string, height: number, away: number): Viewpoint => {
    const eye: Vec3 = [BOOTH.width / 2, Math.max(LEAST_Y_M, front - away), height];
    return { id: `stand-${id}`, name, eye, ...framed(eye, (front + BOOTH.depth) / 2, corners), overview: true };
  };
  return [
    look('standing', 'Standing', STANDING_M, AWAY_M),
    look('seated', 'Seated', SEATED_M, AWAY_M),
    look('above', 'From above', ABOVE_M, AWAY_ABOVE_M),
  ];
}

/** The point over the line y = `depth` that has all corners evenly in the picture over its foot, and the angle that takes them in. */
function framed(eye: Vec3, depth: number, corners: readonly Vec3[]): Pick<Viewpoint, 'target' | 'fov_deg'> {
  let target: Vec3 = [eye[0], depth, 0];
  let half = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const seen = corners.map((corner) => seenFrom(eye, target, corner));
    const [low, high] = [Math.min(...seen.map(([, y]) => y)), Math.max(...seen.map(([, y]) => y))];
    const side = Math.max(...seen.map(([x]) => Math.abs(x)));
    half = MARGIN * Math.max((high - low) / (2 * (1 - FOOT_PART - HEAD_PART)), side / ASPECT);
    const distance = Math.hypot(target[1] - eye[1], target[2] - eye[2]);
    target = [target[0], target[1], target[2] + ((low + high) / 2 - half * (FOOT_PART - HEAD_PART)) * distance];
  }
  return { target, fov_deg: (360 / Math.PI) * Math.atan(half) };
}

/** Where a point stands in the picture, as tangents from its middle. */
function seenFrom(eye: Vec3, target: Vec3, point: Vec3): readonly [x: number, y: number] {
  const { forward, right, up, shift } = lensTowards(eye, target);
  const along = (axis: Vec3) => axis.reduce((sum, value, k) => sum + value * (point[k]! - eye[k]!), 0);
  const distance = along(forward);
  return [along(right) / distance, along(up) / distance - shift];
}

const cornersOf = ({ min, max }: Solid): Vec3[] =>
  [0, 1, 2, 3, 4, 5, 6, 7].map((corner) => [
    (corner & 1 ? max : min)[0],
    (corner & 2 ? max : min)[1],
    (corner & 4 ? max : min)[2],
  ]);
