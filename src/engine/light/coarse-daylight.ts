import { coarseSun } from './coarse-sun';
import { distanceToFace, samplesAlong } from './patch-samples';
import type { Patches } from './patches';
import type { RectBvh } from './rect-bvh';
import type { LightRoom, Rect } from './types';
import { addWindowDirect } from './window-direct';
import { PARTS, type WindowLight } from './window-light';

/** Quadrature errors up to this share are scaled away so that lumens are kept; a larger gap is light that frames keep out. */
const MAX_CORRECTION = 0.03;
/** Patches between two yields: some milliseconds. */
const PATCHES_PER_STEP = 250;

export interface CoarseDaylight {
  /** Per group and patch: mean direct illuminance, lx; groups that no window serves are left as they are. */
  readonly direct: Float32Array[];
  /** Per window: flux found on the patches over flux sent, before it is scaled, of sky, ground, facing wall and sun. */
  readonly caught: readonly Float64Array[];
}

/** Mean direct daylight on every patch. Yields the share done. */
export function* coarseDaylightInSteps(
  room: LightRoom,
  {
    patches,
    opaqueBvh,
    castingBvh,
  }: { readonly patches: Patches; readonly opaqueBvh: RectBvh; readonly castingBvh: RectBvh },
  windows: readonly WindowLight[],
): Generator<number, CoarseDaylight> {
  const rects = room.coarse;
  const groups = room.groups.length;
  const direct = Array.from({ length: groups }, () => new Float32Array(patches.count));
  const caught: Float64Array[] = [];
  const parts = PARTS + 1;
  const found = new Float64Array(parts * patches.count);
  const here = new Float64Array(groups);
  const suns = coarseSun(room, patches, castingBvh, windows);
  yield 0;
  for (const [index, window] of windows.entries()) {
    const groupOf = [...window.groups, window.sunGroup];
    const flux = new Float64Array(parts);
    for (let p = 0; p < patches.count; p++) {
      patchMean(rects[patches.rect[p]!]!, patches, p, opaqueBvh, window, here);
      here[window.sunGroup]! += suns[index]![p]!;
      for (let k = 0; k < parts; k++) {
        found[parts * p + k] = here[groupOf[k]!]!;
        flux[k]! += here[groupOf[k]!]! * patches.area[p]!;
      }
      if ((p + 1) % PATCHES_PER_STEP === 0) yield (index + p / patches.count) / windows.length;
    }
    const ratio = flux.map((value, k) => {
      const sent = window.area * (k < PARTS ? window.exitance[k]! : window.sunExitance);
      return sent > 0 ? value / sent : 1;
    });
    caught.push(ratio);
    for (let k = 0; k < parts; k++) {
      // More than was sent can only be an error; less may be what the frames keep out.
      const scale = ratio[k]! > 1 - MAX_CORRECTION ? 1 / ratio[k]! : 1;
      const to = direct[groupOf[k]!]!;
      for (let p = 0; p < patches.count; p++) to[p]! += found[parts * p + k]! * scale;
    }
  }
  return { direct, caught };
}

/** Means over a patch per group but the sun, into `out`. */
function patchMean(
  rect: Rect,
  patches: Patches,
  p: number,
  bvh: RectBvh,
  window: WindowLight,
  out: Float64Array,
): void {
  out.fill(0);
  const r = patches.rect[p]!;
  const [u0, du, v0, dv] = patches.span.subarray(4 * p, 4 * p + 4) as unknown as [number, number, number, number];
  const axis = patches.axis[r]!;
  const sign = patches.sign[r]!;
  const lu = Math.hypot(rect.u[0], rect.u[1], rect.u[2]) * du;
  const lv = Math.hypot(rect.v[0], rect.v[1], rect.v[2]) * dv;
  const gap = distanceToFace(patches.center, 3 * p, window) + 1e-9;
  const su = samplesAlong(lu, gap);
  const sv = samplesAlong(lv, gap);
  const nx = axis === 0 ? sign : 0;
  const ny = axis === 1 ? sign : 0;
  const nz = axis === 2 ? sign : 0;
  for (let j = 0; j < sv; j++) {
    const fv = v0 + (dv * (j + 0.5)) / sv;
    for (let i = 0; i < su; i++) {
      const fu = u0 + (du * (i + 0.5)) / su;
      const x = rect.origin[0] + rect.u[0] * fu + rect.v[0] * fv;
      const y = rect.origin[1] + rect.u[1] * fu + rect.v[1] * fv;
      const z = rect.origin[2] + rect.u[2] * fu + rect.v[2] * fv;
      addWindowDirect(window, bvh, x, y, z, nx, ny, nz, false, out);
    }
  }
  for (let g = 0; g < out.length; g++) out[g]! /= su * sv;
}
