import { type FineToCoarse, mapFineToCoarse, patchForFine } from './fine-to-coarse';
import { RAY_OFFSET_M } from './form-factors';
import { inGroupsOfFour } from './kernel/groups';
import { lightKernel } from './kernel/kernel';
import type { RayFan } from './kernel/types';
import { spreadRays } from './ray-fan';
import { facesOfShades, shadesThatHide } from './shades';
import type { Transport } from './transport';
import type { LightRoom, SparseRows } from './types';

/** Gathers rows one point at a time; the rows grow in the order of the calls. */
export interface RowGatherer {
  readonly map: FineToCoarse;
  readonly transport: Transport;
  readonly fan: RayFan;
  readonly slotOf: Int32Array;
  start: number[];
  column: Uint32Array;
  value: Float32Array;
  end: number;
}

/**
 * Rows of a final gather: what a point receives from each patch, by `rayCount` evenly spread cosine-distributed rays
 * against the fine rectangles. Every point uses the same rays, so that the error is smooth over a surface.
 */
export function startGather(
  room: Pick<LightRoom, 'coarse' | 'fine' | 'lamps' | 'shades'>,
  transport: Transport,
  rayCount: number,
  seed: number,
): RowGatherer {
  return {
    map: mapFineToCoarse(
      [...room.fine, ...facesOfShades(shadesThatHide(room))],
      room.coarse,
      transport.patches,
      room.fine.length,
    ),
    transport,
    fan: spreadRays(transport.gatherBvh, rayCount, seed),
    slotOf: new Int32Array(transport.patches.count).fill(-1),
    start: [0],
    column: new Uint32Array(1 << 14),
    value: new Float32Array(1 << 14),
    end: 0,
  };
}

/**
 * Adds the row of a point with unit normal n. Rays that meet black, a back or nothing bring no light; those that meet a wide prop's
 * shade bring that of the nearest patch that faces alike: what falls there is much the same, and a prop's own finish is one of many.
 */
export function gatherPoint(
  gatherer: RowGatherer,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): void {
  const { map, fan, slotOf } = gatherer;
  const { bvh, count, groups, hits, distances } = fan;
  reserve(gatherer, count);
  const { column, value } = gatherer;
  // Tangents from the axis least along the normal; the same for all points that face alike.
  const ax = Math.abs(nx);
  const ay = Math.abs(ny);
  const az = Math.abs(nz);
  const ex = ax <= ay && ax <= az ? 1 : 0;
  const ey = ex === 0 && ay <= az ? 1 : 0;
  const ez = ex === 0 && ey === 0 ? 1 : 0;
  let tx = ny * ez - nz * ey;
  let ty = nz * ex - nx * ez;
  let tz = nx * ey - ny * ex;
  const length = Math.sqrt(tx * tx + ty * ty + tz * tz);
  tx /= length;
  ty /= length;
  tz /= length;
  const sx = ny * tz - nz * ty;
  const sy = nz * tx - nx * tz;
  const sz = nx * ty - ny * tx;
  const ox = x + nx * RAY_OFFSET_M;
  const oy = y + ny * RAY_OFFSET_M;
  const oz = z + nz * RAY_OFFSET_M;
  lightKernel().traceFan(fan, [ox, oy, oz, tx, ty, tz, sx, sy, sz, nx, ny, nz]);
  const begin = gatherer.end;
  let end = begin;
  for (let k = 0; k < count; k++) {
    const slot = hits[k]!;
    if (slot < 0) continue;
    const at = inGroupsOfFour(k);
    const p = groups[at]!;
    const q = groups[at + 4]!;
    const r = groups[at + 8]!;
    const dx = tx * p + sx * q + nx * r;
    const dy = ty * p + sy * q + ny * r;
    const dz = tz * p + sz * q + nz * r;
    const axis = bvh.axis[slot]!;
    if ((axis === 0 ? dx : axis === 1 ? dy : dz) * bvh.sign[slot]! > 0) continue;
    const t = distances[k]!;
    const patch = patchForFine(map, bvh.rect[slot]!, ox + dx * t, oy + dy * t, oz + dz * t);
    if (patch < 0) continue;
    const known = slotOf[patch]!;
    if (known >= 0) value[known]! += 1 / count;
    else {
      slotOf[patch] = end;
      column[end] = patch;
      value[end++] = 1 / count;
    }
  }
  for (let e = begin; e < end; e++) slotOf[column[e]!] = -1;
  gatherer.end = end;
  gatherer.start.push(end);
}

export function finishGather(gatherer: RowGatherer): SparseRows {
  return {
    count: gatherer.start.length - 1,
    start: Uint32Array.from(gatherer.start),
    column: gatherer.column.slice(0, gatherer.end),
    value: gatherer.value.slice(0, gatherer.end),
  };
}

function reserve(gatherer: RowGatherer, more: number): void {
  if (gatherer.end + more <= gatherer.column.length) return;
  const column = new Uint32Array(2 * gatherer.column.length + more);
  const value = new Float32Array(column.length);
  column.set(gatherer.column);
  value.set(gatherer.value);
  gatherer.column = column;
  gatherer.value = value;
}
