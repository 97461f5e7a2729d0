import { contactPatchOn } from './contact-patch';
import { type DirectMap, drawTexel, fillCell, startMap, type TexelPen } from './direct-map';
import { CHANNELS, type DirectLayer } from './direct-scene';
import { shadowRayCount } from './rect-trace';
import { type Stretch, sunPatchOn } from './sun-patch';
import type { Transport } from './transport';
import type { LightRoom } from './types';

export interface DirectOptions {
  /** Deviation from linear, as a share of the value, that makes a cell finer. */
  readonly tolerance?: number;
  /** Work between two yields, in shadow rays: 10 000 take about 10 ms. */
  readonly raysPerStep?: number;
  /** Only the light of one layer. */
  readonly layer?: DirectLayer;
}

export interface DirectProgress {
  /** The live map: it goes on changing; copy what is sent away. */
  readonly map: DirectMap;
  /** 'lattice' until every texel has a first value. */
  readonly stage: 'lattice' | 'refine';
  /** Share of the stage done, 0-1. */
  readonly share: number;
}

const LATTICE = 8;
/** Samples of a cell in the sun, or beside a prop, that are not looked between: about 4 cm. */
const SHARP_CELL = 2;
const TEXEL_WORK = 10;
/** Darkness: deviations below this share of a group's mean do not count. */
const DARK_SHARE = 0.005;

/**
 * Direct light of every texel, coarse to fine: first each eighth sample with the rest interpolated, then finer where
 * midpoints leave the straight line between corners: at shadow edges and near lamps. Yields between slices of
 * work counted in shadow rays; returns the finished map. Same room: same map.
 */
export function* directTexels(
  room: LightRoom,
  transport: Transport,
  { tolerance = 0.01, raysPerStep = 10_000, layer }: DirectOptions = {},
): Generator<DirectProgress, DirectMap> {
  const pen = startMap(room, transport, layer);
  const { map } = pen;
  const { atlas } = map;
  // The worktop is looked at first.
  const order = [...new Set([...room.worktop, ...room.fine.keys()])].filter((r) => room.fine[r]!.surface >= 0);
  let budget = workDone(pen) + raysPerStep;
  for (let k = 0; k < order.length; k++) {
    for (const row of latticeLines(atlas.blocks[4 * order[k]! + 3]!)) {
      for (const column of latticeLines(atlas.blocks[4 * order[k]! + 2]!)) drawTexel(pen, order[k]!, column, row);
      if (workDone(pen) < budget) continue;
      yield { map, stage: 'lattice', share: k / order.length };
      budget = workDone(pen) + raysPerStep;
    }
    eachCell(pen, order[k]!, (i0, i1, j0, j1) => fillCell(pen, order[k]!, i0, i1, j0, j1));
  }
  yield { map, stage: 'refine', share: 0 };
  const floor = darkFloor(pen);
  const cells: number[] = [];
  for (let k = 0; k < order.length; k++) {
    eachCell(pen, order[k]!, (i0, i1, j0, j1) => cells.push(i0, i1, j0, j1));
    const sharp = sharpStretches(pen, order[k]!);
    while (cells.length > 0) {
      const [i0, i1, j0, j1] = cells.splice(-4) as [number, number, number, number];
      refineCell(pen, order[k]!, i0, i1, j0, j1, tolerance, floor, sharp, cells);
      if (workDone(pen) < budget) continue;
      yield { map, stage: 'refine', share: k / order.length };
      budget = workDone(pen) + raysPerStep;
    }
  }
  return map;
}

/** Work in units of a shadow ray; a texel costs some even where no ray is needed. */
const workDone = (pen: TexelPen): number => shadowRayCount(pen.scene.bvh) + TEXEL_WORK * pen.drawn.count;

/** Sample numbers of the lattice along an edge of n samples: every eighth and the last. */
function latticeLines(n: number): number[] {
  const lines: number[] = [];
  for (let i = 0; i < n - 1; i += LATTICE) lines.push(i);
  lines.push(n - 1);
  return lines;
}

function eachCell(pen: TexelPen, r: number, visit: (i0: number, i1: number, j0: number, j1: number) => void): void {
  const us = latticeLines(pen.map.atlas.blocks[4 * r + 2]!);
  const vs = latticeLines(pen.map.atlas.blocks[4 * r + 3]!);
  for (let b = 0; b < Math.max(1, vs.length - 1); b++) {
    for (let a = 0; a < Math.max(1, us.length - 1); a++) {
      visit(us[a]!, us[Math.min(a + 1, us.length - 1)]!, vs[b]!, vs[Math.min(b + 1, vs.length - 1)]!);
    }
  }
}

/** Where narrow shadows may fall on a rectangle, in numbers of samples: in the sun, and where a prop stands. */
function sharpStretches(pen: TexelPen, r: number): readonly Stretch[] {
  const nu = pen.map.atlas.blocks[4 * r + 2]! - 1;
  const nv = pen.map.atlas.blocks[4 * r + 3]! - 1;
  const on = [pen.rects[r]!, pen.axis[r]!, pen.sign[r]!] as const;
  return [
    ...pen.scene.windows.map((window) => sunPatchOn(...on, window)),
    ...pen.shades.map((box) => contactPatchOn(...on, box)),
  ].flatMap((patch): Stretch[] => (patch ? [[patch[0] * nu, patch[1] * nu, patch[2] * nv, patch[3] * nv]] : []));
}

/** Per group: the deviation below which nobody would see a difference. */
function darkFloor(pen: TexelPen): Float64Array {
  const floor = new Float64Array(CHANNELS);
  let count = 0;
  for (let t = 0; t < pen.exact.length; t++) {
    if (!pen.exact[t]) continue;
    count++;
    for (let g = 0; g < CHANNELS; g++) floor[g]! += pen.map.data[CHANNELS * t + g]!;
  }
  return floor.map((sum) => (DARK_SHARE * sum) / Math.max(1, count));
}

/** Computes a cell's midpoints; fills it when they are where the corners said, else leaves its parts in `cells`. */
function refineCell(
  pen: TexelPen,
  r: number,
  i0: number,
  i1: number,
  j0: number,
  j1: number,
  tolerance: number,
  floor: Float64Array,
  sharp: readonly Stretch[],
  cells: number[],
): void {
  if (i1 - i0 < 2 && j1 - j0 < 2) return;
  const im = i1 - i0 < 2 ? i0 : (i0 + i1) >> 1;
  const jm = j1 - j0 < 2 ? j0 : (j0 + j1) >> 1;
  // A bar of the window, or a tap, throws a shadow narrower than a coarse cell: there cells are looked at up to its width.
  let split =
    Math.max(i1 - i0, j1 - j0) > SHARP_CELL &&
    sharp.some(([u0, u1, v0, v1]) => u0 <= i1 && u1 >= i0 && v0 <= j1 && v1 >= j0);
  for (const j of [j0, jm, j1]) {
    for (const i of [i0, im, i1]) {
      const corner = (i === i0 || i === i1) && (j === j0 || j === j1);
      if (!corner && offLine(pen, r, i, j, i0, i1, j0, j1, tolerance, floor)) split = true;
    }
  }
  const us = im > i0 ? [i0, im, i1] : [i0, i1];
  const vs = jm > j0 ? [j0, jm, j1] : [j0, j1];
  for (let b = 0; b + 1 < vs.length; b++) {
    for (let a = 0; a + 1 < us.length; a++) {
      fillCell(pen, r, us[a]!, us[a + 1]!, vs[b]!, vs[b + 1]!);
      if (split) cells.push(us[a]!, us[a + 1]!, vs[b]!, vs[b + 1]!);
    }
  }
}

const expected = new Float64Array(CHANNELS);

/** Computes one sample and says whether it leaves the bilinear surface through the cell's corners. */
function offLine(
  pen: TexelPen,
  r: number,
  i: number,
  j: number,
  i0: number,
  i1: number,
  j0: number,
  j1: number,
  tolerance: number,
  floor: Float64Array,
): boolean {
  const { blocks, width } = pen.map.atlas;
  const { data } = pen.map;
  const first = blocks[4 * r + 1]! * width + blocks[4 * r]!;
  const fu = i1 > i0 ? (i - i0) / (i1 - i0) : 0;
  const fv = j1 > j0 ? (j - j0) / (j1 - j0) : 0;
  for (let g = 0; g < CHANNELS; g++) {
    const a = data[CHANNELS * (first + j0 * width + i0) + g]!;
    const b = data[CHANNELS * (first + j0 * width + i1) + g]!;
    const c = data[CHANNELS * (first + j1 * width + i0) + g]!;
    const d = data[CHANNELS * (first + j1 * width + i1) + g]!;
    expected[g] = (a * (1 - fu) + b * fu) * (1 - fv) + (c * (1 - fu) + d * fu) * fv;
  }
  drawTexel(pen, r, i, j);
  for (let g = 0; g < CHANNELS; g++) {
    const value = data[CHANNELS * (first + j * width + i) + g]!;
    if (Math.abs(value - expected[g]!) > tolerance * value + floor[g]!) return true;
  }
  return false;
}
