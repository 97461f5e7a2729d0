import type { Assembly } from './assembly';
import { FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent } from './side';

/** Face of stiles and rails between two inset fronts, m (1 1/2 in); half of it at a module's edge. Common practice, no source. */
export const FACE_FRAME = 0.038;
/** Joint round an inset front, m. Common practice, no source. */
export const REVEAL = 0.002;

/**
 * The face frame of one cell, flush with the fronts set into it: half a stile at both sides, rails below, above and between.
 * `openings` are ranges of height from below to above; stiles and rails of neighbours join into one.
 */
export function addFaceFrame(
  parts: Assembly,
  { side, back, surface }: FrontZone,
  { a, z }: FrontPlace,
  openings: readonly (readonly [number, number])[],
): void {
  const d: Extent['d'] = [back, back + FRONT_THICKNESS];
  const half = FACE_FRAME / 2;
  const piece = parts.newPiece();
  const add = (extent: Extent, grain: 0 | 1 | 2): void => {
    const [across, up] = [extent.a, extent.z].map(([from, to]) => to - from) as [number, number];
    const [width, length] = grain === 2 ? [across, up] : [up, across];
    parts.made.push({ kind: 'face-frame', surface, length, width });
    parts.box({ surface, coordinates: grained(grain, 0), piece }, ...boxAt(side, extent));
  };
  add({ a: [a[0], a[0] + half], d, z }, 2);
  add({ a: [a[1] - half, a[1]], d, z }, 2);
  const between: Extent['a'] = [a[0] + half, a[1] - half];
  let low = z[0];
  for (const opening of [...openings, [z[1], z[1]] as const]) {
    if (opening[0] > low) add({ a: between, d, z: [low, opening[0]] }, side.along);
    low = opening[1];
  }
}

/** Heights of the openings for fronts one above the other: `heights` of all but the lowest two, which share what is left. */
export function insetOpenings(z: readonly [number, number], count: 1 | 3, topDrawer: number): [number, number][] {
  const low = z[0] + FACE_FRAME;
  const high = z[1] - FACE_FRAME;
  if (count === 1) return [[low, high]];
  const deep = (high - low - topDrawer - 2 * FACE_FRAME) / 2;
  return [
    [low, low + deep],
    [low + deep + FACE_FRAME, low + 2 * deep + FACE_FRAME],
    [high - topDrawer, high],
  ];
}
