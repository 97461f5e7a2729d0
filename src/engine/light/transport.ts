import { blockersOf } from './blockers';
import { coarseDirect } from './coarse-direct';
import { type Emitter, prepareEmitters } from './emitters';
import { computeFormFactors } from './form-factors';
import { layoutPatches, type Patches } from './patches';
import { buildRectBvh, type RectBvh } from './rect-bvh';
import type { LightRoom, SparseRows } from './types';

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
  /** Per emitter (lamps, then windows): flux found on the patches over flux sent, before it is corrected. */
  readonly caught: Float64Array;
  readonly emitters: readonly Emitter[];
  readonly coarseBvh: RectBvh;
  readonly fineBvh: RectBvh;
  /** The fine rectangles that can cast shadows. */
  readonly shadowBvh: RectBvh;
}

/** Patches, form factors and coarse direct light of a room. Same room, options and seed: same numbers. */
export function buildTransport(room: LightRoom, options: TransportOptions = {}): Transport {
  const { raysPerPatch = 196, patchSize = 0.3, seed = 1 } = options;
  const coarseBvh = buildRectBvh(room.coarse);
  const patches = layoutPatches(room.coarse, patchSize);
  const { factors, leak, leakByRect } = computeFormFactors(room.coarse, patches, coarseBvh, raysPerPatch, seed);
  const emitters = prepareEmitters(room);
  // Openings and lamp faces let light through here: a window's glass may lie behind the black rectangle that closes it.
  const opaque = buildRectBvh(
    blockersOf(
      room.coarse.filter((rect) => rect.surface >= 0),
      emitters,
    ),
  );
  const { direct, caught } = coarseDirect(room.coarse, patches, opaque, emitters, room.groups.length);
  return {
    patches,
    factors,
    bounce: withoutBlack(factors, patches.surface),
    direct,
    leak,
    leakByRect,
    caught,
    emitters,
    coarseBvh,
    fineBvh: buildRectBvh(room.fine),
    shadowBvh: buildRectBvh(blockersOf(room.fine, emitters)),
  };
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
