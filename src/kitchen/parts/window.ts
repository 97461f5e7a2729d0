import type { WindowAperture } from '../../engine/light/types';
import { GROUPS } from '../../model/project';
import type { Plan, PlannedOpening } from '../plan/types';
import { type Assembly, faceRect, type Skin } from './assembly';
import { blindPlace } from './blind-place';
import { plainRect } from './cut-holes';
import { type Field, frameBars, glassOf, LEAF_DEPTH, leafBars, leavesOf, nosingOf } from './opening-leaves';
import { blank, grained, inPlane } from './pattern-coordinates';
import { boxAt, type Extent, faceAt, type Side, wallSide } from './side';

/** Cover strip over the joint of two leaves of a door, m. */
const COVER = { width: 0.03, depth: 0.008 };

const GROUP_OF = {
  sky: GROUPS.indexOf('sky'),
  sun: GROUPS.indexOf('sun'),
  ground: GROUPS.indexOf('ground'),
  facing: GROUPS.indexOf('facing'),
};

/** One aperture per leaf: its glass, in the glass plane at the outer end of the reveal. */
export const windowApertures = (plan: Plan): WindowAperture[] =>
  plan.openings.flatMap((opening) => {
    const side = wallSide(plan, opening.wall);
    const { reveal, panes, facing_deg } = opening;
    const hangs = blindPlace(plan, opening) !== null;
    return leavesOf(opening).map((leaf) => {
      const extent: Extent = { ...glassOf(opening, leaf), d: [-reveal, -reveal] };
      const rect = faceRect({ surface: 'black', coordinates: blank }, ...boxAt(side, extent), faceAt(side, 'd+'));
      return { rect: plainRect(rect), panes, facing_deg, groups: GROUP_OF, ...(hangs && { roller: true as const }) };
    });
  });

/** Every opening as one sees it: reveals, sill board or threshold, frame and leaves in all their bars, the glass in black. */
export function addFineOpenings(parts: Assembly, plan: Plan): void {
  for (const opening of plan.openings) {
    const side = wallSide(plan, opening.wall);
    addReveals(parts, side, opening, -opening.reveal);
    addJoinery(parts, side, opening);
  }
  addGlass(parts, plan);
}

/** Every opening in few faces: reveals, the joinery as one face as far before the glass as leaves are, and the faces that lead to the glass. */
export function addCoarseOpenings(parts: Assembly, plan: Plan): void {
  for (const opening of plan.openings) {
    const { from, to, sill, head, reveal } = opening;
    const side = wallSide(plan, opening.wall);
    const skin: Skin = { surface: 'frame', coordinates: blank };
    const face = LEAF_DEPTH - reveal;
    addReveals(parts, side, opening, face);
    const panes = leavesOf(opening).map((leaf): Extent => ({ ...glassOf(opening, leaf), d: [-reveal, face] }));
    const holes = panes.map((pane) => {
      const [min, max] = boxAt(side, { ...pane, d: [face - 0.01, face + 0.01] });
      return { min, max };
    });
    const ring: Extent = { a: [from, to], d: [face, face], z: [sill, head] };
    parts.face(skin, ...boxAt(side, ring), faceAt(side, 'd+'), holes);
    for (const { a, d, z } of panes) addLining(parts, side, skin, { a, d, z });
  }
  addGlass(parts, plan);
}

/** The four faces round a pane, looking towards its middle. */
function addLining(parts: Assembly, side: Side, skin: Skin, { a, d, z }: Extent): void {
  parts.face(skin, ...boxAt(side, { a: [a[0], a[0]], d, z }), faceAt(side, 'a+'));
  parts.face(skin, ...boxAt(side, { a: [a[1], a[1]], d, z }), faceAt(side, 'a-'));
  parts.face(skin, ...boxAt(side, { a, d, z: [z[0], z[0]] }), 'z+');
  parts.face(skin, ...boxAt(side, { a, d, z: [z[1], z[1]] }), 'z-');
}

/** The faces of the wall round an opening, from `inner` to the room; below a board or a threshold. */
function addReveals(parts: Assembly, side: Side, { from, to, sill, head }: PlannedOpening, inner: number): void {
  const wall: Skin = { surface: 'wall', coordinates: inPlane() };
  const d = [inner, 0] as const;
  parts.face(wall, ...boxAt(side, { a: [from, to], d, z: [head, head] }), 'z-');
  parts.face(wall, ...boxAt(side, { a: [from, from], d, z: [sill, head] }), faceAt(side, 'a+'));
  parts.face(wall, ...boxAt(side, { a: [to, to], d, z: [sill, head] }), faceAt(side, 'a-'));
  const board: Skin = { surface: 'frame', coordinates: grained(side.along, 0) };
  parts.face(board, ...boxAt(side, { a: [from, to], d, z: [sill, sill] }), 'z+');
}

function addGlass(parts: Assembly, plan: Plan): void {
  for (const { rect } of windowApertures(plan)) {
    parts.rects.push({ ...rect, pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 });
  }
}

/** Fixed frame with its mullions, the leaves, the nosing of a window's sill board. */
function addJoinery(parts: Assembly, side: Side, opening: PlannedOpening): void {
  const { kind, from, to, sill, head, reveal } = opening;
  const { width, depth, bottom, mullion } = frameBars(opening);
  const frame: Extent['d'] = [-reveal, depth - reveal];
  const sash: Extent['d'] = [-reveal, LEAF_DEPTH - reveal];
  addRing(parts, side, { a: [from, to], z: [sill, head] }, frame, { stile: width, top: width, bottom });
  const leaves = leavesOf(opening);
  for (const leaf of leaves) addRing(parts, side, leaf, sash, leafBars(opening));
  for (const { a, z } of leaves.slice(0, -1)) {
    if (mullion > 0) addBar(parts, side, 2, { a: [a[1], a[1] + mullion], d: frame, z });
    else {
      const half = COVER.width / 2;
      addBar(parts, side, 2, { a: [a[1] - half, a[1] + half], d: [sash[1], sash[1] + COVER.depth], z });
    }
  }
  if (kind === 'glazed-door') return;
  addBar(parts, side, side.along, nosingOf(opening));
}

/** Two rails over the whole width, two stiles between them. */
function addRing(
  parts: Assembly,
  side: Side,
  { a, z }: Field,
  d: Extent['d'],
  bars: { readonly stile: number; readonly top: number; readonly bottom: number },
): void {
  const between = [z[0] + bars.bottom, z[1] - bars.top] as const;
  addBar(parts, side, side.along, { a, d, z: [z[0], between[0]] });
  addBar(parts, side, side.along, { a, d, z: [between[1], z[1]] });
  addBar(parts, side, 2, { a: [a[0], a[0] + bars.stile], d, z: between });
  addBar(parts, side, 2, { a: [a[1] - bars.stile, a[1]], d, z: between });
}

function addBar(parts: Assembly, side: Side, grain: 0 | 1 | 2, extent: Extent): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
}
