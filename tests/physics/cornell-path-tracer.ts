import type { Rect, Vec3 } from '../../src/engine/light/types';

// A path tracer that shares nothing with the engine but the rectangles: every ray tries every rectangle, one random point
// of the lamp per bounce, absorption by Russian roulette. Slow and unbiased.

export interface PathScene {
  readonly rects: readonly Rect[];
  readonly lamp: Rect;
  readonly exitance: number;
  /** Reflectance per surface and band; black (surface below 0) reflects nothing. */
  readonly reflectance: readonly (readonly number[])[];
}

export interface Estimate {
  readonly mean: number[];
  readonly standardError: number[];
}

interface Hit {
  readonly distance: number;
  readonly rect: Rect;
  readonly normal: Vec3;
}

const EPSILON = 1e-7;
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const along = (o: Vec3, d: Vec3, t: number): Vec3 => [o[0] + d[0] * t, o[1] + d[1] * t, o[2] + d[2] * t];
const unit = (a: Vec3): Vec3 => {
  const length = Math.sqrt(dot(a, a));
  return [a[0] / length, a[1] / length, a[2] / length];
};

/** Irradiance at a point in each band, from `paths` random paths. */
export function traceIrradiance(scene: PathScene, point: Vec3, normal: Vec3, paths: number, seed: number): Estimate {
  const random = xorshift(seed);
  const planes = scene.rects.map((rect) => ({ rect, normal: unit(cross(rect.u, rect.v)) }));
  const bands = scene.reflectance[0]!.length;
  const sum = new Array<number>(bands).fill(0);
  const squares = new Array<number>(bands).fill(0);
  for (let path = 0; path < paths; path++) {
    const light = new Array<number>(bands).fill(fromLamp(scene, planes, point, normal, random));
    const throughput = new Array<number>(bands).fill(1);
    let at = point;
    let front = normal;
    for (;;) {
      const direction = cosineAround(front, random);
      const hit = nearest(planes, at, direction);
      if (!hit || hit.rect.surface < 0 || dot(hit.normal, direction) > 0) break;
      const rho = scene.reflectance[hit.rect.surface]!;
      let most = 0;
      for (let k = 0; k < bands; k++) {
        throughput[k]! *= rho[k]!;
        most = Math.max(most, throughput[k]!);
      }
      at = along(at, direction, hit.distance);
      front = hit.normal;
      const direct = fromLamp(scene, planes, at, front, random);
      for (let k = 0; k < bands; k++) light[k]! += throughput[k]! * direct;
      const survival = Math.min(1, most);
      if (random() >= survival) break;
      for (let k = 0; k < bands; k++) throughput[k]! /= survival;
    }
    for (let k = 0; k < bands; k++) {
      sum[k]! += light[k]!;
      squares[k]! += light[k]! ** 2;
    }
  }
  const mean = sum.map((s) => s / paths);
  return { mean, standardError: squares.map((s, k) => Math.sqrt((s / paths - mean[k]! ** 2) / paths)) };
}

type Planes = readonly { readonly rect: Rect; readonly normal: Vec3 }[];

/** What one random point of the lamp gives, the whole lamp taken to be like it. */
function fromLamp(scene: PathScene, planes: Planes, at: Vec3, front: Vec3, random: () => number): number {
  const { lamp, exitance } = scene;
  const area = cross(lamp.u, lamp.v);
  const spot = along(along(lamp.origin, lamp.u, random()), lamp.v, random());
  const to: Vec3 = [spot[0] - at[0], spot[1] - at[1], spot[2] - at[2]];
  const received = dot(to, front);
  const sent = -dot(to, area);
  if (received <= EPSILON || sent <= EPSILON) return 0;
  const hit = nearest(planes, at, to);
  if (hit && hit.distance < 1 - 1e-6) return 0;
  return (exitance * received * sent) / (Math.PI * dot(to, to) ** 2);
}

function nearest(planes: Planes, o: Vec3, d: Vec3): Hit | null {
  let best: Hit | null = null;
  for (const { rect, normal } of planes) {
    const facing = dot(d, normal);
    if (Math.abs(facing) < 1e-12) continue;
    const from: Vec3 = [rect.origin[0] - o[0], rect.origin[1] - o[1], rect.origin[2] - o[2]];
    const t = dot(from, normal) / facing;
    if (t < EPSILON || (best && t >= best.distance)) continue;
    const place: Vec3 = [d[0] * t - from[0], d[1] * t - from[1], d[2] * t - from[2]];
    const u = dot(place, rect.u) / dot(rect.u, rect.u);
    const v = dot(place, rect.v) / dot(rect.v, rect.v);
    if (u >= 0 && u <= 1 && v >= 0 && v <= 1) best = { distance: t, rect, normal };
  }
  return best;
}

/** A direction whose chance goes with its cosine: a random point of the unit sphere set on the normal (Lambert). */
function cosineAround(normal: Vec3, random: () => number): Vec3 {
  const z = 2 * random() - 1;
  const turn = 2 * Math.PI * random();
  const r = Math.sqrt(1 - z * z);
  return unit([normal[0] + r * Math.cos(turn), normal[1] + r * Math.sin(turn), normal[2] + z]);
}

/** G. Marsaglia, Xorshift RNGs (2003): 32 bits, shifts 13, 17, 5. */
function xorshift(seed: number): () => number {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}
