import { expect, it } from 'vitest';
import { addDirect, directScene } from '../../src/engine/light/direct-scene';
import { finishGather, gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { CHECK_ZONES, type CheckZone, checkRoom } from './light-check-room';

// Two independent renderers: Cycles 3.4 and Radiance 5.2 agree within about 1 % on this room; the zone means are Cycles'.

const BANDS = 3;
const ALONG_B = 16;
const ALONG_C = 12;

/** Zone means of irradiance in three bands, by the engine's defaults unless said otherwise. */
function zoneMeans(options: { patchSize?: number; raysPerPatch?: number; rays?: number; seed?: number }): number[][] {
  const { room, reflectance } = checkRoom();
  const transport = buildTransport(room, options);
  const radiosity = solveGroup(transport, reflectance, transport.direct[0]!, { bands: BANDS });
  const scene = directScene(transport);
  return CHECK_ZONES.map((zone) => {
    const gatherer = startGather(room, transport, options.rays ?? 192, 7);
    const direct = new Float64Array(1);
    for (const [point, normal] of points(zone)) {
      gatherPoint(gatherer, ...point, ...normal);
      addDirect(scene, ...point, ...normal, direct);
    }
    const indirect = gatherNodes({ rows: finishGather(gatherer) }, radiosity, BANDS);
    const count = ALONG_B * ALONG_C;
    return [0, 1, 2].map((k) => {
      let sum = direct[0]!;
      for (let i = 0; i < count; i++) sum += indirect[i * BANDS + k]!;
      return sum / count;
    });
  });
}

type Triple = [number, number, number];

function* points({ axis, sign, plane, b, c }: CheckZone): Generator<[Triple, Triple]> {
  for (let j = 0; j < ALONG_C; j++) {
    for (let i = 0; i < ALONG_B; i++) {
      const point: Triple = [0, 0, 0];
      const normal: Triple = [0, 0, 0];
      point[axis] = plane;
      normal[axis] = sign;
      point[(axis + 1) % 3] = b[0] + ((b[1] - b[0]) * (i + 0.5)) / ALONG_B;
      point[(axis + 2) % 3] = c[0] + ((c[1] - c[0]) * (j + 0.5)) / ALONG_C;
      yield [point, normal];
    }
  }
}

const deviation = (means: readonly number[], zone: CheckZone): number =>
  Math.max(...means.map((mean, k) => Math.abs(mean / zone.cycles[k]! - 1)));

it('every zone and band is within 0.7 % of the renderer, with the settings the product uses', () => {
  const means = zoneMeans({});
  const found = CHECK_ZONES.map((zone, i) => ({ zone: zone.name, within: deviation(means[i]!, zone) < 0.007 }));
  expect(found).toEqual(CHECK_ZONES.map(({ name }) => ({ zone: name, within: true })));
});

it('convergence: half the patch size and four times the rays come nearer, within 0.4 %', () => {
  const means = zoneMeans({ patchSize: 0.14, raysPerPatch: 1024, rays: 768 });
  CHECK_ZONES.forEach((zone, i) => {
    expect(deviation(means[i]!, zone)).toBeLessThan(0.004);
  });
});

it('the room is closed: fewer than one ray in 10 000 is lost', () => {
  expect(buildTransport(checkRoom().room).leak).toBeLessThan(1e-4);
});
