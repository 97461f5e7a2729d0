import { emitterIrradiance } from './emitter-irradiance';
import type { Emitter } from './emitters';
import { distanceToFace, samplesAlong } from './patch-samples';
import type { Patches } from './patches';
import type { RectBvh } from './rect-bvh';
import type { Rect } from './types';

/** Quadrature errors up to this share are scaled away so that lumens are kept; a larger gap is light that left the room. */
const MAX_CORRECTION = 0.03;

export interface CoarseDirect {
  /** Per group and patch: mean direct illuminance at level 1, lx. */
  readonly direct: Float32Array[];
  /** Per emitter: flux found on the patches before scaling, over the flux sent out. */
  readonly caught: Float64Array;
}

/** A patch whose brightest sample is this many times its darkest has a shadow's edge on it, or a lamp close by. */
const UNEVEN = 2;
/** As many times more samples are taken along each of its edges. */
const FINER = 3;

/** Patches between two yields: some milliseconds. */
const PATCHES_PER_STEP = 500;

/** Mean direct light on every patch; more sample points where a lamp or window is near. Yields the share done. */
export function* coarseDirectInSteps(
  rects: readonly Rect[],
  patches: Patches,
  bvh: RectBvh,
  emitters: readonly Emitter[],
  groups: number,
): Generator<number, CoarseDirect> {
  const direct = Array.from({ length: groups }, () => new Float32Array(patches.count));
  const caught = new Float64Array(emitters.length);
  const one = new Float64Array(patches.count);
  for (const [index, emitter] of emitters.entries()) {
    let flux = 0;
    for (let p = 0; p < patches.count; p++) {
      one[p] = patchMean(rects[patches.rect[p]!]!, patches, p, bvh, emitter);
      flux += one[p]! * patches.area[p]!;
      if ((p + 1) % PATCHES_PER_STEP === 0) yield (index + p / patches.count) / emitters.length;
    }
    const sent = emitter.exitance * emitter.area;
    caught[index] = sent > 0 ? flux / sent : 1;
    const scale = caught[index]! > 1 - MAX_CORRECTION ? 1 / caught[index]! : 1;
    const to = direct[emitter.group]!;
    for (let p = 0; p < patches.count; p++) to[p]! += one[p]! * scale;
  }
  return { direct, caught };
}

let least = 0;
let most = 0;

function patchMean(rect: Rect, patches: Patches, p: number, bvh: RectBvh, emitter: Emitter): number {
  const r = patches.rect[p]!;
  const [u0, du, v0, dv] = patches.span.subarray(4 * p, 4 * p + 4) as unknown as [number, number, number, number];
  const axis = patches.axis[r]!;
  const sign = patches.sign[r]!;
  const nx = axis === 0 ? sign : 0;
  const ny = axis === 1 ? sign : 0;
  const nz = axis === 2 ? sign : 0;
  const lu = Math.hypot(rect.u[0], rect.u[1], rect.u[2]) * du;
  const lv = Math.hypot(rect.v[0], rect.v[1], rect.v[2]) * dv;
  const gap = distanceToFace(patches.center, 3 * p, emitter) + 1e-9;
  const width = emitter.beam ? emitter.beam.width : 1;
  const su = samplesAlong(lu, gap, width);
  const sv = samplesAlong(lv, gap, width);
  const meanOver = (nu: number, nv: number): number => {
    let sum = 0;
    least = Infinity;
    most = 0;
    for (let j = 0; j < nv; j++) {
      const fv = v0 + (dv * (j + 0.5)) / nv;
      for (let i = 0; i < nu; i++) {
        const fu = u0 + (du * (i + 0.5)) / nu;
        const x = rect.origin[0] + rect.u[0] * fu + rect.v[0] * fv;
        const y = rect.origin[1] + rect.u[1] * fu + rect.v[1] * fv;
        const z = rect.origin[2] + rect.u[2] * fu + rect.v[2] * fv;
        const lx = emitterIrradiance(emitter, bvh, x, y, z, nx, ny, nz, false);
        sum += lx;
        least = Math.min(least, lx);
        most = Math.max(most, lx);
      }
    }
    return sum / (nu * nv);
  };
  const mean = meanOver(su, sv);
  return most > UNEVEN * least ? meanOver(FINER * su, FINER * sv) : mean;
}
