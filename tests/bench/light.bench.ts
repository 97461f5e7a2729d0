import { readFileSync } from 'node:fs';
import { directTexels } from '../../src/engine/light/direct-texels';
import { buildNodes, gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { buildTransport } from '../../src/engine/light/transport';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/project';
import { median } from './timing';

// The light engine on the L kitchen. Run alone: npm run bench.

const kitchen = JSON.parse(readFileSync(new URL('../../scenes/l-island.json', import.meta.url), 'utf8')) as Kitchen;
const room = buildRoom(kitchen).light;

const transport = median('transport with coarse direct', 400, 5, () => buildTransport(room));
const { patches, factors } = transport;
const reflectance = Float32Array.from(
  { length: 24 * room.surfaces.length },
  (_, i) => 0.15 + (0.6 * ((i * 7) % 13)) / 13,
);
console.log(`  ${patches.count} patches, ${factors.value.length} factors, leak ${transport.leak.toExponential(1)}`);
const radiosity = median('solve one group, 24 bands, cold', 60, 9, () =>
  solveGroup(transport, reflectance, transport.direct[0]!),
);
const changed = reflectance.map((rho, i) => (i < 24 ? rho * 0.8 : rho));
median('solve after one finish changed', null, 9, () =>
  solveGroup(transport, changed, transport.direct[0]!, { warmStart: radiosity }),
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
