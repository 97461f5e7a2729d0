import { mulberry32 } from '../random';
import { inGroupsOfFour } from './kernel/groups';
import type { RayFan } from './kernel/types';
import type { RectBvh } from './rect-bvh';

/** Golden section of a turn: a spiral of points at this step covers a disk evenly (H. Vogel, 1979). */
const GOLDEN_TURN = (3 - Math.sqrt(5)) / 2;

/** `rayCount` rays, at least 8, evenly spread and cosine-distributed over the hemisphere. */
export function spreadRays(bvh: RectBvh, rayCount: number, seed: number): RayFan {
  const count = Math.max(8, rayCount);
  const turn = mulberry32(seed)();
  const rays = Array.from({ length: count }, (_, k) => {
    const r2 = (k + 0.5) / count;
    const phi = 2 * Math.PI * (k * GOLDEN_TURN + turn);
    return [Math.sqrt(r2) * Math.cos(phi), Math.sqrt(r2) * Math.sin(phi), Math.sqrt(1 - r2)] as const;
  });
  const length = (count + 3) & ~3;
  const groups = new Float64Array(3 * length);
  const sorted = neighborsTogether(rays);
  for (let k = 0; k < length; k++) {
    const at = inGroupsOfFour(k);
    const [p, q, r] = sorted[Math.min(k, count - 1)]!;
    groups[at] = p;
    groups[at + 4] = q;
    groups[at + 8] = r;
  }
  return { bvh, count, groups, hits: new Float64Array(length), distances: new Float64Array(length) };
}

/** Strips across the disk, each from one end to the other: four in a row lie in a patch about as long as wide. */
function neighborsTogether<T extends readonly [number, number, number]>(rays: readonly T[]): T[] {
  const strips = Math.ceil(Math.sqrt(rays.length / 4));
  const perStrip = 4 * Math.ceil(rays.length / strips / 4);
  const across = [...rays].sort((a, b) => a[0] - b[0]);
  return Array.from({ length: strips }, (_, i) =>
    across.slice(i * perStrip, (i + 1) * perStrip).sort((a, b) => a[1] - b[1]),
  ).flat();
}
