import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type SolvableTransport, solveGroup } from '../../src/engine/light/solve';
import { buildTransport, type Transport } from '../../src/engine/light/transport';
import type { LightRoom, Rect, Vec3 } from '../../src/engine/light/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';
import { checkRoom } from './light-check-room';

const LUMENS = 10_000;
const cube = buildTransport(roomOf(boxRects(4, 4, 4), { lamps: [ceilingLamp(1.5, 2.2, 4, 0.6, LUMENS)] }), {
  patchSize: 0.5,
});

const uniform = (value: number, surfaces = 6): Float32Array => new Float32Array(surfaces).fill(value);

/** Area mean of rho-independent irradiance: direct + F B. */
function irradiance(t: Transport, radiosity: Float32Array, bands: number, k: number): Float64Array {
  const { factors, direct } = t;
  return Float64Array.from({ length: factors.count }, (_, i) => {
    let sum = direct[0]![i]!;
    for (let e = factors.start[i]!; e < factors.start[i + 1]!; e++) {
      sum += factors.value[e]! * radiosity[factors.column[e]! * bands + k]!;
    }
    return sum;
  });
}

const areaMean = (t: Transport, values: ArrayLike<number>): number => {
  let sum = 0;
  let area = 0;
  for (let i = 0; i < t.patches.count; i++) {
    sum += values[i]! * t.patches.area[i]!;
    area += t.patches.area[i]!;
  }
  return sum / area;
};

it('white furnace: every surface emits 1 and reflects 0.9, so every patch has radiosity 10 (1e-5)', () => {
  const emitted = new Float32Array(cube.patches.count).fill(1 / 0.9);
  for (const b of solveGroup(cube, uniform(0.9), emitted, { bands: 1, tolerance: 1e-6 })) {
    expect(Math.abs(b / 10 - 1)).toBeLessThan(1e-5);
  }
});

it('white furnace in a furnished room with openings that emit and reflect like the rest (1e-5)', () => {
  const t = buildTransport(checkRoom().room, { raysPerPatch: 64 });
  const n = t.patches.count;
  const all = { bounce: t.factors, patches: { ...t.patches, surface: new Int32Array(n) } };
  for (const b of solveGroup(all, uniform(0.9, 1), new Float32Array(n).fill(1 / 0.9), { bands: 1, tolerance: 1e-6 })) {
    expect(Math.abs(b / 10 - 1)).toBeLessThan(1e-5);
  }
});

it('energy: absorbed light is what the lamp sends, in every band (0.1 %)', () => {
  const reflectance = Float32Array.from({ length: 6 * 3 }, (_, i) => 0.1 + 0.045 * i);
  const b = solveGroup(cube, reflectance, cube.direct[0]!, { bands: 3 });
  for (let k = 0; k < 3; k++) {
    const e = irradiance(cube, b, 3, k);
    let absorbed = 0;
    for (let i = 0; i < cube.patches.count; i++) {
      absorbed += cube.patches.area[i]! * (1 - reflectance[cube.patches.surface[i]! * 3 + k]!) * e[i]!;
    }
    expect(Math.abs(absorbed / LUMENS - 1)).toBeLessThan(1e-3);
  }
});

it('CIE 171 case 5.8: mean indirect illuminance of a closed cube is Phi rho / (S (1 - rho)), in every band (0.05 %)', () => {
  // Rounded to 0.01 lx: half of that in the last place comes on top.
  const published = [5.48, 11.57, 26.04, 44.64, 69.44, 104.17, 156.25, 243.06, 416.67, 937.5, 1979.17];
  const rho = [0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95];
  const bands = rho.length;
  const reflectance = Float32Array.from({ length: 6 * bands }, (_, i) => rho[i % bands]!);
  const b = solveGroup(cube, reflectance, cube.direct[0]!, { bands });
  expect(areaMean(cube, cube.direct[0]!)).toBeCloseTo(LUMENS / 96, 2);
  published.forEach((mean, k) => {
    const indirect = areaMean(cube, irradiance(cube, b, bands, k)) - LUMENS / 96;
    expect(Math.abs(indirect - mean)).toBeLessThan(5e-4 * mean + 0.005);
    expect(Math.abs(indirect / ((LUMENS * rho[k]!) / (96 * (1 - rho[k]!))) - 1)).toBeLessThan(5e-4);
  });
});

it('uniform reflectance in a furnished room, any lamps: the mean is Phi / (S (1 - rho)), whatever the places get (0.1 %)', () => {
  const { room } = checkRoom();
  const t = buildTransport(room, { raysPerPatch: 64 });
  const white = { ...t, bounce: t.factors, patches: { ...t.patches, surface: new Int32Array(t.patches.count) } };
  const rho = [0.2, 0.5, 0.8];
  const b = solveGroup(white, Float32Array.from(rho), t.direct[0]!, { bands: 3 });
  const flux = room.lamps.reduce((sum, { lumens }) => sum + lumens, 0);
  const area = t.patches.area.reduce((sum, a) => sum + a, 0);
  rho.forEach((r, k) => {
    const e = irradiance(t, b, 3, k);
    expect(Math.abs((areaMean(t, e) * area * (1 - r)) / flux - 1)).toBeLessThan(1e-3);
    expect(Math.max(...e) / Math.min(...e)).toBeGreaterThan(1.5);
  });
});

it('energy in a furnished room: what every surface, opening and lamp face absorbs is what the lamps send (0.1 %)', () => {
  const { room, reflectance } = checkRoom();
  const t = buildTransport(room, { raysPerPatch: 64 });
  const b = solveGroup(t, reflectance, t.direct[0]!, { bands: 3 });
  const flux = room.lamps.reduce((sum, { lumens }) => sum + lumens, 0);
  for (let k = 0; k < 3; k++) {
    const e = irradiance(t, b, 3, k);
    let absorbed = 0;
    for (let i = 0; i < t.patches.count; i++) {
      const s = t.patches.surface[i]!;
      absorbed += t.patches.area[i]! * (s < 0 ? 1 : 1 - reflectance[3 * s + k]!) * e[i]!;
    }
    expect(Math.abs(absorbed / flux - 1)).toBeLessThan(1e-3);
  }
});

it('lamps add up and scale; a black room has no indirect light (1e-5)', () => {
  const rho = Float32Array.from([0.2, 0.8, 0.5, 0.6, 0.3, 0.7]);
  const a = cube.direct[0]!;
  const other = Float32Array.from(a, (_, i) => (i % 7) + 1);
  const solve = (d: Float32Array): Float32Array => solveGroup(cube, rho, d, { bands: 1, tolerance: 1e-7 });
  const sum = solve(Float32Array.from(a, (x, i) => 3 * x + other[i]!));
  const first = solve(a);
  const second = solve(other);
  for (let i = 0; i < sum.length; i++) {
    expect(Math.abs((3 * first[i]! + second[i]!) / sum[i]! - 1)).toBeLessThan(1e-5);
  }
  for (const b of solveGroup(cube, uniform(0), a, { bands: 1 })) expect(b).toBe(0);
});

it('sphere matrix F_ij = A_j / A: indirect light is uniform and exact (1e-6)', () => {
  const value = fc.double({ min: 0.05, max: 0.9, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(value, value, value), { minLength: 2, maxLength: 12 }), (parts) => {
      const n = parts.length;
      const area = Float64Array.from(parts, ([a]) => a);
      const rho = Float32Array.from(parts, ([, r]) => r);
      const direct = Float32Array.from(parts, ([, , e]) => 100 * e);
      const total = area.reduce((sum, a) => sum + a, 0);
      const t = sphere(area, total, n);
      const b = solveGroup(t, rho, direct, { bands: 1, tolerance: 1e-8, warmStart: new Float32Array(n) });
      const reflected = area.reduce((sum, a, i) => sum + a * rho[i]! * direct[i]!, 0) / total;
      const indirect = reflected / (1 - area.reduce((sum, a, i) => sum + a * rho[i]!, 0) / total);
      for (let i = 0; i < n; i++) expect(Math.abs(b[i]! / (rho[i]! * (direct[i]! + indirect)) - 1)).toBeLessThan(1e-6);
    }),
  );
});

function sphere(area: Float64Array, total: number, n: number): SolvableTransport {
  const all = Float32Array.from({ length: n * n }, (_, e) => area[e % n]! / total);
  return {
    patches: { ...cube.patches, count: n, area, surface: Int32Array.from({ length: n }, (_, i) => i) },
    bounce: {
      count: n,
      start: Uint32Array.from({ length: n + 1 }, (_, i) => i * n),
      column: Uint32Array.from({ length: n * n }, (_, e) => e % n),
      value: all,
    },
  };
}

/** Area means of irradiance over each coarse rectangle. */
function rectMeans(room: LightRoom, rho: Float32Array): number[] {
  const t = buildTransport(room, { raysPerPatch: 256 });
  const e = irradiance(t, solveGroup(t, rho, t.direct[0]!, { bands: 1 }), 1, 0);
  const sums = room.coarse.map(() => [0, 0]);
  e.forEach((lx, i) => {
    const sum = sums[t.patches.rect[i]!]!;
    sum[0]! += lx * t.patches.area[i]!;
    sum[1]! += t.patches.area[i]!;
  });
  return sums.map(([light, area]) => light! / area!);
}

/** The same room with every point moved; `flip` where that turns fronts to the back. */
function moved(room: LightRoom, move: (v: Vec3) => Vec3, flip: boolean): LightRoom {
  const of = <T extends Rect>(rect: T): T => {
    const [u, v] = [move(rect.u), move(rect.v)];
    return { ...rect, origin: move(rect.origin), u: flip ? v : u, v: flip ? u : v };
  };
  return {
    ...room,
    coarse: room.coarse.map(of),
    fine: room.fine.map(of),
    lamps: room.lamps.map((lamp) => ({ ...lamp, rect: of(lamp.rect) })),
  };
}

it.each([
  ['turned by 90 degrees', ([x, y, z]: Vec3): Vec3 => [-y, x, z], false],
  ['turned upside down', ([x, y, z]: Vec3): Vec3 => [x, -y, -z], false],
  ['mirrored', ([x, y, z]: Vec3): Vec3 => [-x, y, z], true],
] as const)('a furnished room %s keeps its light (within ray noise, 0.6 %)', (_, move, flip) => {
  const { room, reflectance } = checkRoom();
  const rho = Float32Array.from({ length: reflectance.length / 3 }, (_value, s) => reflectance[3 * s]!);
  const before = rectMeans(room, rho);
  rectMeans(moved(room, move, flip), rho).forEach((mean, r) => {
    const { u, v, surface } = room.coarse[r]!;
    // Small ones and the lit gap over the wall cabinets catch few rays.
    if (surface >= 0 && Math.hypot(...u) * Math.hypot(...v) > 1.2)
      expect(Math.abs(mean / before[r]! - 1)).toBeLessThan(6e-3);
  });
});

it('a warm start ends where a cold start does', () => {
  const rho = Float32Array.from([0.2, 0.8, 0.5, 0.6, 0.3, 0.7]);
  const cold = solveGroup(cube, rho, cube.direct[0]!, { bands: 1, tolerance: 1e-6 });
  const wrong = Float32Array.from(cold, (b) => 2 * b + 5);
  const warm = solveGroup(cube, rho, cube.direct[0]!, { bands: 1, tolerance: 1e-6, warmStart: wrong });
  for (let i = 0; i < cold.length; i++) expect(Math.abs(warm[i]! / cold[i]! - 1)).toBeLessThan(1e-5);
});
