import type { Facing } from '../surface';
import { sampleFraction } from './atlas';
import { BAND_COUNT } from './bands';
import { addDirect, CHANNELS, type DirectLayer, type DirectScene, directScene } from './direct-scene';
import { ORIGIN_OFFSET_M } from './emitter-irradiance';
import type { NodeGather } from './nodes';
import { rectNormal } from './rect-bvh';
import { samplePoint } from './sample-point';
import { sunIrradiance } from './sun-irradiance';
import { visitSunOn } from './sun-on-rect';
import type { Transport } from './transport';
import type { LightRoom, Rect, SurfaceLight } from './types';

/** Direct light is averaged over points about this far apart, m. */
const DIRECT_SPACING_M = 0.12;

/** Which way a rectangle looks. */
export function facingOf(rect: Rect): Facing {
  const { axis, sign } = rectNormal(rect);
  return axis !== 2 ? 'upright' : sign > 0 ? 'up' : 'down';
}

/**
 * Narrower strips (edges of doors, gaps, the back of a rail beside its lamps) are seen as lines, if at all, and do not speak for a
 * surface that has broader faces (our judgment), m.
 */
const STRIP_M = 0.04;

/**
 * Area means of direct light and gather rows over the fine rectangles, per surface and facing; black and strips are left out. `before`:
 * lights of the same room, from other nodes or under another sky; their direct light is kept but for that of `anew`.
 */
export function surfaceLights(
  room: LightRoom,
  transport: Transport,
  nodes: NodeGather,
  before?: readonly SurfaceLight[],
  anew?: DirectLayer,
): SurfaceLight[] {
  const byKey = new Map<string, number[]>();
  room.fine.forEach((rect, r) => {
    if (rect.surface < 0) return;
    const key = `${rect.surface}:${facingOf(rect)}`;
    const list = byKey.get(key);
    if (list) list.push(r);
    else byKey.set(key, [r]);
  });
  return [...byKey.values()].map((rects, index) => {
    const broad = rects.filter((r) => !isStrip(room.fine[r]!));
    return meanLight(room, transport, nodes, broad.length > 0 ? broad : rects, before?.[index], anew);
  });
}

const isStrip = ({ u, v }: Rect): boolean => Math.min(Math.hypot(...u), Math.hypot(...v)) < STRIP_M;

/** Area mean of light over some fine rectangles, as if they were one surface with the facing of the first. */
export function meanLight(
  room: LightRoom,
  transport: Transport,
  nodes: NodeGather,
  rects: readonly number[],
  before?: SurfaceLight,
  anew?: DirectLayer,
): SurfaceLight {
  const first = room.fine[rects[0]!]!;
  const groups = room.groups.length;
  const direct = new Float64Array(groups);
  const directAt: number[] = [];
  const gather = new Float64Array(transport.patches.count);
  let area = 0;
  for (const r of rects) {
    const rect = room.fine[r]!;
    const rectArea = Math.hypot(...rect.u) * Math.hypot(...rect.v);
    area += rectArea;
    if (!before || anew) addRectDirect(room, directScene(transport, before && anew), rect, rectArea, direct, directAt);
    addRectGather(nodes, r, rectArea, gather);
  }
  return {
    surface: first.surface,
    facing: facingOf(first),
    area_m2: area,
    direct: merged(
      before?.direct,
      direct.map((sum) => sum / area),
      groups,
      anew,
    ),
    rects,
    directAt: merged(before?.directAt, Float32Array.from(directAt), groups, anew),
    gather: Float32Array.from(gather, (sum) => sum / area),
  };
}

/** Values of before, those of one layer's groups replaced; without a layer all are kept. Groups are fastest. */
function merged<T extends Float64Array | Float32Array>(
  before: T | undefined,
  now: T,
  groups: number,
  anew: DirectLayer | undefined,
): T {
  if (!before) return now;
  if (!anew) return before;
  const end = anew.firstGroup + CHANNELS;
  return before.map((value, i) => {
    const group = i % groups;
    return group >= anew.firstGroup && group < end ? now[i]! : value;
  }) as T;
}

/** Adds a rectangle's mean light times its area to `direct`, and the light at its sample points to `directAt`. */
function addRectDirect(
  room: LightRoom,
  scene: DirectScene,
  rect: Rect,
  area: number,
  direct: Float64Array,
  directAt: number[],
): void {
  const { axis, sign } = rectNormal(rect);
  const { nu, nv } = samplesOf(rect);
  const point = new Float64Array(3);
  const here = new Float64Array(room.groups.length);
  const normal = [0, 1, 2].map((k) => (k === axis ? sign : 0)) as [number, number, number];
  const sunny = scene.windows.filter(({ sun }) => sun);
  const sunless = { ...scene, windows: scene.windows.map((window) => ({ ...window, sun: null })) };
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) {
      samplePoint(rect, (i + 0.5) / nu, (j + 0.5) / nv, point);
      const [x, y, z] = point as unknown as [number, number, number];
      here.fill(0);
      addDirect(sunless, x, y, z, ...normal, here);
      for (let g = 0; g < here.length; g++) direct[g]! += (here[g]! * area) / (nu * nv);
      const [ox, oy, oz] = normal.map((n, k) => point[k]! + n * ORIGIN_OFFSET_M) as [number, number, number];
      for (const window of sunny) {
        here[window.sunGroup]! += sunIrradiance(window, scene.bvh, ox, oy, oz, ...normal, true);
      }
      directAt.push(...here);
    }
  }
  for (const window of sunny) {
    visitSunOn(rect, window, scene.bvh, (_x, _y, _z, lumens) => {
      direct[window.sunGroup]! += lumens;
    });
  }
}

/** Sample points of a rectangle along u, which is fastest, and v; each stands in the middle of its cell. */
export const samplesOf = (rect: Rect): { readonly nu: number; readonly nv: number } => ({
  nu: pointsAlong(Math.hypot(...rect.u)),
  nv: pointsAlong(Math.hypot(...rect.v)),
});

/** At least four along a hand's breadth: a toe kick under an overhang is dark above and light below. */
const pointsAlong = (edge: number): number =>
  edge < 0.05 ? 1 : edge < 0.1 ? 2 : Math.max(4, Math.round(edge / DIRECT_SPACING_M));

/** Mean of a block's rows: nodes at an edge stand for half a cell, and gather in its middle. */
function addRectGather(nodes: NodeGather, r: number, area: number, gather: Float64Array): void {
  const nu = nodes.atlas.blocks[4 * r + 2]!;
  const nv = nodes.atlas.blocks[4 * r + 3]!;
  const { start, column, value } = nodes.rows;
  for (let j = 0; j < nv; j++) {
    for (let i = 0; i < nu; i++) {
      const row = nodes.first[r]! + j * nu + i;
      const weight = area * trapezoid(i, nu) * trapezoid(j, nv);
      for (let e = start[row]!; e < start[row + 1]!; e++) gather[column[e]!]! += weight * value[e]!;
    }
  }
}

function trapezoid(i: number, n: number): number {
  if (n === 1) return 1;
  const fraction = sampleFraction(i, n);
  return (fraction === 0 || fraction === 1 ? 0.5 : 1) / (n - 1);
}

/** Indirect light at a place of that gather row from one group's radiosity (patches x BAND_COUNT): BAND_COUNT values, lx at level 1. */
export function indirectOn({ gather }: { readonly gather: ArrayLike<number> }, radiosity: Float32Array): Float64Array {
  const sums = new Float64Array(BAND_COUNT);
  for (let patch = 0; patch < gather.length; patch++) {
    const share = gather[patch]!;
    if (share === 0) continue;
    for (let k = 0; k < BAND_COUNT; k++) sums[k]! += share * radiosity[patch * BAND_COUNT + k]!;
  }
  return sums;
}
