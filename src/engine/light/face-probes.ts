import type { FaceSamples } from './face-samples';
import { lightKernel } from './kernel/kernel';
import type { RectBvh } from './rect-bvh';

/** Shadow rays to a partly hidden face on a coarse look, where patches average anyway. */
const COARSE_SAMPLES = 16;

/** How much of a face a point sees by its probes: all (1), nothing (0), or it takes more rays to tell (-1). */
export function probeFace(
  { probes, probeTargets }: Pick<FaceSamples, 'probes' | 'probeTargets'>,
  bvh: RectBvh,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
): 1 | 0 | -1 {
  let open = 0;
  let shut = 0;
  lightKernel().shadeFan(bvh, probeTargets, probeTargets.count, x, y, z);
  for (let i = 0, k = 0; k < probes.length; i++, k += 3) {
    const dx = probes[k]! - x;
    const dy = probes[k + 1]! - y;
    const dz = probes[k + 2]! - z;
    if (dx * nx + dy * ny + dz * nz <= 0) continue;
    if (probeTargets.blocked[i]) shut++;
    else open++;
  }
  if (!open === !shut) return -1;
  return open ? 1 : 0;
}

/** End of the samples to look at: all of them (`finest`), or the first few, which are evenly spread too. */
export const samplesEnd = ({ samples }: Pick<FaceSamples, 'samples'>, finest: boolean): number =>
  finest ? samples.length : Math.min(samples.length, 3 * COARSE_SAMPLES);
