import { emitterIrradiance } from './emitter-irradiance';
import type { Emitter } from './emitters';
import type { RectBvh } from './rect-bvh';
import type { Transport } from './transport';
import { addWindowDirect } from './window-direct';
import type { WindowLight } from './window-light';

/** Everything that lights points directly, and what stands in its way. */
export interface DirectScene {
  readonly emitters: readonly Emitter[];
  readonly windows: readonly WindowLight[];
  readonly bvh: RectBvh;
}

/** Light that changes apart: daylight with the hour, lamps with the room. A layer's four groups stand together. */
export interface DirectLayer {
  readonly id: 'daylight' | 'lamps';
  readonly firstGroup: number;
}
export const DIRECT_LAYERS: readonly [daylight: DirectLayer, lamps: DirectLayer] = [
  { id: 'daylight', firstGroup: 0 },
  { id: 'lamps', firstGroup: 4 },
];
/** Groups of a layer. */
export const CHANNELS = 4;

const isInLayer = ({ firstGroup }: DirectLayer, group: number): boolean =>
  group >= firstGroup && group < firstGroup + CHANNELS;

/** The direct light of a room, of one layer or both, shadows by its fine rectangles. */
export const directScene = (
  { emitters, windows, shadowBvh }: Pick<Transport, 'emitters' | 'windows' | 'shadowBvh'>,
  layer?: DirectLayer,
): DirectScene => ({
  emitters: layer ? emitters.filter(({ group }) => isInLayer(layer, group)) : emitters,
  windows: layer?.id === 'lamps' ? [] : windows,
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
  const { emitters, windows, bvh } = scene;
  for (let e = 0; e < emitters.length; e++) {
    const emitter = emitters[e]!;
    out[emitter.group]! += emitterIrradiance(emitter, bvh, x, y, z, nx, ny, nz, true);
  }
  for (let w = 0; w < windows.length; w++) addWindowDirect(windows[w]!, bvh, x, y, z, nx, ny, nz, true, out);
}
