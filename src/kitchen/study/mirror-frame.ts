import type { Vec3 } from '../../engine/light/types';

/** The local axes of a face and an eye. */
export interface MirrorFrame {
  /** Unit vector to the eye. */
  readonly toEye: Vec3;
  inRoom(local: Vec3): Vec3;
  inLobe(direction: Vec3): Vec3;
}

/** Axes with z along the normal and x along `line` in the face, or under the eye without one; null where the eye is not in front. */
export function frameTowards(normal: Vec3, towards: Vec3, line: Vec3 | null = null): MirrorFrame | null {
  const distance = Math.hypot(...towards);
  const cosine = dot(normal, towards) / distance;
  if (!(cosine > 1e-4)) return null;
  const along = towards.map((x, k) => x / distance - cosine * normal[k]!) as unknown as Vec3;
  const sine = Math.hypot(...along);
  // Straight on any axis across will do.
  const across: Vec3 = Math.abs(normal[0]) < 0.5 ? [1, 0, 0] : [0, 1, 0];
  const x = unit(line ?? (sine > 1e-9 ? along : cross(across, normal)));
  const y = cross(normal, x);
  return {
    toEye: line ? [dot(towards, x) / distance, dot(towards, y) / distance, cosine] : [sine, 0, cosine],
    inRoom: ([a, b, c]) => [0, 1, 2].map((k) => a * x[k]! + b * y[k]! + c * normal[k]!) as unknown as Vec3,
    inLobe: (d) => [dot(d, x), dot(d, y), dot(d, normal)],
  };
}

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

function unit(v: Vec3): Vec3 {
  const length = Math.hypot(...v);
  return [v[0] / length, v[1] / length, v[2] / length];
}
