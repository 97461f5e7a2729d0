import { sampleFraction } from './atlas';
import { type RectBvh, rectNormal } from './rect-bvh';
import { traceNearest } from './rect-trace';
import type { Rect } from './types';

/** The rim that is looked at beyond an edge, and the height it is looked at from, m. */
const BEYOND_M = 2e-3;
const ABOVE_M = 4e-3;
const PLACES = [0.2, 0.5, 0.8] as const;

/**
 * Which edges of a rectangle end its face (at u = 0, u = 1, v = 0, v = 1): true where no face of the same plane and surface goes
 * on beyond. Rectangles cut from one wall go on into each other; a door's panel ends at its frame.
 */
export function endingEdges(rects: readonly Rect[], bvh: RectBvh, index: number): readonly boolean[] {
  const rect = rects[index]!;
  const { axis, sign } = rectNormal(rect);
  const along = [Math.hypot(...rect.u), Math.hypot(...rect.v)] as const;
  const goesOn = (fu: number, fv: number): boolean => {
    const [x, y, z] = [0, 1, 2].map(
      (k) => rect.origin[k]! + rect.u[k]! * fu + rect.v[k]! * fv + (k === axis ? sign * ABOVE_M : 0),
    ) as [number, number, number];
    const towards = [0, 1, 2].map((k) => (k === axis ? -sign : 0)) as [number, number, number];
    const slot = traceNearest(bvh, x, y, z, ...towards, ABOVE_M * 1.5);
    if (slot < 0 || Math.abs(bvh.hitDistance[0]! - ABOVE_M) > ABOVE_M / 20) return false;
    return rects[bvh.rect[slot]!]!.surface === rect.surface;
  };
  const [du, dv] = [BEYOND_M / along[0], BEYOND_M / along[1]];
  const ends = (place: (f: number) => boolean): boolean => PLACES.filter(place).length < 2;
  return [
    ends((f) => goesOn(-du, f)),
    ends((f) => goesOn(1 + du, f)),
    ends((f) => goesOn(f, -dv)),
    ends((f) => goesOn(f, 1 + dv)),
  ];
}

/**
 * Where sample i of n gathers: at an edge that ends the face, a quarter cell inside, the middle of the half cell it stands
 * for. Nearer to the edge, the step of a frame or a wall beside would hide half of what the half cell sees.
 */
export function insetFraction(i: number, n: number, endsBelow: boolean, endsAbove: boolean): number {
  const fraction = sampleFraction(i, n);
  if (n < 2) return fraction;
  const quarter = 1 / (4 * (n - 1));
  if (i === 0 && endsBelow) return quarter;
  if (i === n - 1 && endsAbove) return 1 - quarter;
  return fraction;
}
