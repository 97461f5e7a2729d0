import { layoutAtlas, sampleFraction } from './atlas';
import { addDirect, CHANNELS, type DirectLayer, type DirectScene, directScene } from './direct-scene';
import type { Emitter } from './emitters';
import { rectNormal } from './rect-bvh';
import { samplePoint } from './sample-point';
import { shadesThatCast } from './shades';
import type { Transport } from './transport';
import type { AtlasLayout, LightRoom, Rect, Solid, Vec3 } from './types';

/** Direct light of one layer over the fine rectangles: four channels per texel, one per light group, lx at level 1. */
export interface DirectMap {
  readonly atlas: AtlasLayout;
  readonly data: Float32Array;
}

const SPACING_M = 0.02;
const FINE_SPACING_M = 0.01;
const NARROW_M = 0.1;
const NEAR_LAMP_M = 0.3;
/** Counters, sills and stools by a window; walls and ceilings would take too many samples. */
const NEAR_WINDOW_M = 0.8;
const SUNLIT_M2 = 2;

/**
 * Samples 2 cm apart; 1 cm across narrow rectangles, and both ways near a lamp that shines on them or, where the sun has
 * sharp edges, near a window.
 */
function layoutDirectAtlas(room: LightRoom, transport: Transport): AtlasLayout {
  return layoutAtlas(room.fine, (rect) => {
    if (transport.emitters.some((lamp) => shinesClose(lamp, rect))) return FINE_SPACING_M;
    const area = Math.hypot(...rect.u) * Math.hypot(...rect.v);
    if (area < SUNLIT_M2 && room.windows.some((window) => gapBetween(window.rect, rect) < NEAR_WINDOW_M)) {
      return FINE_SPACING_M;
    }
    return [acrossSpacing(rect.u), acrossSpacing(rect.v)];
  });
}

const acrossSpacing = (edge: Vec3): number => (Math.hypot(...edge) < NARROW_M ? FINE_SPACING_M : SPACING_M);

/** Distance between two rectangles, m; 0 where their boxes meet. */
function gapBetween(a: Rect, b: Rect): number {
  let gap = 0;
  for (let k = 0; k < 3; k++) {
    const [aFar, bFar] = [a.origin[k]! + a.u[k]! + a.v[k]!, b.origin[k]! + b.u[k]! + b.v[k]!];
    const apart = Math.max(
      Math.min(a.origin[k]!, aFar) - Math.max(b.origin[k]!, bFar),
      Math.min(b.origin[k]!, bFar) - Math.max(a.origin[k]!, aFar),
    );
    gap += Math.max(0, apart) ** 2;
  }
  return Math.sqrt(gap);
}

function shinesClose(lamp: Emitter, rect: Rect): boolean {
  let gap = 0;
  let before = -Infinity;
  for (let k = 0; k < 3; k++) {
    const far = rect.origin[k]! + rect.u[k]! + rect.v[k]!;
    const low = Math.min(rect.origin[k]!, far);
    const high = Math.max(rect.origin[k]!, far);
    const lampLow = Math.min(lamp.corners[k]!, lamp.corners[6 + k]!);
    const lampHigh = Math.max(lamp.corners[k]!, lamp.corners[6 + k]!);
    gap += Math.max(0, low - lampHigh, lampLow - high) ** 2;
    if (lamp.normal[k]! > 0) before = high - lampHigh;
    else if (lamp.normal[k]! < 0) before = lampLow - low;
  }
  return Math.sqrt(gap) < NEAR_LAMP_M && before > 1e-6;
}

/** Direct illuminance at one point with a unit normal, lx per group at level 1. */
export function directAt(room: LightRoom, transport: Transport, point: Vec3, normal: Vec3): Float64Array {
  const out = new Float64Array(room.groups.length);
  addDirect(directScene(transport), ...point, ...normal, out);
  return out;
}

/** Evaluates texels of a map on demand. */
export interface TexelPen {
  readonly map: DirectMap;
  /** Group of the first channel. */
  readonly firstGroup: number;
  readonly scene: DirectScene;
  readonly rects: readonly Rect[];
  /** Boxes of props that cast shadows. */
  readonly shades: readonly Solid[];
  /** 1 where a texel was computed, 0 where it is interpolated. */
  readonly exact: Uint8Array;
  /** Per rectangle: axis and direction of its normal. */
  readonly axis: Uint8Array;
  readonly sign: Int8Array;
  /** Texels computed so far. */
  readonly drawn: { count: number };
}

/** A pen over an empty map of the room; without a layer all light, the first four groups. */
export function startMap(room: LightRoom, transport: Transport, layer?: DirectLayer): TexelPen {
  const atlas = layoutDirectAtlas(room, transport);
  const texels = atlas.width * atlas.height;
  const normals = room.fine.map(rectNormal);
  return {
    map: { atlas, data: new Float32Array(CHANNELS * texels) },
    firstGroup: layer?.firstGroup ?? 0,
    scene: directScene(transport, layer),
    rects: room.fine,
    shades: shadesThatCast(room),
    exact: new Uint8Array(texels),
    axis: Uint8Array.from(normals, ({ axis }) => axis),
    sign: Int8Array.from(normals, ({ sign }) => sign),
    drawn: { count: 0 },
  };
}

const point = new Float64Array(3);
const light = new Float64Array(32);

/** Computes sample (i, j) of a rectangle unless it is known. */
export function drawTexel(pen: TexelPen, r: number, i: number, j: number): void {
  const { blocks, width } = pen.map.atlas;
  const texel = (blocks[4 * r + 1]! + j) * width + blocks[4 * r]! + i;
  if (pen.exact[texel]) return;
  pen.exact[texel] = 1;
  const rect = pen.rects[r]!;
  const axis = pen.axis[r]!;
  const sign = pen.sign[r]!;
  samplePoint(rect, sampleFraction(i, blocks[4 * r + 2]!), sampleFraction(j, blocks[4 * r + 3]!), point);
  light.fill(0);
  const nx = axis === 0 ? sign : 0;
  const ny = axis === 1 ? sign : 0;
  addDirect(pen.scene, point[0]!, point[1]!, point[2]!, nx, ny, axis === 2 ? sign : 0, light);
  pen.drawn.count++;
  for (let g = 0; g < CHANNELS; g++) pen.map.data[CHANNELS * texel + g] = light[pen.firstGroup + g]!;
}

/** Fills the cell between samples i0-i1 and j0-j1 of a rectangle from its corners, sparing what is computed. */
export function fillCell(pen: TexelPen, r: number, i0: number, i1: number, j0: number, j1: number): void {
  const { blocks, width } = pen.map.atlas;
  const { data } = pen.map;
  const first = blocks[4 * r + 1]! * width + blocks[4 * r]!;
  for (let j = j0; j <= j1; j++) {
    const fv = j1 > j0 ? (j - j0) / (j1 - j0) : 0;
    for (let i = i0; i <= i1; i++) {
      const texel = first + j * width + i;
      if (pen.exact[texel]) continue;
      const fu = i1 > i0 ? (i - i0) / (i1 - i0) : 0;
      for (let g = 0; g < CHANNELS; g++) {
        const low = mix(data, first + j0 * width + i0, first + j0 * width + i1, g, fu);
        const high = mix(data, first + j1 * width + i0, first + j1 * width + i1, g, fu);
        data[CHANNELS * texel + g] = low + (high - low) * fv;
      }
    }
  }
}

const mix = (data: Float32Array, a: number, b: number, g: number, f: number): number =>
  data[CHANNELS * a + g]! * (1 - f) + data[CHANNELS * b + g]! * f;
