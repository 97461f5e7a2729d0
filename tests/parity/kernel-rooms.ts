import fc from 'fast-check';
import type { SolvableTransport } from '../../src/engine/light/solve';
import { buildTransport } from '../../src/engine/light/transport';
import type { SparseRows } from '../../src/engine/light/types';
import { mulberry32 } from '../../src/engine/random';
import { boxRects, ceilingLamp, roomOf } from '../physics/box-room';

// Rooms for comparing the kernels.

export const LUMENS = 10_000;

/** A 4 m cube with a lamp of 0.36 m2 in its ceiling, as in CIE 171:2006 case 5.8. */
export const cube = buildTransport(roomOf(boxRects(4, 4, 4), { lamps: [ceilingLamp(1.5, 2.2, 4, 0.6, LUMENS)] }), {
  patchSize: 0.5,
});

/** What fraction of itself a value is off, at worst, or of the mean of its band where that is more. */
export function worstDifference(a: ArrayLike<number>, b: ArrayLike<number>, bands: number): number {
  const mean = new Float64Array(bands);
  for (let i = 0; i < a.length; i++) mean[i % bands]! += (Math.abs(a[i]!) * bands) / a.length;
  let worst = 0;
  for (let i = 0; i < a.length; i++) {
    const of = Math.max(Math.abs(a[i]!), mean[i % bands]!);
    if (!(Math.abs(a[i]! - b[i]!) <= worst * of)) worst = Math.abs(a[i]! - b[i]!) / of;
  }
  return worst;
}

/** Rows of a random sparse matrix, each summing to at most `sum`; some empty. */
export function randomRows(count: number, columns: number, longest: number, sum: number, seed: number): SparseRows {
  const random = mulberry32(seed);
  const start = [0];
  const column: number[] = [];
  const value: number[] = [];
  for (let i = 0; i < count; i++) {
    const length = Math.floor(random() * (longest + 1));
    for (let e = 0; e < length; e++) {
      column.push(Math.floor(random() * columns));
      value.push((random() * sum) / length);
    }
    start.push(column.length);
  }
  return { count, start: Uint32Array.from(start), column: Uint32Array.from(column), value: Float32Array.from(value) };
}

export interface RandomRoom {
  readonly transport: SolvableTransport;
  readonly reflectance: Float32Array;
  readonly direct: Float32Array;
  readonly bands: number;
}

/** Rooms nobody would build: any exchange of light, black patches among the rest, one to 40 bands, reflectances to 0.93. */
export const randomRoom: fc.Arbitrary<RandomRoom> = fc
  .record({
    count: fc.integer({ min: 1, max: 60 }),
    bands: fc.constantFrom(1, 3, 4, 8, 24, 28, 40),
    perBand: fc.boolean(),
    whitest: fc.double({ min: 0.1, max: 0.93, noNaN: true }),
    brightness: fc.constantFrom(1e-3, 1, 1e5),
    seed: fc.nat(),
  })
  .map(({ count, bands, perBand, whitest, brightness, seed }) => {
    const random = mulberry32(seed);
    const surfaces = 5;
    const surface = Int32Array.from({ length: count }, () => Math.floor(random() * (surfaces + 1)) - 1);
    return {
      transport: {
        patches: { ...cube.patches, count, area: Float64Array.from({ length: count }, () => 0.1 + random()), surface },
        bounce: randomRows(count, count, 80, 1, seed + 1),
      },
      reflectance: Float32Array.from({ length: surfaces * bands }, () => random() * whitest),
      direct: Float32Array.from({ length: perBand ? count * bands : count }, () => random() ** 4 * brightness),
      bands,
    };
  });
