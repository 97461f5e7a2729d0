import { readFileSync } from 'node:fs';
import { gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { lightKernel, withKernel } from '../../src/engine/light/kernel/kernel';
import { buildNodes, FIRST_RAYS, gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { report } from './timing';

// The inner loops of light in WebAssembly beside their TypeScript twins, on the L kitchen.

const RUNS = 21;
const kitchen = JSON.parse(readFileSync(new URL('../../scenes/l-island.json', import.meta.url), 'utf8')) as Kitchen;
const room = buildRoom(kitchen).light;
const transport = buildTransport(room);
const direct = transport.direct.find((lx) => lx.some((one) => one > 0))!;
const reflectance = Float32Array.from(
  { length: 24 * room.surfaces.length },
  (_, i) => 0.15 + (0.6 * ((i * 7) % 13)) / 13,
);
const radiosity = solveGroup(transport, reflectance, direct);
const first = buildNodes(room, transport, { rays: FIRST_RAYS });
const final = buildNodes(room, transport);
console.log(
  `  ${transport.patches.count} patches, ${transport.bounce.value.length} factors, ${first.rows.count} nodes, ` +
    `${first.rows.value.length} and ${final.rows.value.length} weights`,
);

compare('solve one group', 15, () => solveGroup(transport, reflectance, direct));
const changed = reflectance.map((rho, i) => (i < 24 ? rho * 0.8 : rho));
compare('solve one group from another solution', null, () =>
  solveGroup(transport, changed, direct, { warmStart: radiosity, tolerance: 1e-4 }),
);
compare('rays of a final gather, 100 points', null, () => {
  const gatherer = startGather(room, transport, 640, 7);
  for (let i = 0; i < 100; i++) gatherPoint(gatherer, 1 + i / 100, 2, 0.3 + i / 80, 0, i % 2 ? 1 : -1, 0);
});
compare('gather one group, first picture', null, () => gatherNodes(first, radiosity, 24));
compare('gather one group, final quality', null, () => gatherNodes(final, radiosity, 24));

const nodeLight = gatherNodes(first, radiosity, 24);
const colors = Float32Array.from({ length: 72 }, (_, i) => Math.sin(i));
const out = new Float32Array(3 * 2 * first.rows.count);
for (const groups of [1, 2, 8]) {
  const light = new Array<Float32Array>(groups).fill(nodeLight);
  const sums = room.fine.flatMap((_, rect) => {
    const from = first.first[rect]!;
    const sum = {
      first: from,
      count: first.first[rect + 1]! - from,
      colors: new Array<Float32Array>(groups).fill(colors),
    };
    return [sum, sum];
  });
  compare(`color two components, ${groups} groups`, null, () => lightKernel().sumBands(light, sums, out));
}

/** Medians of both kernels and how many times faster WebAssembly is. */
function compare(name: string, budget_ms: number | null, work: () => void): void {
  const typescript = withKernel('typescript', () => timesOf(work));
  const wasm = withKernel('wasm', () => timesOf(work));
  report(`${name}, TypeScript`, null, typescript);
  report(`${name}, WebAssembly`, budget_ms, wasm);
  console.log(`  ratio ${(middle(typescript) / middle(wasm)).toFixed(1)}`);
}

function timesOf(work: () => void): number[] {
  work();
  return Array.from({ length: RUNS }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
}

function middle(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[times.length >> 1]!;
}
