import { rectNormal } from './rect-bvh';
import type { Rect } from './types';

/** Coarse rectangles cut into near-square patches; the patches of a rectangle stand together, u fastest. */
export interface Patches {
  readonly count: number;
  /** Per patch: coarse rectangle, surface (-1 black), area in m2, centre (x, y, z) in m. */
  readonly rect: Uint32Array;
  readonly surface: Int32Array;
  readonly area: Float64Array;
  readonly center: Float64Array;
  /** Per coarse rectangle: first patch, patches along u and along v, normal axis and direction. */
  readonly first: Uint32Array;
  readonly alongU: Uint16Array;
  readonly alongV: Uint16Array;
  readonly axis: Uint8Array;
  readonly sign: Int8Array;
}

/** Cuts rectangles into patches no longer than `size` m on either edge. */
export function layoutPatches(rects: readonly Rect[], size: number): Patches {
  const first = new Uint32Array(rects.length);
  const alongU = new Uint16Array(rects.length);
  const alongV = new Uint16Array(rects.length);
  const axis = new Uint8Array(rects.length);
  const sign = new Int8Array(rects.length);
  let count = 0;
  rects.forEach((rect, r) => {
    const normal = rectNormal(rect);
    axis[r] = normal.axis;
    sign[r] = normal.sign;
    first[r] = count;
    alongU[r] = pieces(Math.hypot(...rect.u), size);
    alongV[r] = pieces(Math.hypot(...rect.v), size);
    count += alongU[r]! * alongV[r]!;
  });
  const patches: Patches = {
    count,
    rect: new Uint32Array(count),
    surface: new Int32Array(count),
    area: new Float64Array(count),
    center: new Float64Array(3 * count),
    first,
    alongU,
    alongV,
    axis,
    sign,
  };
  rects.forEach((rect, r) => {
    fillRect(patches, rect, r);
  });
  return patches;
}

const pieces = (edge: number, size: number): number => Math.max(1, Math.ceil(edge / size - 1e-9));

function fillRect(patches: Patches, rect: Rect, r: number): void {
  const nu = patches.alongU[r]!;
  const nv = patches.alongV[r]!;
  const area = (Math.hypot(...rect.u) * Math.hypot(...rect.v)) / (nu * nv);
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) {
      const p = patches.first[r]! + j * nu + i;
      patches.rect[p] = r;
      patches.surface[p] = rect.surface;
      patches.area[p] = area;
      for (let k = 0; k < 3; k++) {
        patches.center[3 * p + k] = rect.origin[k]! + (rect.u[k]! * (i + 0.5)) / nu + (rect.v[k]! * (j + 0.5)) / nv;
      }
    }
  }
}

/** The patch of coarse rectangle `r` at fractions fu, fv (clamped to 0-1). */
export function patchAt(patches: Patches, r: number, fu: number, fv: number): number {
  const nu = patches.alongU[r]!;
  const nv = patches.alongV[r]!;
  const i = fu <= 0 ? 0 : fu >= 1 ? nu - 1 : Math.floor(fu * nu);
  const j = fv <= 0 ? 0 : fv >= 1 ? nv - 1 : Math.floor(fv * nv);
  return patches.first[r]! + j * nu + i;
}
