import type { Solid, WindowAperture } from '../../engine/light/types';
import { GROUPS } from '../../model/project';
import type { Plan, PlannedOpening } from '../plan/types';
import { type Assembly, faceRect, type Skin } from './assembly';
import { plainRect } from './cut-holes';
import { blank, grained, inPlane } from './pattern-coordinates';

/** Fixed frame and mullion, casements, nosing of the sill, m. Common practice. */
const FRAME = { width: 0.045, depth: 0.05 };
const SASH = { width: 0.05, depth: 0.062 };
const NOSING = { depth: 0.03, ear: 0.03, thickness: 0.022 };

const theWindow = ({ openings }: Plan): PlannedOpening => openings[0]!;

/** The opening through the left wall. */
export const windowHole = (plan: Plan): Solid => ({
  min: [-1, theWindow(plan).from, theWindow(plan).sill],
  max: [0.01, theWindow(plan).to, theWindow(plan).head],
});

type Range = readonly [number, number];

interface Light {
  readonly y: Range;
  readonly z: Range;
}

/** The two lights between fixed frame and mullion, each filled by a casement. */
function lights(plan: Plan): readonly Light[] {
  const { from, to, sill, head } = theWindow(plan);
  const middle = (from + to) / 2;
  const half = FRAME.width / 2;
  const z: Range = [sill + FRAME.width, head - FRAME.width];
  return [
    { y: [from + FRAME.width, middle - half], z },
    { y: [middle + half, to - FRAME.width], z },
  ];
}

/** The glass of a casement. */
const glass = ({ y, z }: Light): Light => ({
  y: [y[0] + SASH.width, y[1] - SASH.width],
  z: [z[0] + SASH.width, z[1] - SASH.width],
});

/** One aperture per casement: its glass, in the glass plane at the outer end of the reveal. */
export function windowApertures(plan: Plan): WindowAperture[] {
  const { reveal, panes, facing_deg } = theWindow(plan);
  const x = -reveal;
  return lights(plan)
    .map(glass)
    .map(({ y, z }) => ({
      rect: plainRect(faceRect({ surface: 'black', coordinates: blank }, [x, y[0], z[0]], [x, y[1], z[1]], 'x+')),
      panes,
      facing_deg,
      groups: {
        sky: GROUPS.indexOf('sky'),
        sun: GROUPS.indexOf('sun'),
        ground: GROUPS.indexOf('ground'),
        facing: GROUPS.indexOf('facing'),
      },
    }));
}

/** Reveals round the opening (the sill is a board), the glass in black, the frame's face round it. */
export function addOpening(parts: Assembly, plan: Plan): void {
  const { from, to, sill, head, reveal } = theWindow(plan);
  const wall: Skin = { surface: 'wall', coordinates: inPlane() };
  const frame: Skin = { surface: 'frame', coordinates: grained(1, 0) };
  parts.face(wall, [-reveal, from, head], [0, to, head], 'z-');
  parts.face(wall, [-reveal, from, sill], [0, from, head], 'y+');
  parts.face(wall, [-reveal, to, sill], [0, to, head], 'y-');
  parts.face(frame, [-reveal, from, sill], [0, to, sill], 'z+');
  const x = -reveal;
  const holes = lights(plan)
    .map(glass)
    .map(({ y, z }): Solid => ({ min: [x - 0.01, y[0], z[0]], max: [x + 0.01, y[1], z[1]] }));
  parts.face(frame, [x, from, sill], [x, to, head], 'x+', holes);
  for (const { rect } of windowApertures(plan)) {
    parts.rects.push({ ...rect, pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 });
  }
}

/** Frame, mullion, two casements and the nosing of the sill board. */
export function addWindowJoinery(parts: Assembly, plan: Plan): void {
  const { from, to, sill, head, reveal } = theWindow(plan);
  const ring = (y0: number, y1: number, z0: number, z1: number, bar: typeof FRAME): void => {
    const x: Range = [-reveal, -reveal + bar.depth];
    const w = bar.width;
    addBar(parts, 1, x, [y0, y1], [z0, z0 + w]);
    addBar(parts, 1, x, [y0, y1], [z1 - w, z1]);
    addBar(parts, 2, x, [y0, y0 + w], [z0 + w, z1 - w]);
    addBar(parts, 2, x, [y1 - w, y1], [z0 + w, z1 - w]);
  };
  ring(from, to, sill, head, FRAME);
  const [first, second] = lights(plan);
  addBar(parts, 2, [-reveal, -reveal + FRAME.depth], [first!.y[1], second!.y[0]], first!.z);
  for (const { y, z } of [first!, second!]) ring(y[0], y[1], z[0], z[1], SASH);
  addBar(parts, 1, [0, NOSING.depth], [from - NOSING.ear, to + NOSING.ear], [sill - NOSING.thickness, sill]);
}

function addBar(parts: Assembly, grain: 1 | 2, x: Range, y: Range, z: Range): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, [x[0], y[0], z[0]], [x[1], y[1], z[1]]);
}
