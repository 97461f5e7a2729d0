import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withKernel } from '../../src/engine/light/kernel/kernel';
import { gatherNodes } from '../../src/engine/light/nodes';
import { type SolvableTransport, solveGroup } from '../../src/engine/light/solve';
import { cube, LUMENS } from './kernel-rooms';

// What holds of light in any room, on each kernel. tests/physics/identities.test.ts says more of it, on the machine's own.

const { count, area } = cube.patches;
const uniform = (value: number, bands: number): Float32Array => new Float32Array(6 * bands).fill(value);

/** Area mean of what the patches receive from each other, in one band. */
function meanIndirect(radiosity: Float32Array, bands: number, k: number): number {
  const received = gatherNodes({ rows: cube.factors }, radiosity, bands);
  let sum = 0;
  let whole = 0;
  for (let i = 0; i < count; i++) {
    sum += area[i]! * received[i * bands + k]!;
    whole += area[i]!;
  }
  return sum / whole;
}

describe.each(['typescript', 'wasm'] as const)('on the kernel in %s', (kernel) => {
  const on = (name: string, work: () => void) => it(name, () => withKernel(kernel, work));

  on(
    'white furnace: every surface emits 1 and reflects 0.9, so every patch has radiosity 10 in all bands (1e-5)',
    () => {
      for (const bands of [1, 24]) {
        const emitted = new Float32Array(count).fill(1 / 0.9);
        for (const b of solveGroup(cube, uniform(0.9, bands), emitted, { bands, tolerance: 1e-6 })) {
          expect(Math.abs(b / 10 - 1)).toBeLessThan(1e-5);
        }
      }
    },
  );

  on('energy: absorbed light is what the lamp sends, in every band (0.1 %)', () => {
    const reflectance = Float32Array.from({ length: 6 * 24 }, (_, i) => 0.05 + (0.9 * ((i * 7) % 144)) / 144);
    const b = solveGroup(cube, reflectance, cube.direct[0]!);
    const received = gatherNodes({ rows: cube.factors }, b, 24);
    for (let k = 0; k < 24; k++) {
      let absorbed = 0;
      for (let i = 0; i < count; i++) {
        const rho = reflectance[cube.patches.surface[i]! * 24 + k]!;
        absorbed += area[i]! * (1 - rho) * (cube.direct[0]![i]! + received[i * 24 + k]!);
      }
      // Form factors from rays: rows sum to 1 exactly, columns to within this.
      expect(Math.abs(absorbed / LUMENS - 1)).toBeLessThan(1e-3);
    }
  });

  // CIE 171:2006, case 5.8, closed form Phi rho / (S (1 - rho)).
  on('mean indirect illuminance of a closed cube (0.1 %), all reflectances as bands of one solution', () => {
    const rho = [0.05, 0.2, 0.5, 0.8, 0.95];
    const reflectance = Float32Array.from({ length: 6 * rho.length }, (_, i) => rho[i % rho.length]!);
    const b = solveGroup(cube, reflectance, cube.direct[0]!, { bands: rho.length });
    rho.forEach((one, k) => {
      const exact = (LUMENS * one) / (96 * (1 - one));
      expect(Math.abs(meanIndirect(b, rho.length, k) / exact - 1)).toBeLessThan(1e-3);
    });
  });

  on('sphere matrix F_ij = A_j / A: indirect light is uniform and exact (1e-5)', () => {
    const value = fc.double({ min: 0.05, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(value, value, value), { minLength: 2, maxLength: 12 }), (parts) => {
        const areas = parts.map(([a]) => a);
        const rho = Float32Array.from(parts, ([, r]) => r);
        const direct = Float32Array.from(parts, ([, , e]) => 100 * e);
        const total = areas.reduce((sum, a) => sum + a, 0);
        const b = solveGroup(sphere(areas), rho, direct, { bands: 1, tolerance: 1e-6 });
        const reflected = areas.reduce((sum, a, i) => sum + a * rho[i]! * direct[i]!, 0) / total;
        const indirect = reflected / (1 - areas.reduce((sum, a, i) => sum + a * rho[i]!, 0) / total);
        parts.forEach((_, i) => {
          expect(Math.abs(b[i]! / (rho[i]! * (direct[i]! + indirect)) - 1)).toBeLessThan(1e-5);
        });
      }),
    );
  });

  on('lamps add up and scale; a black room has no indirect light (1e-5)', () => {
    const rho = Float32Array.from({ length: 6 * 24 }, (_, i) => 0.1 + (0.75 * ((i * 5) % 17)) / 17);
    const a = cube.direct[0]!;
    const other = Float32Array.from(a, (_, i) => (i % 7) + 1);
    const solve = (direct: Float32Array) => solveGroup(cube, rho, direct, { tolerance: 1e-6 });
    const sum = solve(Float32Array.from(a, (x, i) => 3 * x + other[i]!));
    const first = solve(a);
    const second = solve(other);
    for (let i = 0; i < sum.length; i++) {
      expect(Math.abs((3 * first[i]! + second[i]!) / sum[i]! - 1)).toBeLessThan(1e-5);
    }
    for (const b of solveGroup(cube, uniform(0, 24), a)) expect(b).toBe(0);
  });

  on('a warm start ends where a cold start does (1e-5)', () => {
    const rho = uniform(0.6, 24);
    const cold = solveGroup(cube, rho, cube.direct[0]!, { tolerance: 1e-6 });
    const wrong = cold.map((b) => 2 * b + 5);
    const warm = solveGroup(cube, rho, cube.direct[0]!, { tolerance: 1e-6, warmStart: wrong });
    for (let i = 0; i < cold.length; i++) expect(Math.abs(warm[i]! / cold[i]! - 1)).toBeLessThan(1e-5);
  });

  on('a room that shines evenly is received evenly', () => {
    const even = gatherNodes({ rows: cube.factors }, new Float32Array(24 * count).fill(7), 24);
    // Rows sum to 1 but for what rays lose at corners.
    for (const lx of even) expect(Math.abs(lx / 7 - 1)).toBeLessThan(1e-3);
  });
});

function sphere(areas: readonly number[]): SolvableTransport {
  const n = areas.length;
  const total = areas.reduce((sum, a) => sum + a, 0);
  return {
    patches: {
      ...cube.patches,
      count: n,
      area: Float64Array.from(areas),
      surface: Int32Array.from({ length: n }, (_, i) => i),
    },
    bounce: {
      count: n,
      start: Uint32Array.from({ length: n + 1 }, (_, i) => i * n),
      column: Uint32Array.from({ length: n * n }, (_, e) => e % n),
      value: Float32Array.from({ length: n * n }, (_, e) => areas[e % n]! / total),
    },
  };
}
