import type { Emitter } from './emitters';
import { luminanceThrough } from './overcast-sky';
import type { RectBvh } from './rect-bvh';
import { isBlocked } from './rect-trace';

const seen = new Uint8Array(64);
const weight = new Float64Array(64);

/**
 * Share of an emitter's light that reaches a point past all rectangles, 0-1: each part of the face counts by what it
 * would give there. Probes first; where they differ, one ray per cell, and more (`finest`) along the shadow's edge.
 * The sample points are the same for every receiver, so that shadows are smooth from texel to texel.
 */
export function visibleShare(
  emitter: Emitter,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  finest: boolean,
): number {
  const { probes, cells, across, up, finer, perCell } = emitter;
  let open = 0;
  let shut = 0;
  for (let k = 0; k < probes.length && !(open && shut); k += 3) {
    const dx = probes[k]! - x;
    const dy = probes[k + 1]! - y;
    const dz = probes[k + 2]! - z;
    if (dx * nx + dy * ny + dz * nz <= 0) continue;
    if (isBlocked(bvh, x, y, z, dx, dy, dz, 1)) shut++;
    else open++;
  }
  if (!open !== !shut) return open ? 1 : 0;
  const count = across * up;
  let all = 0;
  let visible = 0;
  for (let c = 0; c < count; c++) {
    const dx = cells[3 * c]! - x;
    const dy = cells[3 * c + 1]! - y;
    const dz = cells[3 * c + 2]! - z;
    const w = cellWeight(emitter, dx, dy, dz, nx, ny, nz);
    weight[c] = w;
    seen[c] = w > 0 && !isBlocked(bvh, x, y, z, dx, dy, dz, 1) ? 1 : 0;
    all += w;
    visible += w * seen[c]!;
  }
  if (all === 0) return 0;
  if (!finest) return visible / all;
  // Where all cells agree though the probes did not, the shadow's edge runs along the border.
  const uniform = visible === 0 || visible === all;
  for (let c = 0; c < count; c++) {
    if (weight[c] === 0 || !(uniform ? onBorder(c, across, up) : onShadowEdge(c, across, up))) continue;
    let free = 0;
    for (let m = 3 * perCell * c; m < 3 * perCell * (c + 1); m += 3) {
      if (!isBlocked(bvh, x, y, z, finer[m]! - x, finer[m + 1]! - y, finer[m + 2]! - z, 1)) free++;
    }
    visible += weight[c]! * (free / perCell - seen[c]!);
  }
  return Math.min(1, Math.max(0, visible / all));
}

function onBorder(c: number, across: number, up: number): boolean {
  const i = c % across;
  const j = (c - i) / across;
  return i === 0 || j === 0 || i === across - 1 || j === up - 1;
}

/** Whether a cell's visibility differs from a neighbour's. */
function onShadowEdge(c: number, across: number, up: number): boolean {
  const i = c % across;
  const j = (c - i) / across;
  const own = seen[c]!;
  return (
    (i > 0 && seen[c - 1] !== own) ||
    (i < across - 1 && seen[c + 1] !== own) ||
    (j > 0 && seen[c - across] !== own) ||
    (j < up - 1 && seen[c + across] !== own)
  );
}

function cellWeight(emitter: Emitter, dx: number, dy: number, dz: number, nx: number, ny: number, nz: number): number {
  const { normal, outside } = emitter;
  const toReceiver = dx * nx + dy * ny + dz * nz;
  const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
  if (toReceiver <= 0 || toFace <= 0) return 0;
  const d2 = dx * dx + dy * dy + dz * dz;
  const w = (toReceiver * toFace) / (d2 * d2);
  if (!outside) return w;
  const d = Math.sqrt(d2);
  return w * luminanceThrough(outside, dz / d, toFace / d);
}
