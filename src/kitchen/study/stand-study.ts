import { buildNodesInSteps, FIRST_RAYS, type NodeGather } from '../../engine/light/nodes';
import { buildPropGather, type PropGather } from '../../engine/light/prop-gather';
import { BACKING, BOOTH_WALL, type Stand } from '../stand/build-stand';
import type { Backing } from '../stand/types';
import type { RoomBasis } from './room-study';
import {
  type FlatAndUpright,
  type LampTransport,
  lampLumens,
  lampTransportInSteps,
  reachedLight,
  transportLit,
  worktopTargets,
} from './stand-light';
import { BOOTH_REFLECTANCE, backingReflectance } from './stand-scheme';

/** A stand's geometry as light knows it, whatever lights it. */
export interface StandBase {
  readonly stand: Stand;
  readonly lamps: LampTransport;
  readonly nodes: NodeGather;
  readonly props: PropGather;
}

/** A stand in the light of a worktop. */
export interface LitStand {
  readonly basis: RoomBasis;
  /** Of every lamp, in the room's order. */
  readonly lumens: Float64Array;
  /** Light on what lies and on what stands, and what a sample that stands on the worktop gets; per group at level 1, lx. */
  readonly reached: FlatAndUpright;
  readonly wanted: FlatAndUpright;
}

/** Samples count as grays of this reflectance where lamps are set: light is to be the same whatever stands there. Our judgment. */
const SAMPLE_REFLECTANCE = 0.4;

/** Between points at which bounced light is known, m: the booth is plain. */
const NODES_M = 0.25;

/** Works out a stand for a first picture. */
export function* standBaseInSteps(stand: Stand, backing: Backing): Generator<null, StandBase> {
  const { light } = stand.room;
  const reflectance = Float32Array.from(light.surfaces, (_, surface) => {
    if (surface === BACKING) return backingReflectance(backing);
    return surface === BOOTH_WALL ? BOOTH_REFLECTANCE : SAMPLE_REFLECTANCE;
  });
  const lamps = yield* lampTransportInSteps(light, reflectance);
  const nodes = yield* nodesInSteps({ stand, lamps }, FIRST_RAYS);
  return { stand, lamps, nodes, props: buildPropGather(light, lamps.transport, {}) };
}

/** The same with nodes of final quality. */
export function* refineStandInSteps(base: StandBase): Generator<null, StandBase> {
  return { ...base, nodes: yield* nodesInSteps(base) };
}

function* nodesInSteps(
  { stand, lamps }: Pick<StandBase, 'stand' | 'lamps'>,
  rays?: number,
): Generator<null, NodeGather> {
  const steps = buildNodesInSteps(stand.room.light, lamps.transport, { spacing: NODES_M, ...(rays ? { rays } : {}) });
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield null;
  return step.value;
}

/** Places nearer to the lamps than where light is set are this many times as bright: white paint is to keep its tone there, too. */
const BRIGHTEST = 1.15;
/** Points the exposure is taken over: as many that lie as stand, so that the brighter of both decides. */
const EXPOSED_POINTS = 24;

/** The stand in the light of a room's worktop, as a room of its own: with that worktop's adopted white. */
export function standInRoom(base: StandBase, room: RoomBasis): LitStand {
  const wanted = worktopTargets(room);
  const lumens = lampLumens(base.lamps, wanted);
  const reached = reachedLight(base.lamps, lumens);
  const { stand, lamps, nodes, props } = base;
  const { light } = stand.room;
  const lit = { ...light, lamps: light.lamps.map((lamp, i) => ({ ...lamp, lumens: lumens[i]! })) };
  const basis: RoomBasis = {
    outdoors: room.outdoors,
    room: { ...stand.room, light: lit },
    transport: transportLit(lamps, lumens),
    nodes,
    props,
    worktopLight: room.worktopLight,
    referenceView: [...reached.flat].map((flat, group) =>
      Float64Array.from(
        { length: EXPOSED_POINTS },
        (_, i) => BRIGHTEST * (i % 2 === 0 ? flat : reached.upright[group]!),
      ),
    ),
  };
  return { basis, lumens, reached, wanted };
}
