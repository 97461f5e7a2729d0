import type { DirectMap } from '../../engine/light/direct-map';
import { addDirect, CHANNELS, type DirectLayer, directScene } from '../../engine/light/direct-scene';
import { prepareEmitters } from '../../engine/light/emitters';
import { referenceRadiosity } from '../../engine/light/exposure';
import { finishGather, gatherPoint, startGather } from '../../engine/light/gather-rows';
import { solveGroup } from '../../engine/light/solve';
import { buildTransportInSteps, type Transport } from '../../engine/light/transport';
import type { LightRoom, Vec3 } from '../../engine/light/types';
import { GROUPS } from '../../model/project';
import type { ByLayer } from '../look';
import { REFERENCE_POINTS } from '../stand/booth';
import type { RoomBasis } from './room-study';
import { standPlaces } from './stand-reading';

/** Light on what lies and on what stands, per group at level 1, lx. */
export interface FlatAndUpright {
  readonly flat: Float64Array;
  readonly upright: Float64Array;
}

/**
 * The light of the worktop that a stand is to repeat: on what lies, exactly what eyes adapt to there (`RoomBasis.worktopLight`), so
 * that the adopted white is the room's; on what stands, as much less or more as on a sample that stands on the worktop. Both in a
 * room of standard grays, so that no finish has a part in it.
 */
export function worktopTargets(basis: RoomBasis): FlatAndUpright {
  const { room, transport, worktopLight } = basis;
  const gray = referenceRadiosity(room.light, transport);
  const places = standPlaces(basis);
  const onPlace = ({ direct, gather }: (typeof places)['flat'], group: number): number => {
    let lx = direct[group]!;
    for (let patch = 0; patch < gather.length; patch++) lx += gather[patch]! * gray[group]![patch]!;
    return lx;
  };
  const upright = worktopLight.map((lx, group) => {
    const flat = onPlace(places.flat, group);
    return flat > 0 ? (lx * onPlace(places.upright, group)) / flat : 0;
  });
  return { flat: worktopLight, upright };
}

/** A stand's geometry with its lamps one lumen each, every lamp a group of its own: lamps in the room's order. */
export interface LampTransport {
  readonly room: LightRoom;
  readonly transport: Transport;
  /** What one lumen of each lamp gives on what lies and on what stands, bounced light of the grays included, lx. */
  readonly perLumen: FlatAndUpright;
}

/** Few large faces: the stand is to be there at once. */
const PATCH_M = 0.4;
const FACTOR_RAYS = 100;
const POINT_RAYS = 256;

/** Works out how each lamp of a stand lights it. `reflectance`: one value per surface, for the bounced light lamps are set by. */
export function* lampTransportInSteps(room: LightRoom, reflectance: Float32Array): Generator<null, LampTransport> {
  const apart: LightRoom = {
    ...room,
    groups: room.lamps.map((_, lamp) => `${lamp}`),
    lamps: room.lamps.map((lamp, group) => ({ ...lamp, group })),
  };
  const steps = buildTransportInSteps(apart, { patchSize: PATCH_M, raysPerPatch: FACTOR_RAYS });
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield null;
  const transport = step.value;
  yield null;
  const radiosity = transport.direct.map((direct) => solveGroup(transport, reflectance, direct, { bands: 1 }));
  yield null;
  const light = (points: readonly Vec3[], normal: Vec3) => meanLight(apart, transport, radiosity, points, normal);
  return {
    room: apart,
    transport,
    perLumen: {
      flat: light(REFERENCE_POINTS.up, [0, 0, 1]),
      upright: light(REFERENCE_POINTS.upright, [0, -1, 0]),
    },
  };
}

function meanLight(
  room: LightRoom,
  transport: Transport,
  radiosity: readonly Float32Array[],
  points: readonly Vec3[],
  normal: Vec3,
): Float64Array {
  const scene = directScene(transport);
  const sum = new Float64Array(room.groups.length);
  const gatherer = startGather(room, transport, POINT_RAYS, 7);
  for (const point of points) {
    addDirect(scene, ...point, ...normal, sum);
    gatherPoint(gatherer, ...point, ...normal);
  }
  const { column, value } = finishGather(gatherer);
  for (let e = 0; e < column.length; e++) {
    for (let group = 0; group < sum.length; group++) sum[group]! += value[e]! * radiosity[group]![column[e]!]!;
  }
  return sum.map((lx) => lx / points.length);
}

/**
 * Lumens of every lamp of a stand, so that each group gives the table what it gives the worktop, and the panel as nearly as its two
 * lamps can what it gives to a sample that stands there: a lamp cannot take light away.
 */
export function lampLumens({ perLumen }: Pick<LampTransport, 'perLumen'>, targets: FlatAndUpright): Float64Array {
  const groups = targets.flat.length;
  const lumens = new Float64Array(2 * groups);
  for (let group = 0; group < groups; group++) {
    const [chief, fill] = [group, groups + group];
    const [flat, upright] = [targets.flat[group]!, targets.upright[group]!];
    const [cf, cu, ff, fu] = [
      perLumen.flat[chief]!,
      perLumen.upright[chief]!,
      perLumen.flat[fill]!,
      perLumen.upright[fill]!,
    ];
    const whole = cf * fu - ff * cu;
    const ofChief = (flat * fu - ff * upright) / whole;
    const ofFill = (cf * upright - flat * cu) / whole;
    if (ofFill < 0) lumens[chief] = flat / cf;
    else if (ofChief < 0) lumens[fill] = flat / ff;
    else {
      lumens[chief] = ofChief;
      lumens[fill] = ofFill;
    }
  }
  return lumens;
}

/** What the lamps of a stand give together, per group at level 1, lx. */
export function reachedLight({ perLumen }: Pick<LampTransport, 'perLumen'>, lumens: Float64Array): FlatAndUpright {
  const groups = lumens.length / 2;
  const sum = (per: Float64Array) =>
    Float64Array.from(
      { length: groups },
      (_, group) => per[group]! * lumens[group]! + per[groups + group]! * lumens[groups + group]!,
    );
  return { flat: sum(perLumen.flat), upright: sum(perLumen.upright) };
}

/** The stand lit by lamps of these lumens, by light group. */
export function transportLit({ room, transport }: LampTransport, lumens: Float64Array): Transport {
  const groups = GROUPS.length;
  const direct = Array.from({ length: groups }, (_, group) => {
    const [chief, fill] = [transport.direct[group]!, transport.direct[groups + group]!];
    return chief.map((lx, patch) => lx * lumens[group]! + fill[patch]! * lumens[groups + group]!);
  });
  const lamps = room.lamps.map((lamp, index) => ({ ...lamp, group: index % groups, lumens: lumens[index]! }));
  return { ...transport, direct, emitters: prepareEmitters({ lamps }) };
}

/** Direct light of the stand per lumen in layers of four lamps each: chief faces of daylight and of lamps, then their fills. */
export const LAMP_LAYERS: readonly DirectLayer[] = [0, 4, 8, 12].map((firstGroup) => ({ id: 'lamps', firstGroup }));

/**
 * The direct light of both layers of the picture for lamps of these lumens; `perLumen`: a map per layer of LAMP_LAYERS, null while
 * it is not drawn.
 */
export function mapsLit(perLumen: readonly (DirectMap | null)[], lumens: Float64Array): ByLayer<DirectMap> {
  const mixed = (layer: 0 | 1): DirectMap | null => {
    const [chief, fill] = [perLumen[layer], perLumen[layer + 2]];
    if (!chief || !fill) return null;
    const data = new Float32Array(chief.data.length);
    for (let channel = 0; channel < CHANNELS; channel++) {
      const group = CHANNELS * layer + channel;
      const [ofChief, ofFill] = [lumens[group]!, lumens[GROUPS.length + group]!];
      for (let at = channel; at < data.length; at += CHANNELS) {
        data[at] = ofChief * chief.data[at]! + ofFill * fill.data[at]!;
      }
    }
    return { atlas: chief.atlas, data };
  };
  return [mixed(0), mixed(1)];
}
