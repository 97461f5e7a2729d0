import type { Emitter } from './emitters';
import { probeFace, samplesEnd } from './face-probes';
import { lightKernel } from './kernel/kernel';
import { intensityTowards } from './lamp-irradiance';
import type { RectBvh } from './rect-bvh';

/**
 * Share of an emitter's light that reaches a point past all rectangles, 0-1: each part of the face counts by what it
 * would give there. Probes first; where they differ, rays all over the face (`finest`: all of its samples). The samples
 * are the same for every receiver, so that shadows are smooth from texel to texel.
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
  const { samples, sampleTargets } = emitter;
  const probed = probeFace(emitter, bvh, x, y, z, nx, ny, nz);
  if (probed >= 0) return probed;
  const end = samplesEnd(emitter, finest);
  let all = 0;
  let visible = 0;
  lightKernel().shadeFan(bvh, sampleTargets, end / 3, x, y, z);
  for (let i = 0, k = 0; k < end; i++, k += 3) {
    const dx = samples[k]! - x;
    const dy = samples[k + 1]! - y;
    const dz = samples[k + 2]! - z;
    const weight = sampleWeight(emitter, dx, dy, dz, nx, ny, nz);
    if (weight === 0) continue;
    all += weight;
    if (!sampleTargets.blocked[i]) visible += weight;
  }
  return all > 0 ? visible / all : 0;
}

/** What a part of the face towards (dx, dy, dz) gives a receiver, up to a common factor. */
function sampleWeight(
  emitter: Emitter,
  dx: number,
  dy: number,
  dz: number,
  nx: number,
  ny: number,
  nz: number,
): number {
  const { normal, beam } = emitter;
  const toReceiver = dx * nx + dy * ny + dz * nz;
  const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
  if (toReceiver <= 0 || toFace <= 0) return 0;
  const d2 = dx * dx + dy * dy + dz * dz;
  if (beam) return (toReceiver * intensityTowards(emitter, beam, -dx, -dy, -dz)) / (d2 * Math.sqrt(d2));
  return (toReceiver * toFace) / (d2 * d2);
}
