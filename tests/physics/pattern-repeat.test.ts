import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { sampleBytes } from '../../src/engine/pattern/sample';
import type { PatternTexture } from '../../src/engine/pattern/types';
import type { Laying } from '../../src/model/project';
import { demoPattern } from './demo-patterns';

// What a floor looks like from the other end of a room: the pattern over 5 x 4 m in cells of 50 mm. If it repeated, it would be
// like itself moved by a period; the correlation there is held against what chance gives at other shifts.

const CELL_M = 0.05;
const [COLUMNS, ROWS] = [100, 80];

const JOINT = { joint_mm: 3, grout: 'GR-01' } as const;

it.each<[string, Laying]>([
  ['WD-01', { layout: 'planks' }],
  ['WD-04', { layout: 'planks' }],
  ['WD-09', { layout: 'planks' }],
  ['VP-01', { layout: 'planks' }],
  ['VP-01', { layout: 'herringbone' }],
  ['ST-01', { layout: 'stack', ...JOINT }],
  ['TL-07', { layout: 'stack', ...JOINT }],
  ['TL-08', { layout: 'running-bond', ...JOINT }],
])('shows no repeat of %s over a floor of 5 x 4 m, laid $layout', (id, laying) => {
  const texture = bakePattern(demoPattern(id, laying)!.spec);
  const seen = lightnessSeen(texture);
  // Shifts along s and t that fit into the room: a period of the texture, and nothing like one.
  const periods: [number, number][] = [];
  const [p, q] = [Math.round(texture.width_m / CELL_M), Math.round(texture.height_m / CELL_M)];
  for (let i = 0; i * p <= COLUMNS * 0.6; i++)
    for (let j = 0; j * q <= ROWS * 0.6; j++) if (i + j > 0) periods.push([i * p, j * q]);
  const elsewhere: number[] = [];
  for (let dx = 0; dx <= 0.6 * COLUMNS; dx += 3) {
    for (let dy = 0; dy <= 0.6 * ROWS; dy += 3) if (Math.hypot(dx, dy) > 14) elsewhere.push(likeness(seen, dx, dy));
  }
  const noise = Math.sqrt(elsewhere.reduce((sum, r) => sum + r * r, 0) / elsewhere.length);
  for (const [dx, dy] of periods) {
    expect(likeness(seen, dx, dy)).toBeLessThan(0.4);
    expect(likeness(seen, dx, dy)).toBeLessThan(4 * noise);
  }
});

it('finds the repeat of a sheet that does repeat', () => {
  const { spec } = demoPattern('WD-01', { layout: 'planks' })!;
  const { pieces, ...sheet } = bakePattern(spec);
  expect(pieces).toBeDefined();
  expect(likeness(lightnessSeen(sheet), 0, Math.round(sheet.height_m / CELL_M))).toBeGreaterThan(0.7);
});

/** Gain times the weights' mean lightness of cells, less the mean: components are taken as 0.9 and, for the rest, 0.6 of white. */
function lightnessSeen(texture: PatternTexture): Float64Array {
  const seen = new Float64Array(COLUMNS * ROWS);
  const bytes = new Float64Array(4);
  const step = 0.01;
  const n = Math.round(CELL_M / step);
  for (let y = 0; y < ROWS * n; y++) {
    for (let x = 0; x < COLUMNS * n; x++) {
      sampleBytes(texture, (x + 0.5) * step, (y + 0.5) * step, bytes);
      const others = (bytes[0]! + bytes[1]! + bytes[2]!) / 255;
      seen[Math.floor(y / n) * COLUMNS + Math.floor(x / n)]! += ((0.9 - 0.3 * others) * bytes[3]!) / 128 / (n * n);
    }
  }
  const mean = seen.reduce((a, b) => a + b, 0) / seen.length;
  return seen.map((v) => v - mean);
}

/** Correlation of the floor with itself moved by (dx, dy) cells. */
function likeness(seen: Float64Array, dx: number, dy: number): number {
  let [both, one, other] = [0, 0, 0];
  for (let y = 0; y + dy < ROWS; y++) {
    for (let x = 0; x + dx < COLUMNS; x++) {
      const a = seen[y * COLUMNS + x]!;
      const b = seen[(y + dy) * COLUMNS + x + dx]!;
      both += a * b;
      one += a * a;
      other += b * b;
    }
  }
  return both / Math.sqrt(one * other);
}
