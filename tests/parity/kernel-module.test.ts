import { execFileSync } from 'node:child_process';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { createWasmKernel } from '../../src/engine/light/kernel/wasm-kernel';
import { mulberry32 } from '../../src/engine/random';
import { cube, randomRows } from './kernel-rooms';

afterEach(() => vi.unstubAllGlobals());

const task = (rows = cube.bounce) => ({
  rows,
  surface: cube.patches.surface,
  bands: 24,
  reflectance: new Float32Array(6 * 24).fill(0.5),
  direct: cube.direct[0]!,
  scale: new Float64Array(24).fill(100),
  relaxation: 1.1,
  tolerance: 1e-5,
});

const sameBits = (a: Float32Array | Float64Array, b: Float32Array | Float64Array): boolean =>
  a.length === b.length && a.every((value, i) => Object.is(value, b[i]));

describe('the compiled kernel', () => {
  it('is what its source compiles to', () => {
    expect(() =>
      execFileSync(process.execPath, ['scripts/build-kernel.mjs', '--check'], { stdio: 'pipe' }),
    ).not.toThrow();
  });

  it('gives the same bits each time, in a memory that was used for other rooms, too', () => {
    const radiosity = (kernel = createWasmKernel()!) => {
      const b = new Float64Array(24 * cube.patches.count);
      kernel.relax(task(), b);
      return b;
    };
    const fresh = radiosity();
    const used = createWasmKernel()!;
    const rows = randomRows(40, 30, 50, 1, 5);
    used.gatherRows(rows, new Float32Array(30 * 81).fill(1e6), 81, new Float32Array(40 * 81));
    used.sumBands(
      [new Float32Array(240).fill(-3)],
      [{ first: 0, count: 10, colors: [new Float32Array(72).fill(9)] }],
      new Float32Array(30),
    );
    expect(sameBits(radiosity(used), fresh)).toBe(true);
    expect(sameBits(radiosity(used), fresh)).toBe(true);
  });

  it('does not grow without bound: 200 rooms, one after another, and an early one is right again', () => {
    const kernel = createWasmKernel()!;
    const { start, column, value, count } = randomRows(2000, 500, 150, 1, 9);
    const random = mulberry32(1);
    const radiosity = Float32Array.from({ length: 500 * 24 }, () => random());
    // Seven kinds: a place that holds another room by now gives other numbers.
    const kinds = Array.from({ length: 7 }, (_, kind) => value.map((one) => one / (1 + kind)));
    const rooms = Array.from({ length: 200 }, (_, i) => ({ count, start, column, value: kinds[i % 7]! }));
    const of = (room: (typeof rooms)[number]) => {
      const out = new Float32Array(count * 24);
      kernel.gatherRows(room, radiosity, 24, out);
      return out;
    };
    const first = of(rooms[0]!);
    for (const room of rooms) of(room);
    expect(sameBits(of(rooms[0]!), first)).toBe(true);
    // Together the rows take 240 MB; kept are 64 MB at most, and above them the numbers of one call.
    expect(rooms.length * column.length * 8).toBeGreaterThan(200e6);
    expect(kernel.bytes).toBeLessThan(66 * 2 ** 20);
  });

  it('rows are copied once, as long as they are used', () => {
    const kernel = createWasmKernel()!;
    const solve = () => kernel.relax(task(), new Float64Array(24 * cube.patches.count));
    solve();
    const bytes = kernel.bytes;
    for (let i = 0; i < 50; i++) solve();
    expect(kernel.bytes).toBe(bytes);
  });

  it('stands aside where WebAssembly is missing, has no SIMD, or is forbidden by the page', () => {
    vi.stubGlobal('WebAssembly', undefined);
    expect(createWasmKernel()).toBeNull();
    vi.stubGlobal('WebAssembly', {
      Module: class {
        constructor() {
          throw new EvalError('refused');
        }
      },
    });
    expect(createWasmKernel()).toBeNull();
  });
});
