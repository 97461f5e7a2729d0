import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lightKernel, withKernel } from '../../src/engine/light/kernel/kernel';
import type { LightKernel } from '../../src/engine/light/kernel/types';
import { typescriptKernel } from '../../src/engine/light/kernel/typescript-kernel';
import { createWasmKernel } from '../../src/engine/light/kernel/wasm-kernel';
import { gatherNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import { mulberry32 } from '../../src/engine/random';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { cube, randomRoom, randomRows, worstDifference } from './kernel-rooms';

/** What the kernels are held to: float32 with short runs of sums against float64. */
const SAME = 1e-5;

const { light } = buildRoom(JSON.parse(readFileSync('scenes/l-island.json', 'utf8')) as Kitchen);
const kitchen = buildTransport(light, { raysPerPatch: 64 });
const random = mulberry32(3);
const reflectance = Float32Array.from({ length: 24 * light.surfaces.length }, () => 0.03 + 0.87 * random());

const both = <T>(work: () => T): [T, T] => [withKernel('typescript', work), withKernel('wasm', work)];

describe('the kernel in WebAssembly and the one in TypeScript', () => {
  it('the machine chooses WebAssembly where it can', () => {
    expect(lightKernel().name).toBe('wasm');
    expect(both(() => lightKernel().name)).toEqual(['typescript', 'wasm']);
  });

  it('solve the L kitchen alike, patch by patch and band by band (1e-5 of the value itself)', () => {
    for (const direct of kitchen.direct) {
      const [exact, fast] = both(() => solveGroup(kitchen, reflectance, direct, { tolerance: 1e-6 }));
      let worst = 0;
      for (let i = 0; i < exact.length; i++) {
        if (exact[i]! > 0) worst = Math.max(worst, Math.abs(fast[i]! / exact[i]! - 1));
        else expect(fast[i]).toBe(exact[i]);
      }
      expect(worst).toBeLessThan(SAME);
    }
  });

  it('solve any room alike, in any number of bands, cold or warm', () => {
    fc.assert(
      fc.property(randomRoom, fc.boolean(), ({ transport, reflectance, direct, bands }, warm) => {
        // From a room half as bright to half as bright again: what is left to change is told from where it starts.
        const other = warm && withKernel('typescript', () => solveGroup(transport, reflectance, direct, { bands }));
        const warmStart = other ? other.map((b, i) => b * (0.5 + ((i * 7) % 11) / 10)) : undefined;
        const options = { bands, tolerance: 1e-6, ...(warmStart && { warmStart }) };
        const [exact, fast] = both(() => solveGroup(transport, reflectance, direct, options));
        expect(worstDifference(exact, fast, bands)).toBeLessThan(SAME);
      }),
      { numRuns: 300 },
    );
  });

  it('wait for the slowest band, whichever it is', () => {
    // In each lane of a vector, from first to last.
    for (const slow of [0, 5, 10, 15, 23]) {
      const reflectance = Float32Array.from({ length: 6 * 24 }, (_, i) => (i % 24 === slow ? 0.9 : 0.01));
      const [exact, fast] = both(() => solveGroup(cube, reflectance, cube.direct[0]!));
      expect(worstDifference(exact, fast, 24)).toBeLessThan(SAME);
    }
  });

  it('are not held up or cut short by bands without light, or with hardly any', () => {
    const reflectance = Float32Array.from({ length: 6 * 24 }, (_, i) => 0.3 + 0.02 * (i % 24));
    const lit = (band: number) => (band % 5 === 0 ? 0 : band % 5 === 1 ? 1e-41 : 1);
    const direct = Float32Array.from({ length: 24 * cube.patches.count }, (_, i) => (1 + (i % 7)) * lit(i % 24));
    const [exact, fast] = both(() => solveGroup(cube, reflectance, direct));
    fast.forEach((b, i) => {
      // Denormal numbers have few digits: there it is enough that they stay what they are, dark.
      if (lit(i % 24) === 1) expect(Math.abs(b / exact[i]! - 1)).toBeLessThan(SAME);
      else expect(b).toBeLessThan(1e-38);
    });
    const task = { rows: cube.bounce, surface: cube.patches.surface, bands: 24, reflectance, direct: direct.fill(0) };
    const zero = { ...task, scale: new Float64Array(24), relaxation: 1.1, tolerance: 1e-5 };
    expect(both(() => lightKernel().relax(zero, new Float64Array(direct.length)))).toEqual([1, 1]);
  });

  it('settle alike: in a white room float32 needs hardly more sweeps, for what is rounding is not change', () => {
    const direct = kitchen.direct.find((lx) => lx.some((one) => one > 0))!;
    const task = {
      rows: kitchen.bounce,
      surface: kitchen.patches.surface,
      bands: 24,
      reflectance: reflectance.map((_, i) => 0.8 - 0.001 * (i % 17)),
      direct,
      scale: new Float64Array(24).fill(direct.reduce((sum, lx) => sum + lx / direct.length, 0)),
      relaxation: 1.1,
      tolerance: 1e-6,
    };
    const start = () => new Float64Array(24 * kitchen.patches.count);
    const [exact, fast] = both(() => lightKernel().relax(task, start()));
    // A fifth: rounding blurs where the tail ends. It takes half as much again where rounding counts as change.
    expect(fast).toBeLessThanOrEqual(1.2 * exact);
  });

  it('gather any rows alike', () => {
    const shape = fc.record({
      count: fc.integer({ min: 1, max: 50 }),
      columns: fc.integer({ min: 1, max: 70 }),
      longest: fc.integer({ min: 0, max: 200 }),
      bands: fc.constantFrom(1, 3, 8, 24, 81),
      seed: fc.nat(),
    });
    fc.assert(
      fc.property(shape, ({ count, columns, longest, bands, seed }) => {
        const rows = randomRows(count, columns, longest, 1, seed);
        const random = mulberry32(seed + 1);
        const radiosity = Float32Array.from({ length: columns * bands }, () => random() * 1000);
        const [exact, fast] = both(() => gatherNodes({ rows }, radiosity, bands));
        expect(fast.length).toBe(count * bands);
        // All terms are positive: each sum is right to float32 itself.
        for (let i = 0; i < exact.length; i++)
          expect(Math.abs(fast[i]! - exact[i]!)).toBeLessThanOrEqual(1e-6 * exact[i]!);
      }),
      { numRuns: 200 },
    );
  });

  it('add bands to colors alike, whichever groups are on', () => {
    const shape = fc.record({
      counts: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 12 }),
      groups: fc.array(fc.constantFrom('on', 'off', 'not lit'), { minLength: 1, maxLength: 8 }),
      seed: fc.nat(),
    });
    fc.assert(
      fc.property(shape, ({ counts, groups, seed }) => {
        const random = mulberry32(seed);
        const numbers = (length: number, from: number) => Float32Array.from({ length }, () => from + random());
        const samples = Math.max(1, ...counts) + 3;
        const light = groups.map((state) => (state === 'not lit' ? null : numbers(samples * 24, 0)));
        const sums = counts.map((count, i) => ({
          first: i % 4,
          count,
          colors: groups.map((state) => (state === 'off' ? null : numbers(72, -0.5))),
        }));
        const total = 3 * counts.reduce((sum, count) => sum + count, 0);
        const colors = (kernel: LightKernel) => {
          const out = new Float32Array(total);
          kernel.sumBands(light, sums, out);
          return out;
        };
        const exact = colors(typescriptKernel);
        // A kernel of its own: nothing lies in its memory but this light.
        const fast = colors(createWasmKernel()!);
        // Terms have both signs, up to 0.5 each and 192 of them: rounding is told from their size, not from the sum's.
        for (let i = 0; i < total; i++) expect(Math.abs(fast[i]! - exact[i]!)).toBeLessThan(1e-5);
      }),
      { numRuns: 200 },
    );
  });
});
