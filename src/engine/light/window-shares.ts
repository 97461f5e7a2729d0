import { probeFace, samplesEnd } from './face-probes';
import { readGlass } from './glass';
import { lightKernel } from './kernel/kernel';
import type { RectBvh } from './rect-bvh';
import { luminanceOutside, PARTS, partTowards, type WindowLight } from './window-light';

const all = new Float64Array(PARTS);

/**
 * Share of a window's light that reaches a point past all rectangles, 0-1, by what is seen through it, into `out`: each part of
 * the glass counts by what it would give there. Probes first; where they differ, rays all over the glass (`finest`: all of
 * its samples). The samples are the same for every receiver, so that shadows are smooth from texel to texel.
 */
export function windowShares(
  window: WindowLight,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  finest: boolean,
  out: Float64Array,
): void {
  const { samples, sampleTargets, normal } = window;
  const probed = probeFace(window, bvh, x, y, z, nx, ny, nz);
  if (probed >= 0) {
    out.fill(probed);
    return;
  }
  out.fill(0);
  all.fill(0);
  const end = samplesEnd(window, finest);
  lightKernel().shadeFan(bvh, sampleTargets, end / 3, x, y, z);
  for (let i = 0, k = 0; k < end; i++, k += 3) {
    const dx = samples[k]! - x;
    const dy = samples[k + 1]! - y;
    const dz = samples[k + 2]! - z;
    const toReceiver = dx * nx + dy * ny + dz * nz;
    const toFace = -(dx * normal[0]! + dy * normal[1]! + dz * normal[2]!);
    if (toReceiver <= 0 || toFace <= 0) continue;
    const d2 = dx * dx + dy * dy + dz * dz;
    const d = Math.sqrt(d2);
    const part = partTowards(window, dx / d, dy / d, dz / d);
    const luminance = luminanceOutside(window, part, dx / d, dy / d, dz / d);
    const weight = ((toReceiver * toFace) / (d2 * d2)) * luminance * readGlass(window.glass, toFace / d);
    all[part]! += weight;
    if (!sampleTargets.blocked[i]) out[part]! += weight;
  }
  for (let part = 0; part < PARTS; part++) out[part] = all[part]! > 0 ? out[part]! / all[part]! : 0;
}
