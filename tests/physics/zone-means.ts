import { addDirect, directScene } from '../../src/engine/light/direct-scene';
import { finishGather, gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { CHECK_ZONES, type CheckZone, checkRoom } from './light-check-room';

const BANDS = 3;
/** Points at which indirect light is gathered; direct light, which changes faster, at three times as many each way. */
const ALONG_B = 16;
const ALONG_C = 12;
const DIRECT_FINER = 3;
/** Rays of a display node of final quality: what numbers on screen rest on. */
const NODE_RAYS = 400;

export interface Effort {
  readonly patchSize?: number;
  readonly raysPerPatch?: number;
  /** Rays of the final gather at a point. */
  readonly rays?: number;
  readonly seed?: number;
}

/** Deviations of zone means from the renderer, per zone of the light-check room and band, as shares. */
export const deviationsOf = (means: readonly number[][]): number[][] =>
  means.map((bands, i) => bands.map((mean, k) => mean / CHECK_ZONES[i]!.cycles[k]! - 1));

/** Means of irradiance, per zone of the light-check room and band; by the product's settings unless said otherwise. */
export function zoneMeans(effort: Effort = {}): number[][] {
  const { room, reflectance } = checkRoom();
  const transport = buildTransport(room, effort);
  const radiosity = solveGroup(transport, reflectance, transport.direct[0]!, { bands: BANDS });
  const scene = directScene(transport);
  return CHECK_ZONES.map((zone) => {
    const gatherer = startGather(room, transport, effort.rays ?? NODE_RAYS, 7);
    for (const [point, normal] of points(zone, 1)) gatherPoint(gatherer, ...point, ...normal);
    const direct = new Float64Array(1);
    for (const [point, normal] of points(zone, DIRECT_FINER)) addDirect(scene, ...point, ...normal, direct);
    const indirect = gatherNodes({ rows: finishGather(gatherer) }, radiosity, BANDS);
    const count = ALONG_B * ALONG_C;
    return [0, 1, 2].map((k) => {
      let sum = 0;
      for (let i = 0; i < count; i++) sum += indirect[i * BANDS + k]!;
      return sum / count + direct[0]! / (count * DIRECT_FINER ** 2);
    });
  });
}

type Triple = [number, number, number];

function* points({ axis, sign, plane, b, c }: CheckZone, finer: number): Generator<[Triple, Triple]> {
  for (let j = 0; j < finer * ALONG_C; j++) {
    for (let i = 0; i < finer * ALONG_B; i++) {
      const point: Triple = [0, 0, 0];
      const normal: Triple = [0, 0, 0];
      point[axis] = plane;
      normal[axis] = sign;
      point[(axis + 1) % 3] = b[0] + ((b[1] - b[0]) * (i + 0.5)) / (finer * ALONG_B);
      point[(axis + 2) % 3] = c[0] + ((c[1] - c[0]) * (j + 0.5)) / (finer * ALONG_C);
      yield [point, normal];
    }
  }
}
