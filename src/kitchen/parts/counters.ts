import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import type { Face } from './axes';
import { counterDrop, edgeOf, type FreeEdge, profileDepth, profileStrips, stripOf } from './counter-edge';
import { hollowAll } from './cut-holes';
import { unfolded } from './pattern-coordinates';
import { solidAt } from './side';
import { apronExtent, sinkBowls, sinkSide } from './sink';
import { counterSlabs, freeEdges } from './slabs';
import { waterfallEnds } from './waterfall';

/** All slabs, each with its pattern along its length, as far as the profiles of their edges leave them; built-up edges below them. */
export function addCounters(parts: Assembly, plan: Plan): void {
  const slabs = counterSlabs(plan);
  const edges = freeEdges(plan, slabs);
  const cavities = [...sinkBowls(plan), ...profileStrips(plan, edges)];
  for (const slab of slabs) {
    const [min, max] = slab.box;
    const skin: Skin = { surface: slab.surface, coordinates: unfolded(min, max, slab.length), piece: parts.newPiece() };
    parts.hollowBox(skin, min, max, cavities);
    for (const edge of edges) {
      if (edge.slab !== slab) continue;
      addBehindProfile(parts, plan, edge, skin);
      addDrop(parts, plan, edge, skin);
    }
  }
}

/** What closes the slab behind an edge's profile. */
function addBehindProfile(parts: Assembly, plan: Plan, edge: FreeEdge, skin: Skin): void {
  const depth = profileDepth(edgeOf(plan, edge.slab), plan.counter.thickness);
  if (depth === 0) return;
  const shift = { outer: depth, inner: -depth, stop: 0, open: 0 };
  const { min, max } = stripOf(edge, {
    from: edge.from + shift[edge.ends.from],
    to: edge.to - shift[edge.ends.to],
    inward: [depth, depth],
    z: [plan.counter.bottom, plan.counter.top],
  });
  const face: Face = `${edge.normal === 0 ? 'x' : 'y'}${edge.sign > 0 ? '+' : '-'}`;
  parts.face(skin, min, max, face);
}

/** The strip that builds a mitred edge up from below, in the plane of the slab's edge. */
function addDrop(parts: Assembly, plan: Plan, edge: FreeEdge, skin: Skin): void {
  for (const { min, max } of dropStrips(plan, edge)) parts.box(skin, min, max);
}

/** An edge's strip below the slab, parted by what hangs in its way: an apron, a waterfall end. At corners those along y run through. */
export function dropStrips(plan: Plan, edge: FreeEdge): Solid[] {
  const drop = counterDrop(plan);
  const { bottom, thickness, overhang, depth } = plan.counter;
  const deep = Math.min(thickness, overhang, depth - plan.baseDepth);
  if (drop === 0 || deep <= 0 || !hasRoom(plan, edge, deep)) return [];
  const through = edge.normal === 0;
  const shift = { outer: through ? 0 : deep, inner: through ? -deep : 0, stop: 0, open: 0 };
  const strip = stripOf(edge, {
    from: edge.from + shift[edge.ends.from],
    to: edge.to - shift[edge.ends.to],
    inward: [0, deep],
    z: [bottom - drop, bottom],
  });
  const apron = plan.sink.fit === 'apron' ? [solidAt(sinkSide(plan), apronExtent(plan))] : [];
  return hollowAll(strip, [...waterfallEnds(plan), ...apron]);
}

/** A seat side without overhang has no room for a strip before its panels. */
function hasRoom({ island }: Plan, { slab, normal, sign }: FreeEdge, deep: number): boolean {
  if (slab.surface !== 'island-counter' || !island) return true;
  const { counter, body } = island;
  const clear = {
    '0-1': body.x0 - counter.x0,
    '01': counter.x1 - body.x1,
    '1-1': body.y0 - counter.y0,
    '11': counter.y1 - body.y1,
  };
  return clear[`${normal}${sign}`] >= deep - 1e-9;
}
