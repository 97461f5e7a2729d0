import { daylightInSteps } from '../../engine/light/daylight';
import { CHANNELS, DIRECT_LAYERS } from '../../engine/light/direct-scene';
import { referenceRadiosity, referenceView } from '../../engine/light/exposure';
import { buildNodesInSteps, FIRST_RAYS, type NodeGather } from '../../engine/light/nodes';
import { buildPropGather, type PropGather } from '../../engine/light/prop-gather';
import { surfaceLights } from '../../engine/light/surface-light';
import { buildTransportInSteps, type Transport } from '../../engine/light/transport';
import type { SurfaceLight, Viewpoint } from '../../engine/light/types';
import { viewShares } from '../../engine/light/view-shares';
import type { Facing } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';
import type { BeamRecord } from '../../model/project';
import { buildRoom } from '../build-room';
import type { Room } from '../types';
import type { DaylightState } from './daylight-of';
import { worktopLight } from './worktop-light';

/** Rays of one overview picture: shares of the view are known to about half a percent. */
const VIEW_COLUMNS = 128;
const VIEW_ROWS = 80;
/** Rays of a prop's vertex for a first picture. */
const FIRST_PROP_RAYS = 48;

/** All that depends on the kitchen's geometry, its lamps and the outdoors only, and that a picture needs. */
export interface RoomBasis {
  /** Key of the outdoors whose light the daylight groups hold; empty: they are dark. */
  readonly outdoors: string;
  readonly room: Room;
  readonly transport: Transport;
  readonly nodes: NodeGather;
  readonly props: PropGather;
  /** Light on the worktop that eyes adapt to, per group at level 1, lx. */
  readonly worktopLight: Float64Array;
  /** Light on what the overviews show of a room of standard reflectances, per group at level 1, lx: sets the exposure. */
  readonly referenceView: readonly Float64Array[];
}

/** The same with what findings need. */
export interface RoomStudy extends RoomBasis {
  readonly surfaceLights: readonly SurfaceLight[];
  readonly overviews: readonly Viewpoint[];
  /** Share of the view per overview, keyed surface:facing. */
  readonly shares: readonly ReadonlyMap<string, number>[];
}

/** 'first' is quick and a little blotchy, 'final' is what numbers rest on. */
type Quality = 'first' | 'final';

export const shareKey = (surface: number, facing: Facing): string => `${surface}:${facing}`;

/** What a room is built from. */
export interface RoomParts {
  readonly kitchen: Kitchen;
  readonly beams?: readonly BeamRecord[];
}

/**
 * Geometry and transport of a kitchen by lamplight, enough for a first picture; yields between slices so that a worker can
 * listen.
 */
export function* studyBasis({ kitchen, beams }: RoomParts): Generator<null, RoomBasis> {
  const room = buildRoom(kitchen, beams);
  yield null;
  const transport = yield* silently(buildTransportInSteps(room.light));
  const { nodes, props } = yield* gather(room, transport, 'first');
  const gray = referenceRadiosity(room.light, transport);
  return {
    outdoors: '',
    room,
    transport,
    nodes,
    props,
    worktopLight: worktopLight({ room, transport, nodes }, gray),
    referenceView: referenceView(room.light, transport, nodes, gray, overviewsOf(room)),
  };
}

/** The basis under other outdoors (null: by night, where it stays as it is): only daylight is worked out anew. */
export function* basisUnder(basis: RoomBasis, state: DaylightState | null): Generator<null, RoomBasis> {
  if (!state || state.key === basis.outdoors) return basis;
  const { room, nodes } = basis;
  const transport = yield* silently(daylightInSteps(room.light, basis.transport, state.outdoors));
  const [daylight] = DIRECT_LAYERS;
  const gray = referenceRadiosity(room.light, transport);
  const worktop = worktopLight({ room, transport, nodes }, gray);
  yield null;
  const view = referenceView(room.light, transport, nodes, gray, overviewsOf(room), daylight);
  return {
    ...basis,
    outdoors: state.key,
    transport,
    worktopLight: worktop,
    referenceView: basis.referenceView.map((lamps, group) => (group < CHANNELS ? view[group]! : lamps)),
  };
}

function* silently<T>(steps: Generator<unknown, T>): Generator<null, T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield null;
  }
}

/** The basis with nodes of final quality. Exposure and adopted white stay: they must not move under one's eyes. */
export function* refineBasis(basis: RoomBasis): Generator<null, RoomBasis> {
  return { ...basis, ...(yield* gather(basis.room, basis.transport, 'final')) };
}

/** Adds what findings need; `before` spares the direct light of a study of the same room, but for daylight where that is another. */
export function studyReadings(basis: RoomBasis, before?: RoomStudy): RoomStudy {
  const { room, transport, nodes } = basis;
  const overviews = overviewsOf(room);
  const anew = before && before.outdoors !== basis.outdoors ? DIRECT_LAYERS[0] : undefined;
  return {
    ...basis,
    surfaceLights: surfaceLights(room.light, transport, nodes, before?.surfaceLights, anew),
    overviews,
    shares: before?.shares ?? overviews.map((viewpoint) => sharesFrom(room, transport, viewpoint)),
  };
}

/** The basis at once: all that light on the worktop needs. */
export const studyBasisNow = (parts: RoomParts, state: DaylightState | null): RoomBasis =>
  finished(basisUnder(finished(studyBasis(parts)), state));

/** A study of final quality at once, for the command line and tests: the same numbers as on the page. */
export function studyRoomNow(parts: RoomParts, state: DaylightState | null): RoomStudy {
  return studyReadings(finished(refineBasis(studyBasisNow(parts, state))));
}

function* gather(
  room: Room,
  transport: Transport,
  quality: Quality,
): Generator<null, Pick<RoomBasis, 'nodes' | 'props'>> {
  const options = quality === 'first' ? { rays: FIRST_RAYS } : {};
  const steps = buildNodesInSteps(room.light, transport, options);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield null;
  const nodes = step.value;
  const props = buildPropGather(room.light, transport, quality === 'first' ? { rays: FIRST_PROP_RAYS } : {});
  return { nodes, props };
}

function finished<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const overviewsOf = (room: Room): readonly Viewpoint[] => room.viewpoints.filter((viewpoint) => viewpoint.overview);

function sharesFrom(room: Room, transport: Transport, viewpoint: Viewpoint): ReadonlyMap<string, number> {
  const seen = viewShares(room.light, transport, viewpoint, VIEW_COLUMNS, VIEW_ROWS);
  return new Map(seen.map(({ surface, facing, share }) => [shareKey(surface, facing), share]));
}

/** The up-facing counter, whose light is the worktop's. */
export function counterLight(study: RoomStudy): SurfaceLight {
  const counter = study.room.surfaces.indexOf('counter');
  const found = study.surfaceLights.find((light) => light.surface === counter && light.facing === 'up');
  if (!found) throw new Error('a kitchen without a counter top cannot be studied');
  return found;
}
