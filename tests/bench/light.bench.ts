import { readFileSync } from 'node:fs';
import { directTexels } from '../../src/engine/light/direct-texels';
import { buildNodes, gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { buildTransport } from '../../src/engine/light/transport';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { denseFactors, solveDense } from './dense-solve';
import { distancesByMesh, distancesByRects, meshOf, raysFrom } from './mesh-rays';
import { compare, median, shortest } from './timing';

// The light engine on the L kitchen. Run alone: npm run bench.

const kitchen = JSON.parse(readFileSync(new URL('../../scenes/l-island.json', import.meta.url), 'utf8')) as Kitchen;
const room = buildRoom(kitchen).light;

const transport = median('transport with coarse direct', 400, 5, () => buildTransport(room));
const { patches, factors } = transport;
/** Of the first group that shines: daylight does only once there is a sky. */
const direct = transport.direct.find((lx) => lx.some((x) => x > 0))!;
const reflectance = Float32Array.from(
  { length: 24 * room.surfaces.length },
  (_, i) => 0.15 + (0.6 * ((i * 7) % 13)) / 13,
);
console.log(`  ${patches.count} patches, ${factors.value.length} factors, leak ${transport.leak.toExponential(1)}`);
const radiosity = median('solve one group, 24 bands, cold', 60, 9, () => solveGroup(transport, reflectance, direct));
const changed = reflectance.map((rho, i) => (i < 24 ? rho * 0.8 : rho));
median('solve after one finish changed', null, 9, () =>
  solveGroup(transport, changed, direct, { warmStart: radiosity }),
);
const nodes = median('node rows', null, 1, () => buildNodes(room, transport));
console.log(`  ${nodes.rows.count} nodes, ${nodes.rows.value.length} weights`);
median('gather all nodes, 24 bands', 40, 9, () => gatherNodes(nodes, radiosity, 24));
median('surface means', null, 1, () => surfaceLights(room, transport, nodes));
const map = median('direct light, refined', 5000, 1, () => {
  const steps = directTexels(room, transport);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
});
console.log(`  atlas ${map.atlas.width} x ${map.atlas.height}`);

// Against plainer and more general means, in the same run.

const dense = denseFactors(transport);
const ours = shortest(15, () => solveGroup(transport, reflectance, direct));
const plain = shortest(2, () => solveDense(transport, dense, reflectance, direct, 24));
compare('solve one group', ours, 'plain dense Gauss-Seidel', plain);
let apart = 0;
plain.result.forEach((b, i) => {
  apart = Math.max(apart, Math.abs(b - ours.result[i]!) / Math.max(b, 1e-3));
});
console.log(`  the two differ by ${apart.toExponential(1)} of a patch and band at most`);

const rays = raysFrom(room.fine, 200_000, 1);
const mesh = meshOf(room.fine);
const byRects = shortest(5, () => distancesByRects(transport.fineBvh, rays));
const byMesh = shortest(5, () => distancesByMesh(mesh, rays));
compare(`200 000 rays, ${room.fine.length} rectangles`, byRects, 'three-mesh-bvh 0.9.17', byMesh);
const same = byMesh.result.filter((t, i) => t === byRects.result[i] || Math.abs(t - byRects.result[i]!) < 1e-4).length;
console.log(`  ${((100 * same) / byMesh.result.length).toFixed(3)} % of the distances are the same within 0.1 mm`);
