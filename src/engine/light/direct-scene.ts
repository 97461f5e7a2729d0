import { emitterIrradiance } from './emitter-irradiance';
import { type Emitter, lampEmitter, windowEmitter } from './emitters';
import type { RectBvh } from './rect-bvh';
import type { LightRoom } from './types';

/** Everything that lights points directly, and what stands in its way. */
export interface DirectScene {
  readonly groups: number;
  readonly emitters: readonly Emitter[];
  readonly bvh: RectBvh;
}

export function prepareEmitters(room: Pick<LightRoom, 'lamps' | 'windows'>): Emitter[] {
  return [...room.lamps.map(lampEmitter), ...room.windows.map(windowEmitter)];
}

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
