import { BAND_COUNT } from '../bands';
import type { RectBvh } from '../rect-bvh';
import { countShadowRays } from '../rect-trace';
import type { SparseRows } from '../types';
import { Arena } from './arena';
import { KERNEL_BASE64 } from './kernel.data';
import { alsoFan, alsoTargets, beginBvh } from './place-rays';
import {
  type BandSum,
  type LightKernel,
  MAX_SWEEPS,
  type RayFan,
  type RayFrame,
  type Relaxation,
  type Targets,
} from './types';
import { typescriptKernel } from './typescript-kernel';

/** What kernel.as.ts exports; all numbers but the last three of `relax` are places or sizes in bytes, or counts. */
interface Exports {
  readonly memory: WebAssembly.Memory;
  gatherRows(
    count: number,
    stride: number,
    start: number,
    column: number,
    toValue: number,
    b: number,
    out: number,
  ): void;
  relax(
    count: number,
    stride: number,
    start: number,
    column: number,
    toValue: number,
    surface: number,
    rho: number,
    direct: number,
    directStep: number,
    b: number,
    weight: number,
    received: number,
    relaxation: number,
    tolerance: number,
    most: number,
  ): number;
  sumBands(pairs: number, parts: number, count: number, out: number): void;
  traceFan(
    nodes: number,
    slots: number,
    rays: number,
    groups: number,
    stack: number,
    hits: number,
    distances: number,
    ...frame: RayFrame
  ): void;
  shadeFan(
    nodes: number,
    slots: number,
    slotCount: number,
    targets: number,
    groups: number,
    stack: number,
    last: number,
    blocked: number,
    x: number,
    y: number,
    z: number,
  ): void;
}

/** Below this the rounding of float32 is what one sees: who asks for more gets float64. */
const FINEST_TOLERANCE = 1e-6;
/** Keeps the weight of a band in the dark within float32; its changes are below anything one could see. */
const LARGEST_WEIGHT = 1e30;
/** Numbers of a colour in memory: a vector. */
const COLOR_BYTES = 16;

/** Bands filled up to whole vectors of four. */
const paddedBands = (bands: number): number => (bands + 3) & ~3;

export interface WasmKernel extends LightKernel {
  /** Memory taken so far. */
  readonly bytes: number;
}

/** The kernel in WebAssembly SIMD, float32. Null where the module may not run: no SIMD, or the page's policy forbids it. */
export function createWasmKernel(): WasmKernel | null {
  const module = instantiate();
  if (!module) return null;
  const arena = new Arena(module.memory);
  return {
    name: 'wasm',
    get bytes() {
      return arena.bytes;
    },

    relax(task: Relaxation, b: Float64Array): number {
      if (task.tolerance < FINEST_TOLERANCE) return typescriptKernel.relax(task, b);
      const { rows, surface, bands, reflectance, direct, scale, relaxation, tolerance } = task;
      const { start, column, toValue } = arena.begin(rows);
      const padded = paddedBands(bands);
      const perBand = direct.length > rows.count;
      const surfaces = arena.place(surface);
      const rho = arena.placePadded(reflectance, bands, padded);
      const falls = perBand ? arena.placePadded(direct, bands, padded) : arena.place(direct);
      const weight = arena.placePadded(
        scale.map((one) => Math.min(LARGEST_WEIGHT, 1 / one)),
        bands,
        padded,
      );
      const received = arena.reserve(4 * padded);
      const at = arena.placePadded(b, bands, padded);
      const sweeps = module.relax(
        rows.count,
        4 * padded,
        start,
        column,
        toValue,
        surfaces,
        rho,
        falls,
        perBand ? 4 * padded : 4,
        at,
        weight,
        received,
        relaxation,
        tolerance,
        MAX_SWEEPS,
      );
      arena.readPadded(at, bands, padded, b);
      return sweeps;
    },

    gatherRows(rows: SparseRows, radiosity: Float32Array, bands: number, out: Float32Array): void {
      const { start, column, toValue } = arena.begin(rows);
      const padded = paddedBands(bands);
      const b = arena.placePadded(radiosity, bands, padded);
      const to = arena.reserve(4 * padded * rows.count);
      module.gatherRows(rows.count, 4 * padded, start, column, toValue, b, to);
      arena.readPadded(to, bands, padded, out);
    },

    sumBands(light: readonly (Float32Array | null)[], sums: readonly BandSum[], out: Float32Array): void {
      arena.beginWithout();
      const lights = light.map((values) => (values ? arena.place(values) : 0));
      const placed = new Map<Float32Array, number>();
      for (const { colors } of sums) {
        for (const color of colors) if (color && !placed.has(color)) placed.set(color, arena.placePadded(color, 3, 4));
      }
      const pairs = arena.reserve(8 * light.length);
      const to = arena.reserve(4 * out.length + COLOR_BYTES);
      const pair = new Uint32Array(module.memory.buffer, pairs, 2 * light.length);
      let done = 0;
      for (const { first, count, colors } of sums) {
        let parts = 0;
        for (let group = 0; group < light.length; group++) {
          const color = colors[group];
          if (!light[group] || !color) continue;
          pair[2 * parts] = lights[group]! + 4 * BAND_COUNT * first;
          pair[2 * parts++ + 1] = placed.get(color)!;
        }
        module.sumBands(pairs, parts, count, to + 12 * done);
        done += count;
      }
      out.set(arena.floats(to, out.length));
    },

    traceFan(fan: RayFan, frame: RayFrame): void {
      const { nodes, slots, stack } = beginBvh(arena, fan.bvh);
      const { rays, hits, distances } = alsoFan(arena, fan);
      const groups = fan.groups.length / 12;
      module.traceFan(nodes, slots, rays, groups, stack, hits, distances, ...frame);
      fan.hits.set(arena.doubles(hits, fan.hits.length));
      fan.distances.set(arena.doubles(distances, fan.distances.length));
    },

    shadeFan(bvh: RectBvh, targets: Targets, count: number, x: number, y: number, z: number): void {
      const { nodes, slots, stack, last } = beginBvh(arena, bvh);
      const placed = alsoTargets(arena, targets);
      const groups = (count + 3) >> 2;
      module.shadeFan(nodes, slots, bvh.rectCount, placed.targets, groups, stack, last, placed.blocked, x, y, z);
      targets.blocked.set(arena.integers(placed.blocked, 4 * groups));
      countShadowRays(bvh, count);
    },
  };
}

function instantiate(): Exports | null {
  if (typeof WebAssembly === 'undefined') return null;
  try {
    const bytes = Uint8Array.from(atob(KERNEL_BASE64.replace(/\s/g, '')), (char) => char.charCodeAt(0));
    return new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as unknown as Exports;
  } catch {
    return null;
  }
}
