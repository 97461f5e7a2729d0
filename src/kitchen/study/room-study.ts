import { referenceIlluminance } from '../../engine/light/exposure';
import { buildNodesInSteps, type NodeGather } from '../../engine/light/nodes';
import { buildPropGather, type PropGather } from '../../engine/light/prop-gather';
import { surfaceLights } from '../../engine/light/surface-light';
import { buildTransport, type Transport } from '../../engine/light/transport';
import type { SurfaceLight, Viewpoint } from '../../engine/light/types';
import { viewShares } from '../../engine/light/view-shares';
import type { Facing } from '../../engine/surface';
import type { Kitchen } from '../../model/project';
import { buildRoom } from '../build-room';
import type { Room } from '../types';

/** Rays of one overview picture: shares of the view are known to about half a percent. */
const VIEW_COLUMNS = 128;
const VIEW_ROWS = 80;

/** All that depends on the kitchen's geometry and lamps only; kept until the kitchen changes. */
export interface RoomStudy {
  readonly room: Room;
  readonly transport: Transport;
  readonly nodes: NodeGather;
  readonly props: PropGather;
  readonly surfaceLights: readonly SurfaceLight[];
  /** Mean direct light on the worktop per group at level 1, lx. */
  readonly worktopDirect: Float64Array;
  /** Mean light on the worktop of a room of standard reflectances, per group at level 1, lx: sets the exposure. */
  readonly referenceLx: Float64Array;
  readonly overviews: readonly Viewpoint[];
  /** Share of the view per overview, keyed surface:facing. */
  readonly shares: readonly ReadonlyMap<string, number>[];
}

export const shareKey = (surface: number, facing: Facing): string => `${surface}:${facing}`;

/** Nodes gathered between two yields are about this share of the work. */
const NODE_SLICE = 0.04;

/** Yields between slices of the work so that a worker can stay responsive; the room comes first. */
export function* studyRoom(kitchen: Kitchen): Generator<Room | null, RoomStudy> {
  const room = buildRoom(kitchen);
  yield room;
  const transport = buildTransport(room.light);
  yield null;
  const gathering = buildNodesInSteps(room.light, transport);
  let step = gathering.next();
  for (let yielded = 0; !step.done; step = gathering.next()) {
    if (step.value < yielded + NODE_SLICE) continue;
    yielded = step.value;
    yield null;
  }
  const nodes = step.value;
  const props = buildPropGather(room.light, transport);
  const lights = surfaceLights(room.light, transport, nodes);
  const overviews = room.viewpoints.filter((viewpoint) => viewpoint.overview);
  return {
    room,
    transport,
    nodes,
    props,
    surfaceLights: lights,
    worktopDirect: worktopDirect(room, lights),
    referenceLx: referenceIlluminance(room.light, transport, nodes),
    overviews,
    shares: overviews.map((viewpoint) => sharesFrom(room, transport, viewpoint)),
  };
}

/** The same at once, for the command line and tests. */
export function studyRoomNow(kitchen: Kitchen): RoomStudy {
  const steps = studyRoom(kitchen);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

function sharesFrom(room: Room, transport: Transport, viewpoint: Viewpoint): ReadonlyMap<string, number> {
  const seen = viewShares(room.light, transport, viewpoint, VIEW_COLUMNS, VIEW_ROWS);
  return new Map(seen.map(({ surface, facing, share }) => [shareKey(surface, facing), share]));
}

/** The worktop is the up-facing counter; its area mean is already among the surface lights. */
function worktopDirect(room: Room, lights: readonly SurfaceLight[]): Float64Array {
  return counterLight(room, lights).direct;
}

export function counterLight(room: Room, lights: readonly SurfaceLight[]): SurfaceLight {
  const counter = room.surfaces.indexOf('counter');
  const found = lights.find((light) => light.surface === counter && light.facing === 'up');
  if (!found) throw new Error('a kitchen without a counter top cannot be studied');
  return found;
}
