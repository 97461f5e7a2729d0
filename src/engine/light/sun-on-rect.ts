import { ORIGIN_OFFSET_M } from './emitter-irradiance';
import { type RectBvh, rectNormal } from './rect-bvh';
import { sunIrradiance } from './sun-irradiance';
import { sunPatchOn } from './sun-patch';
import type { Rect } from './types';
import type { WindowLight } from './window-light';

/** Points of a face in the sun stand about this far apart, m. */
const SPACING_M = 0.02;
const MOST_POINTS = 128;
const GOLDEN_SECTION = (Math.sqrt(5) - 1) / 2;

/** Takes a point just before a face, m, and the sun's lumens on the cell round it. */
type SunVisit = (x: number, y: number, z: number, lumens: number) => void;

/**
 * Walks the places of a rectangle that the sun through a window reaches. Patches of sun are narrow: points spread over the whole
 * face, as for other light, miss them or count them twice.
 */
export function visitSunOn(rect: Rect, window: WindowLight, bvh: RectBvh, visit: SunVisit): void {
  const { axis, sign } = rectNormal(rect);
  const lit = sunPatchOn(rect, axis, sign, window);
  if (!lit) return;
  const [u0, u1, v0, v1] = lit;
  const [lu, lv] = [Math.hypot(...rect.u), Math.hypot(...rect.v)];
  const nu = pointsAlong((u1 - u0) * lu);
  const nv = pointsAlong((v1 - v0) * lv);
  const cell = ((u1 - u0) * lu * (v1 - v0) * lv) / (nu * nv);
  const normal = [0, 1, 2].map((k) => (k === axis ? sign : 0)) as [number, number, number];
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) {
      const fu = u0 + ((u1 - u0) * (i + fractionOf(j))) / nu;
      const fv = v0 + ((v1 - v0) * (j + fractionOf(i))) / nv;
      const at = (k: 0 | 1 | 2) => rect.origin[k] + rect.u[k] * fu + rect.v[k] * fv + normal[k] * ORIGIN_OFFSET_M;
      const lx = sunIrradiance(window, bvh, at(0), at(1), at(2), ...normal, false);
      if (lx > 0) visit(at(0), at(1), at(2), lx * cell);
    }
  }
}

/** Shadows run along the edges of faces: on rows and columns of points they would count for a whole row more or less. */
const fractionOf = (line: number): number => ((line + 0.5) * GOLDEN_SECTION) % 1;

const pointsAlong = (length: number): number => Math.min(MOST_POINTS, Math.max(8, Math.ceil(length / SPACING_M)));
