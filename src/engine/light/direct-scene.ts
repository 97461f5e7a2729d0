import { emitterIrradiance } from './emitter-irradiance';
import type { Emitter } from './emitters';
import type { RectBvh } from './rect-bvh';
import type { Transport } from './transport';

/** Everything that lights points directly, and what stands in its way. */
export interface DirectScene {
  readonly emitters: readonly Emitter[];
  readonly bvh: RectBvh;
}

/** The direct light of a room, shadows by its fine rectangles. */
export const directScene = ({ emitters, shadowBvh }: Pick<Transport, 'emitters' | 'shadowBvh'>): DirectScene => ({
  emitters,
  bvh: shadowBvh,
});

/** Direct illuminance at a point with unit normal n, lx per group at level 1, added into `out`. */
export function addDirect(
  scene: DirectScene,
  x: number,
  y: number,
  z: number,
  nx: number,
  ny: number,
  nz: number,
  out: Float64Array,
): void {
  const { emitters, bvh } = scene;
  for (let e = 0; e < emitters.length; e++) {
    const emitter = emitters[e]!;
    out[emitter.group]! += emitterIrradiance(emitter, bvh, x, y, z, nx, ny, nz, true);
  }
}
