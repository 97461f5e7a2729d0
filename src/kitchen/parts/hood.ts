import { HOOD } from '../../model/layout/measures';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { FRONT_GAP, FRONT_THICKNESS, type FrontZone } from './front';
import { lampHoles } from './lamps';
import { grained, inPlane } from './pattern-coordinates';
import { boxAt, type Extent, type Side, wallSide } from './side';
import { addUnitFronts } from './unit-fronts';

type Hood = NonNullable<Plan['hood']>;

/** A cabinet over the hood lower than this has no door; a pair of doors from this width on, m. Common practice, no source. */
const LEAST_DOOR = 0.12;
const PAIR = 0.8;
/** The plate of a built-in hood, clear of its cabinet's sides. */
const PLATE = { beside: 0.03, behind: 0.03, before: 0.04 };

/** A flat canopy with a chimney up to the ceiling, or a plate in the underside of a cabinet; open for its lamps. */
export function addHood(parts: Assembly, plan: Plan): void {
  const { hood } = plan;
  if (!hood) return;
  const side = wallSide(plan, hood.run);
  if (hood.kind === 'canopy') addCanopy(parts, plan, side, hood);
  else addHoodCabinet(parts, plan, side, hood);
}

/** The hood in few faces: a cabinet as one box as deep as its doors. */
export function addCoarseHood(parts: Assembly, plan: Plan): void {
  const { hood } = plan;
  if (!hood) return;
  const side = wallSide(plan, hood.run);
  if (hood.kind === 'canopy') addCanopy(parts, plan, side, hood);
  else addBody(parts, plan, side, { a: [hood.from, hood.to], d: [0, plan.wallUnits.depth], z: heights(plan, hood) });
}

function addCanopy(parts: Assembly, plan: Plan, side: Side, { from, to, bottom }: Hood): void {
  const skin: Skin = { surface: 'appliance', coordinates: inPlane(), piece: parts.newPiece() };
  const middle = (from + to) / 2;
  const { canopy, chimney } = HOOD;
  const top = bottom + canopy.height / 1000;
  const plate: Extent = { a: [from + FRONT_GAP, to - FRONT_GAP], d: [0, canopy.depth / 1000], z: [bottom, top] };
  const [min, max] = boxAt(side, plate);
  parts.box(skin, min, max, ['z-']);
  parts.face(skin, min, max, 'z-', lampHoles(plan));
  const half = chimney.width / 2000;
  const flue: Extent = { a: [middle - half, middle + half], d: [0, chimney.depth / 1000], z: [top, plan.height] };
  // The canopy is brushed along its front, the chimney upright.
  parts.box({ ...skin, coordinates: grained(2, 0) }, ...boxAt(side, flue));
}

/** A cabinet as deep as the wall units, from the hood up to their top. */
function addHoodCabinet(parts: Assembly, plan: Plan, side: Side, hood: Hood): void {
  const z = heights(plan, hood);
  const back = plan.wallUnits.depth - FRONT_THICKNESS;
  const hasDoor = z[1] - z[0] >= LEAST_DOOR;
  addBody(parts, plan, side, { a: [hood.from, hood.to], d: [0, hasDoor ? back : plan.wallUnits.depth], z });
  if (!hasDoor) {
    const [length, width] = [hood.to - hood.from, z[1] - z[0]];
    parts.made.push({ kind: 'panel', surface: 'wall-fronts', length, width });
    return;
  }
  const zone: FrontZone = { side, back, z, surface: 'wall-fronts', handleEnd: 'bottom' };
  const kind = hood.to - hood.from >= PAIR ? 'pair' : 'door';
  addUnitFronts(parts, plan, zone, { kind, from: hood.from, to: hood.to, handle: 'high' });
}

/** A box whose underside holds the plate of the hood. */
function addBody(parts: Assembly, plan: Plan, side: Side, extent: Extent): void {
  const piece = parts.newPiece();
  const skin: Skin = { surface: 'wall-fronts', coordinates: grained(2, piece), piece };
  const { a, d, z } = extent;
  const plate: Extent = {
    a: [a[0] + PLATE.beside, a[1] - PLATE.beside],
    d: [d[0] + PLATE.behind, d[1] - PLATE.before],
    z: [z[0], z[0]],
  };
  const [min, max] = boxAt(side, { ...plate, z: [z[0] - 0.01, z[0] + 0.01] });
  parts.box(skin, ...boxAt(side, extent), ['z-']);
  parts.face(skin, ...boxAt(side, extent), 'z-', [{ min, max }, ...lampHoles(plan)]);
  const metal: Skin = { surface: 'appliance', coordinates: inPlane(), piece: parts.newPiece() };
  parts.face(metal, ...boxAt(side, plate), 'z-', lampHoles(plan));
}

const heights = ({ wallUnits }: Plan, { bottom }: Hood): readonly [number, number] => [
  bottom,
  Math.max(wallUnits.top, bottom + 0.05),
];
