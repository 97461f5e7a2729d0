import { blockersOf } from './blockers';
import { coarseDirectInSteps } from './coarse-direct';
import { type Emitter, prepareEmitters } from './emitters';
import { formFactorsInSteps } from './form-factors';
import { layoutPatches, type Patches } from './patches';
import { buildRectBvh, type RectBvh } from './rect-bvh';
import { facesOfShades, shadesThatCast, shadesThatHide } from './shades';
import type { LightRoom, SparseRows } from './types';
import type { WindowLight } from './window-light';

export interface TransportOptions {
  /** Rays per patch for form factors; a square number is used as it is, others are rounded to one. */
  readonly raysPerPatch?: number;
  /** Longest patch edge, m. */
  readonly patchSize?: number;
  readonly seed?: number;
}

/** How light travels in a room, whatever its finishes and lamp spectra: all that a finish change keeps. */
export interface Transport {
  readonly patches: Patches;
  /** Form factors with the black patches, rows close to 1. */
  readonly factors: SparseRows;
  /** The same without black columns: what can bounce. */
  readonly bounce: SparseRows;
  /** Per group: direct illuminance of each patch at level 1, lx. */
  readonly direct: Float32Array[];
  /** Share of form factor rays that left the room or met a back, and the same per coarse rectangle. */
  readonly leak: number;
  readonly leakByRect: Float32Array;
  /** Per lamp: flux found on the patches over flux sent, before it is corrected. */
  readonly caught: Float64Array;
  readonly emitters: readonly Emitter[];
  /** Windows under one state of the outdoors; none until there is one (see `withDaylight`). */
  readonly windows: readonly WindowLight[];
  readonly daylightCaught: readonly Float64Array[];
  /** Coarse rectangles without openings and lamp faces. */
  readonly opaqueBvh: RectBvh;
  readonly coarseBvh: RectBvh;
  readonly fineBvh: RectBvh;
  /** The fine rectangles that can cast shadows: for what bounces (props take nothing from it). */
  readonly castingBvh: RectBvh;
  /** The same and the shades of props, for what one sees. */
  readonly shadowBvh: RectBvh;
  /** The same for the props themselves: what lies in a shade, or on its skin, is not shaded by it. */
  readonly propShadowBvh: RectBvh;
  /** What gathered rays meet: the fine rectangles, and after them the faces of wide shades (see shades.ts). */
  readonly gatherBvh: RectBvh;
}

/** Shares of the whole work done once form factors, and once direct light are there. */
const FACTOR_SHARE = 0.7;
const LAST_SHARE = 0.95;

/** Patches, form factors and coarse direct light of a room. Same room, options and seed: same numbers. */
export function buildTransport(room: LightRoom, options: TransportOptions = {}): Transport {
  const steps = buildTransportInSteps(room, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same, yielding the share done (0-1, roughly by time) every few milliseconds, so that a worker can listen. */
export function* buildTransportInSteps(room: LightRoom, options: TransportOptions = {}): Generator<number, Transport> {
  const { raysPerPatch = 121, patchSize = 0.3, seed = 1 } = options;
  const coarseBvh = buildRectBvh(room.coarse);
  const faces = [...room.lamps, ...room.windows].map(({ rect }) => rect);
  const patches = layoutPatches(room.coarse, patchSize, faces);
  const { factors, leak, leakByRect } = yield* part(
    formFactorsInSteps(room.coarse, patches, coarseBvh, raysPerPatch, seed),
    0,
    FACTOR_SHARE,
  );
  const emitters = prepareEmitters(room);
  // Openings and lamp faces let light through here: a window's glass may lie behind the black rectangle that closes it.
  const opaqueBvh = buildRectBvh(
    blockersOf(
      room.coarse.filter((rect) => rect.surface >= 0),
      faces,
    ),
  );
  const { direct, caught } = yield* part(
    coarseDirectInSteps(room.coarse, patches, opaqueBvh, emitters, room.groups.length),
    FACTOR_SHARE,
    LAST_SHARE,
  );
  const fineBvh = buildRectBvh(room.fine);
  yield LAST_SHARE;
  return {
    patches,
    factors,
    bounce: withoutBlack(factors, patches.surface),
    direct,
    leak,
    leakByRect,
    caught,
    emitters,
    windows: [],
    daylightCaught: [],
    opaqueBvh,
    coarseBvh,
    fineBvh,
    ...fineTrees(room, fineBvh),
  };
}

/** What stands in the way of light at the detail one sees. Without shades it is one tree each. */
function fineTrees(
  room: LightRoom,
  fineBvh: RectBvh,
): Pick<Transport, 'castingBvh' | 'shadowBvh' | 'propShadowBvh' | 'gatherBvh'> {
  const casting = blockersOf(
    room.fine,
    [...room.lamps, ...room.windows].map(({ rect }) => rect),
  );
  const castingBvh = buildRectBvh(casting);
  const cast = facesOfShades(shadesThatCast(room));
  const hide = facesOfShades(shadesThatHide(room));
  return {
    castingBvh,
    shadowBvh: cast.length > 0 ? buildRectBvh([...casting, ...cast]) : castingBvh,
    propShadowBvh: cast.length > 0 ? buildRectBvh([...casting, ...cast], casting.length) : castingBvh,
    gatherBvh: hide.length > 0 ? buildRectBvh([...room.fine, ...hide], room.fine.length) : fineBvh,
  };
}

/** Runs steps as the part from-to of a longer work. */
function* part<T>(steps: Generator<number, T>, from: number, to: number): Generator<number, T> {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}

/** Drops columns of black patches (surface below 0): nothing comes back from them. */
function withoutBlack(rows: SparseRows, surface: Int32Array): SparseRows {
  const start = new Uint32Array(rows.count + 1);
  const column = new Uint32Array(rows.column.length);
  const value = new Float32Array(rows.value.length);
  let end = 0;
  for (let i = 0; i < rows.count; i++) {
    for (let e = rows.start[i]!; e < rows.start[i + 1]!; e++) {
      if (surface[rows.column[e]!]! < 0) continue;
      column[end] = rows.column[e]!;
      value[end++] = rows.value[e]!;
    }
    start[i + 1] = end;
  }
  return { count: rows.count, start, column: column.slice(0, end), value: value.slice(0, end) };
}
