import type { FineRect, PatternFrame, Vec3 } from '../../engine/light/types';
import type { PlacedSample, Position } from './types';

/** A point of a sample: along its width, along its height, out of its back, m. */
type Local = readonly [along: number, up: number, out: number];
type Axis = 0 | 1 | 2;

/** How far the panel of a five-piece front lies back, m. */
const RECESS_M = 0.008;

/** The faces of a sample that can be seen, without its back; a five-piece door as frame and panel. */
export function sampleFaces(sample: PlacedSample, surface: number, piece: number, detailed: boolean): FineRect[] {
  const [w, h, t] = sample.size_m;
  const face = (from: Local, to: Local, normal: Axis, sign: 1 | -1) =>
    faceBetween(sample, from, to, normal, sign, { surface, piece });
  const sides = [
    face([0, 0, 0], [0, h, t], 0, -1),
    face([w, 0, 0], [w, h, t], 0, 1),
    face([0, h, 0], [w, h, t], 1, 1),
    face([0, 0, 0], [w, 0, t], 1, -1),
  ];
  const f = sample.frame_m;
  if (f === null || !detailed) return [...sides, face([0, 0, t], [w, h, t], 2, 1)];
  const p = t - RECESS_M;
  return [
    ...sides,
    face([0, 0, t], [f, h, t], 2, 1),
    face([w - f, 0, t], [w, h, t], 2, 1),
    face([f, 0, t], [w - f, f, t], 2, 1),
    face([f, h - f, t], [w - f, h, t], 2, 1),
    face([f, f, p], [w - f, h - f, p], 2, 1),
    face([f, f, p], [f, h - f, t], 0, 1),
    face([w - f, f, p], [w - f, h - f, t], 0, -1),
    face([f, f, p], [w - f, f, t], 1, 1),
    face([f, h - f, p], [w - f, h - f, t], 1, -1),
  ];
}

/** The sample as a box: what it touches is not seen. */
export function sampleBox({ size_m: [w, h, t], placed, at }: PlacedSample): { readonly min: Vec3; readonly max: Vec3 } {
  const [from, to] = [worldOf(placed, at, [0, 0, 0]), worldOf(placed, at, [w, h, t])];
  return {
    min: from.map((value, k) => Math.min(value, to[k]!)) as unknown as Vec3,
    max: from.map((value, k) => Math.max(value, to[k]!)) as unknown as Vec3,
  };
}

/** What stands has its back to the panel and its height up; what lies has its height away from one. */
function worldOf(placed: Position, [x, y, z]: Vec3, [a, b, c]: Local): Vec3 {
  return placed === 'upright' ? [x + a, y - c, z + b] : [x + a, y + b, z + c];
}

function localOf(placed: Position, [x, y, z]: Vec3, [px, py, pz]: Vec3): Local {
  return placed === 'upright' ? [px - x, pz - z, y - py] : [px - x, py - y, pz - z];
}

function faceBetween(
  sample: PlacedSample,
  from: Local,
  to: Local,
  normal: Axis,
  sign: 1 | -1,
  { surface, piece }: Pick<FineRect, 'surface' | 'piece'>,
): FineRect {
  const { placed, at } = sample;
  const [p, q] = [worldOf(placed, at, from), worldOf(placed, at, to)];
  const origin = p.map((value, k) => Math.min(value, q[k]!)) as unknown as Vec3;
  const [axis, way] = worldNormal(placed, normal, sign);
  const edge = (k: number): Vec3 => [0, 1, 2].map((i) => (i === k ? Math.abs(q[k]! - p[k]!) : 0)) as unknown as Vec3;
  const [b, c] = [edge((axis + 1) % 3), edge((axis + 2) % 3)];
  const [u, v] = way > 0 ? [b, c] : [c, b];
  return { origin, u, v, surface, piece, pattern: patternOf(sample, origin, u, v, normal, sign) };
}

function worldNormal(placed: Position, normal: Axis, sign: 1 | -1): readonly [axis: Axis, sign: 1 | -1] {
  if (placed === 'up' || normal === 0) return [normal, sign];
  return normal === 1 ? [2, sign] : [1, sign > 0 ? -1 : 1];
}

/** The pattern of the face runs on over its edges. */
function patternOf(sample: PlacedSample, origin: Vec3, u: Vec3, v: Vec3, normal: Axis, sign: 1 | -1): PatternFrame {
  const thickness = sample.size_m[2];
  const at = (point: Vec3): readonly [number, number] => {
    const [a, b, c] = localOf(sample.placed, sample.at, point);
    const beyond = normal === 2 ? 0 : sign * (thickness - c);
    const s = normal === 0 ? a + beyond : a;
    const t = normal === 1 ? b + beyond : b;
    return sample.grainUp ? [t, s] : [s, t];
  };
  const sum = (one: Vec3, other: Vec3): Vec3 => [one[0] + other[0], one[1] + other[1], one[2] + other[2]];
  const [s0, t0] = at(origin);
  const [su, tu] = at(sum(origin, u));
  const [sv, tv] = at(sum(origin, v));
  return { s0, t0, su: su - s0, tu: tu - t0, sv: sv - s0, tv: tv - t0 };
}
