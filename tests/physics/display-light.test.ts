import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layoutAtlas, sampleFraction } from '../../src/engine/light/atlas';
import { withDaylight } from '../../src/engine/light/daylight';
import { directAt } from '../../src/engine/light/direct-map';
import { CHANNELS } from '../../src/engine/light/direct-scene';
import { directTexels } from '../../src/engine/light/direct-texels';
import { referenceRadiosity, referenceView } from '../../src/engine/light/exposure';
import { buildNodes, gatherNodes } from '../../src/engine/light/nodes';
import { buildPropGather, propDirect } from '../../src/engine/light/prop-gather';
import { rectNormal } from '../../src/engine/light/rect-bvh';
import { solveGroup } from '../../src/engine/light/solve';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { buildTransport } from '../../src/engine/light/transport';
import type { LightRoom, Rect, Vec3 } from '../../src/engine/light/types';
import { viewShares } from '../../src/engine/light/view-shares';
import { boxRects, ceilingLamp, opening, overcastOutdoors, roomOf, withPattern } from './box-room';

const LUMENS = 3000;

/** A box with a shelf that throws a shadow, a ceiling lamp and a window in the wall x = 0. */
function shelfRoom(): LightRoom {
  const shelf: Rect[] = [
    { origin: [1, 1, 1.2], u: [1.2, 0, 0], v: [0, 0.8, 0], surface: 6 },
    { origin: [1, 1, 1.19], u: [0, 0.8, 0], v: [1.2, 0, 0], surface: 6 },
  ];
  const window: Rect = { origin: [0, 1, 1], u: [0, 1, 0], v: [0, 0, 1], surface: -1 };
  return roomOf(
    [...boxRects(3, 3, 2.5), ...shelf],
    {
      lamps: [ceilingLamp(1.6, 1.4, 2.5, 0.5, LUMENS)],
      windows: [{ ...opening(window, 1), panes: 2 }],
    },
    ['floor', 'ceiling', 'wall', 'wall', 'wall', 'wall', 'counter'],
  );
}

const room = shelfRoom();
// A fifth of 8000 lx comes back from the ground.
const transport = withDaylight(
  room,
  buildTransport(room, { patchSize: 0.4 }),
  overcastOutdoors(8000, (0.2 * 8000) / Math.PI),
);
const nodes = buildNodes(room, transport);

it('atlas blocks lie inside the atlas and never overlap, and samples reach both ends', () => {
  const edge = fc.double({ min: 0.005, max: 4, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(edge, edge), { minLength: 1, maxLength: 30 }), (sizes) => {
      const rects = sizes.map(([a, b]): Rect => ({ origin: [0, 0, 0], u: [a, 0, 0], v: [0, b, 0], surface: 0 }));
      const { width, height, blocks } = layoutAtlas(rects, () => 0.05);
      const taken = new Uint8Array(width * height);
      rects.forEach((rect, r) => {
        const [x, y, nu, nv] = blocks.subarray(4 * r, 4 * r + 4) as unknown as [number, number, number, number];
        expect(x + nu).toBeLessThanOrEqual(width);
        expect(y + nv).toBeLessThanOrEqual(height);
        expect(nu === 1 ? rect.u[0] < 0.02 : rect.u[0] / (nu - 1) <= 0.05 + 1e-6).toBe(true);
        for (let j = y; j < y + nv; j++) for (let i = x; i < x + nu; i++) taken[j * width + i]!++;
        expect(sampleFraction(nu - 1, nu)).toBe(nu === 1 ? 0.5 : 1);
      });
      expect(Math.max(...taken)).toBe(1);
      expect(width).toBeLessThanOrEqual(2048);
    }),
    { numRuns: 30 },
  );
});

it('in a room that shines evenly every node receives just that (white furnace of the final gather)', () => {
  const even = gatherNodes(nodes, new Float32Array(transport.patches.count).fill(7), 1);
  expect(even.length).toBe(nodes.first[room.fine.length]!);
  let open = 0;
  room.fine.forEach((rect, r) => {
    // Between shelf top and underside lies 1 cm of nothing: the fronts of both see the whole room.
    if (rect.surface < 0) return;
    for (let i = nodes.first[r]!; i < nodes.first[r + 1]!; i++) open = Math.max(open, Math.abs(even[i]! / 7 - 1));
  });
  expect(open).toBeLessThan(0.02);
});

it('gathering 24 bands at once equals gathering them one by one', () => {
  const radiosity = Float32Array.from({ length: transport.patches.count * 24 }, (_, i) => (i * 37) % 11);
  const together = gatherNodes(nodes, radiosity, 24);
  const band5 = gatherNodes(
    nodes,
    Float32Array.from({ length: transport.patches.count }, (_, p) => radiosity[p * 24 + 5]!),
    1,
  );
  for (let i = 0; i < band5.length; i += 17) expect(together[i * 24 + 5]!).toBeCloseTo(band5[i]!, 3);
});

it('surface means keep the lumens of the lamp: area x direct over all surfaces and facings (1 %)', () => {
  const lights = surfaceLights(room, transport, nodes);
  const flux = lights.reduce((sum, { area_m2, direct }) => sum + area_m2 * direct[0]!, 0);
  expect(Math.abs(flux / LUMENS - 1)).toBeLessThan(0.01);
  expect(lights.map(({ surface, facing }) => `${surface} ${facing}`).sort()).toContain('6 down');
  for (const { gather } of lights) {
    expect(gather.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 2);
  }
});

it('strips do not speak for a surface: a rail close before a lamp leaves the doors over it their own light', () => {
  const door: Rect = { origin: [1, 2.7, 1.4], u: [1, 0, 0], v: [0, 0, 0.7], surface: 6 };
  // Beside the lamp, facing it: an eye would have to lie on the counter to see it.
  const rail: Rect = { origin: [2, 2.72, 1.37], u: [-1, 0, 0], v: [0, 0, 0.03], surface: 6 };
  const lamp = {
    group: 0,
    lumens: 600,
    rect: { origin: [1, 2.73, 1.4], u: [0, 0.02, 0], v: [1, 0, 0], surface: -1 },
  } as const;
  const surfaces = ['floor', 'ceiling', 'wall', 'wall', 'wall', 'wall', 'wall-fronts'];
  const lights = (rects: readonly Rect[]) => {
    const box = roomOf([...boxRects(3, 3, 2.5), ...rects], { lamps: [lamp] }, surfaces);
    const t = buildTransport(box, { patchSize: 1, raysPerPatch: 4 });
    const found = surfaceLights(box, t, buildNodes(box, t, { spacing: 1, rays: 8 }));
    return found.find(({ surface }) => surface === 6)!;
  };
  expect(lights([rail]).direct[0]!).toBeGreaterThan(500);
  expect(lights([door, rail]).direct[0]!).toBe(lights([door]).direct[0]!);
  expect(lights([door, rail]).area_m2).toBeCloseTo(0.7, 9);
});

it('the finished direct map agrees with light computed at its texels (2 %, or 1 % of the mean in the dark)', () => {
  const steps = directTexels(room, transport);
  let map = null;
  let lattice = 0;
  let refine = 0;
  for (;;) {
    const step = steps.next();
    if (step.done) {
      map = step.value;
      break;
    }
    if (step.value.stage === 'lattice') lattice++;
    else refine++;
  }
  expect(lattice).toBeGreaterThan(0);
  expect(refine).toBeGreaterThan(0);
  const { atlas, data } = map;
  const floorMean = surfaceLights(room, transport, nodes).find(({ facing }) => facing === 'up')!.direct;
  let off = 0;
  let count = 0;
  room.fine.forEach((rect, r) => {
    const [x, y, nu, nv] = atlas.blocks.subarray(4 * r, 4 * r + 4) as unknown as [number, number, number, number];
    const { axis, sign } = rectNormal(rect);
    const normal = [0, 0, 0];
    normal[axis] = sign;
    for (let j = 3; j < nv - 3; j += 11) {
      for (let i = 3; i < nu - 3; i += 7) {
        const point = rect.origin.map((o, k) => o + (rect.u[k]! * i) / (nu - 1) + (rect.v[k]! * j) / (nv - 1));
        const exact = directAt(room, transport, point as unknown as Vec3, normal as unknown as Vec3);
        for (let g = 0; g < 2; g++) {
          const drawn = data[CHANNELS * ((y + j) * atlas.width + x + i) + g]!;
          count++;
          if (Math.abs(drawn - exact[g]!) > 0.02 * exact[g]! + 0.01 * floorMean[g]!) off++;
        }
      }
    }
  });
  // A shadow edge may pass between two samples unseen: rare, and never on the lattice.
  expect(off / count).toBeLessThan(0.003);
});

it('exposure: what a view shows carries the direct light of its points and the bounce of standard reflectances', () => {
  const cubeRoom = roomOf(
    boxRects(3, 3, 3),
    { lamps: [ceilingLamp(1.5, 1.5, 3, 0.5, LUMENS)] },
    Array(6).fill('counter'),
  );
  const t = buildTransport(cubeRoom, { patchSize: 0.5 });
  const looking = (target: Vec3) => ({
    id: '',
    name: '',
    eye: [1.5, 1.5, 1.5] as Vec3,
    target,
    fov_deg: 60,
    overview: true,
  });
  const nodes = buildNodes(cubeRoom, t);
  const targets: readonly Vec3[] = [
    [1.5, 3, 1.5],
    [0, 1.5, 1.5],
    [1.5, 1.5, 0],
  ];
  const [seen] = referenceView(cubeRoom, t, nodes, referenceRadiosity(cubeRoom, t), targets.map(looking));
  const [below] = directAt(cubeRoom, t, [1.5, 1.5, 0], [0, 0, 1]);
  // Every surface 0.4: the mean indirect light over all of them is Phi rho / (S (1 - rho)); it varies little in a cube.
  const indirect = (LUMENS * 0.4) / (54 * 0.6);
  expect(Math.abs(Math.max(...seen!) / (below! + indirect) - 1)).toBeLessThan(0.3);
  expect(Math.min(...seen!)).toBeGreaterThan(0.7 * indirect);
});

it('props: a plate on the floor reads the light of the floor', () => {
  const plate: LightRoom = {
    ...room,
    props: [
      {
        surface: 0,
        name: 'plate',
        positions: Float32Array.of(0.5, 0.5, 0.01, 2.5, 2.4, 0.01),
        normals: Float32Array.of(0, 0, 1, 0, 0, 2),
        indices: Uint32Array.of(0, 1, 0),
      },
    ],
  };
  const direct = propDirect(plate, transport);
  const beside = directAt(room, transport, [0.5, 0.5, 0.01], [0, 0, 1]);
  expect(direct[0]!.slice(0, 2)).toEqual(Float32Array.from(beside));
  const rows = buildPropGather(plate, transport);
  const even = gatherNodes(rows, new Float32Array(transport.patches.count).fill(3), 1);
  expect(even[0]!).toBeCloseTo(3, 1);
  expect(even.length).toBe(2);
});

it('view shares of a closed room sum to 1, and the floor seen straight down is all of it', () => {
  const eye: Vec3 = [1.5, 0.4, 1.6];
  const view = { id: 'v', name: 'v', eye, target: [1.5, 3, 1.2] as Vec3, fov_deg: 60, overview: true };
  const shares = viewShares(room, transport, view, 96, 60);
  expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  const down = viewShares(
    room,
    transport,
    { ...view, eye: [2.5, 0.5, 0.5], target: [2.5, 0.5, 0], fov_deg: 30 },
    40,
    25,
  );
  expect(down).toEqual([{ surface: 0, facing: 'up', share: 1 }]);
});

it('solved light at nodes is continuous: the floor gets as much from the walls in either half', () => {
  const mirrored = roomOf(boxRects(3, 2, 2.5), { lamps: [ceilingLamp(1.5, 1, 2.5, 0.4, LUMENS)] });
  const t = buildTransport(mirrored);
  const n = buildNodes({ ...mirrored, fine: mirrored.coarse.map(withPattern) }, t);
  const b = solveGroup(t, Float32Array.from([0.3, 0.8, 0.6, 0.6, 0.6, 0.6]), t.direct[0]!, { bands: 1 });
  const light = gatherNodes(n, b, 1);
  const nu = n.atlas.blocks[2]!;
  const nv = n.atlas.blocks[3]!;
  for (let i = 0; i < nu; i++) {
    const row = (j: number): number => light[j * nu + i]!;
    expect(Math.abs(row(1) / row(nv - 2) - 1)).toBeLessThan(0.03);
  }
});
