import { type FineToCoarse, mapFineToCoarse, patchForFine } from './fine-to-coarse';
import { readGlass } from './glass';
import type { Patches } from './patches';
import type { RectBvh } from './rect-bvh';
import { visitSunOn } from './sun-on-rect';
import type { LightRoom, Rect } from './types';
import type { WindowLight } from './window-light';

const AREA_SPACING_M = 0.06;
/** A patch that speaks for more than this many times its own area speaks for detail. */
const DETAILED = 1.5;

/**
 * Illuminance of the sun through each window on every patch, lx: found on the fine rectangles, where it is seen to fall, and given
 * to the patches that speak for them. The sun lies in narrow patches that a coarse room would misplace: on the lid of a sink
 * instead of in its bowl, on the plinth behind an end panel. A small patch that speaks for much detail has the mean of it, and none gets
 * more than a face full in the sun.
 */
export function coarseSun(
  room: Pick<LightRoom, 'coarse' | 'fine'>,
  patches: Patches,
  bvh: RectBvh,
  windows: readonly WindowLight[],
): Float64Array[] {
  const flux = windows.map(() => new Float64Array(patches.count));
  if (windows.every(({ sun }) => !sun)) return flux;
  const map = mapFineToCoarse(room.fine, room.coarse, patches);
  room.fine.forEach((rect, r) => {
    if (rect.surface < 0) return;
    windows.forEach((window, w) => {
      visitSunOn(rect, window, bvh, (x, y, z, lumens) => {
        const patch = patchForFine(map, r, x, y, z);
        if (patch >= 0) flux[w]![patch]! += lumens;
      });
    });
  });
  const spokenFor = areasSpokenFor(room.fine, map, patches.count);
  return flux.map((found, w) => {
    const { sun, glass, normal } = windows[w]!;
    if (!sun) return found;
    const [x, y, z] = sun.towards;
    const cosine = -(x * normal[0]! + y * normal[1]! + z * normal[2]!);
    const full = sun.normal_lx * readGlass(glass, cosine);
    return found.map((lumens, p) => {
      const area = patches.area[p]!;
      return Math.min(lumens / (spokenFor[p]! > DETAILED * area ? spokenFor[p]! : area), full);
    });
  });
}

/** Area of the fine rectangles that each patch speaks for, m2. */
function areasSpokenFor(fine: readonly Rect[], map: FineToCoarse, patches: number): Float64Array {
  const areas = new Float64Array(patches);
  fine.forEach(({ surface, origin, u, v }, r) => {
    if (surface < 0) return;
    const [lu, lv] = [Math.hypot(...u), Math.hypot(...v)];
    const nu = Math.max(1, Math.ceil(lu / AREA_SPACING_M));
    const nv = Math.max(1, Math.ceil(lv / AREA_SPACING_M));
    for (let j = 0; j < nv; j++) {
      for (let i = 0; i < nu; i++) {
        const at = (k: 0 | 1 | 2) => origin[k] + (u[k] * (i + 0.5)) / nu + (v[k] * (j + 0.5)) / nv;
        const patch = patchForFine(map, r, at(0), at(1), at(2));
        if (patch >= 0) areas[patch]! += (lu * lv) / (nu * nv);
      }
    }
  });
  return areas;
}
