import type { Solid, WindowAperture } from '../../engine/light/types';
import { GROUPS } from '../../model/project';
import type { Plan } from '../plan/types';
import { type Assembly, faceRect, type Skin } from './assembly';
import { plainRect } from './cut-holes';
import { blank, grained, inPlane } from './pattern-coordinates';

/** Fixed frame and mullion, casements, nosing of the sill, m. Common practice. */
const FRAME = { width: 0.045, depth: 0.05 };
const SASH = { width: 0.05, depth: 0.062 };
const NOSING = { depth: 0.03, ear: 0.03, thickness: 0.022 };
/** Double glazing over garden or street. */
const PANES = 2;
const GROUND_REFLECTANCE = 0.2;

/** The opening through the left wall. */
export const windowHole = (plan: Plan): Solid => ({
  min: [-1, plan.window.from, plan.window.sill],
  max: [0.01, plan.window.to, plan.window.head],
});

/** Glass within the fixed frame, in the glass plane at the outer end of the reveal. */
function glass(plan: Plan): { readonly y: readonly [number, number]; readonly z: readonly [number, number] } {
  const { from, to, sill, head } = plan.window;
  return { y: [from + FRAME.width, to - FRAME.width], z: [sill + FRAME.width, head - FRAME.width] };
}

export function windowAperture(plan: Plan): WindowAperture {
  const { y, z } = glass(plan);
  const x = -plan.window.reveal;
  return {
    group: GROUPS.indexOf('sky'),
    rect: plainRect(faceRect({ surface: 'black', coordinates: blank }, [x, y[0], z[0]], [x, y[1], z[1]], 'x+')),
    skyLx: plan.skyLx,
    groundReflectance: GROUND_REFLECTANCE,
    panes: PANES,
  };
}

/** Reveals round the opening (the sill is a board), the glass plane in black, the frame's face round the glass. */
export function addOpening(parts: Assembly, plan: Plan): void {
  const { from, to, sill, head, reveal } = plan.window;
  const wall: Skin = { surface: 'wall', coordinates: inPlane() };
  const frame: Skin = { surface: 'frame', coordinates: grained(1, 0) };
  parts.face(wall, [-reveal, from, head], [0, to, head], 'z-');
  parts.face(wall, [-reveal, from, sill], [0, from, head], 'y+');
  parts.face(wall, [-reveal, to, sill], [0, to, head], 'y-');
  parts.face(frame, [-reveal, from, sill], [0, to, sill], 'z+');
  const { y, z } = glass(plan);
  const hole: Solid = { min: [-reveal - 0.01, y[0], z[0]], max: [-reveal + 0.01, y[1], z[1]] };
  parts.face(frame, [-reveal, from, sill], [-reveal, to, head], 'x+', [hole]);
  const { rect } = windowAperture(plan);
  parts.rects.push({ ...rect, pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 });
}

/** Frame, mullion, two casements and the nosing of the sill board. */
export function addWindowJoinery(parts: Assembly, plan: Plan): void {
  const { from, to, sill, head, reveal } = plan.window;
  const middle = (from + to) / 2;
  const half = FRAME.width / 2;
  const ring = (y0: number, y1: number, z0: number, z1: number, bar: typeof FRAME): void => {
    const x: readonly [number, number] = [-reveal, -reveal + bar.depth];
    const w = bar.width;
    addBar(parts, 1, x, [y0, y1], [z0, z0 + w]);
    addBar(parts, 1, x, [y0, y1], [z1 - w, z1]);
    addBar(parts, 2, x, [y0, y0 + w], [z0 + w, z1 - w]);
    addBar(parts, 2, x, [y1 - w, y1], [z0 + w, z1 - w]);
  };
  ring(from, to, sill, head, FRAME);
  const { y, z } = glass(plan);
  addBar(parts, 2, [-reveal, -reveal + FRAME.depth], [middle - half, middle + half], z);
  ring(y[0], middle - half, z[0], z[1], SASH);
  ring(middle + half, y[1], z[0], z[1], SASH);
  addBar(parts, 1, [0, NOSING.depth], [from - NOSING.ear, to + NOSING.ear], [sill - NOSING.thickness, sill]);
}

function addBar(
  parts: Assembly,
  grain: 1 | 2,
  x: readonly [number, number],
  y: readonly [number, number],
  z: readonly [number, number],
): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, [x[0], y[0], z[0]], [x[1], y[1], z[1]]);
}
