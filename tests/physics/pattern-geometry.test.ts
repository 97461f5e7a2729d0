import { differenceCiede2000 } from 'culori';
import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { jointShare } from '../../src/engine/pattern/joint-share';
import { pieceField } from '../../src/engine/pattern/piece-field';
import { layPieces } from '../../src/engine/pattern/pieces';
import { samplePattern } from '../../src/engine/pattern/sample';
import type {
  FinishPattern,
  Layout,
  PatternSpec,
  PatternTexture,
  Turn,
  Variation,
} from '../../src/engine/pattern/types';
import { GAIN_PER_DE00, gainSigma, VARIATION_SIGMA_DE00 } from '../../src/engine/pattern/variation';
import { mulberry32 } from '../../src/engine/random';
import { FINISHES, specOf } from './pattern-specs';

// What is laid in pieces does not repeat: there each edge of the texture is a piece's own edge.
it.each(FINISHES.filter((f) => f.layout === 'plain').map((f) => f.name))('repeats %s without a seam', (name) => {
  const texture = bakePattern(specOf(FINISHES.find((f) => f.name === name)!), { maxSize: 512 });
  // The step over the edge is no larger than the steps between neighbours inside: mean against mean, with room for chance.
  const { width, height } = texture;
  let inside = 0;
  for (let x = 1; x < width; x++) inside = Math.max(inside, columnStep(texture, x - 1, x));
  expect(columnStep(texture, width - 1, 0)).toBeLessThanOrEqual(1.05 * inside + 0.5);
  inside = 0;
  for (let y = 1; y < height; y++) inside = Math.max(inside, rowStep(texture, y - 1, y));
  expect(rowStep(texture, height - 1, 0)).toBeLessThanOrEqual(1.05 * inside + 0.5);
});

it('bakes the same bytes for the same spec, and others for another seed', () => {
  for (const finish of FINISHES) {
    const first = bakePattern(specOf(finish, 5), { maxSize: 128 }).data;
    expect(Buffer.compare(bakePattern(specOf(finish, 5), { maxSize: 128 }).data, first)).toBe(0);
    expect(Buffer.compare(bakePattern(specOf(finish, 6), { maxSize: 128 }).data, first)).not.toBe(0);
  }
});

it.each([
  [200, 100, 2],
  [400, 400, 3],
  [65, 65, 1.6],
])('draws joints of %d x %d mm tiles at their real width of %d mm', (length, width, joint_mm) => {
  const piece_mm = [length, width] as const;
  const share = jointShare(piece_mm, joint_mm);
  const texture = bakePattern({
    pattern: { kind: 'plain' },
    layout: 'stack',
    piece_mm,
    joint_mm,
    variation: 'V0',
    shares: [1 - share, share],
    seed: 1,
  });
  // Along a line through the middle of a row of tiles: the joint's weight times the texel, per tile.
  const texel_mm = (1000 * texture.width_m) / texture.width;
  const y = Math.floor(((0.5 * (width + joint_mm)) / (1000 * texture.height_m)) * texture.height);
  let joint = 0;
  for (let x = 0; x < texture.width; x++) joint += texture.data[(y * texture.width + x) * 4]! / 255;
  const tiles = Math.round((1000 * texture.width_m) / (length + joint_mm));
  expect((1000 * texture.width_m) / tiles).toBeCloseTo(length + joint_mm, 6);
  expect(Math.abs((joint * texel_mm) / tiles - joint_mm)).toBeLessThan(0.05);
});

const LAID = (
  layout: Layout,
  piece_mm: readonly [number, number],
  joint_mm: number,
  turn_deg?: Turn,
): PatternTexture => {
  const share = jointShare(piece_mm, joint_mm, layout);
  const shares = [1 - share, share];
  return bakePattern({
    pattern: { kind: 'plain' },
    layout,
    piece_mm,
    joint_mm,
    variation: 'V0',
    shares,
    seed: 1,
    turn_deg,
  });
};

/** Weight of the joint at a place, mm. */
const jointAt = (texture: PatternTexture, s_mm: number, t_mm: number): number =>
  samplePattern(texture, s_mm / 1000, t_mm / 1000).weights[1];

it('shifts every second row of a running bond by half a module, and each of a third offset by a third', () => {
  const half = LAID('running-bond', [200, 100], 2);
  const third = LAID('third-offset', [200, 100], 2);
  const shifts = [half, third].map((texture) => [0, 1, 2, 3].map((row) => endJoint(texture, 51 + 102 * row)));
  [0, 101, 0, 101].forEach((shift, row) => {
    expect(Math.abs(shifts[0]![row]! - shift)).toBeLessThan(1);
  });
  [0, 202 / 3, 404 / 3, 0].forEach((shift, row) => {
    expect(Math.abs(shifts[1]![row]! - shift)).toBeLessThan(1);
  });
});

/** Where the end joint of a row stands along s, mm from 0 to a module: the middle of its weight. */
function endJoint(texture: PatternTexture, t_mm: number): number {
  let [x, y] = [0, 0];
  for (let s = 0; s < 202; s += 0.25) {
    const weight = jointAt(texture, s + 0.125, t_mm);
    x += weight * Math.cos((2 * Math.PI * s) / 202);
    y += weight * Math.sin((2 * Math.PI * s) / 202);
  }
  const at = (202 * Math.atan2(y, x)) / (2 * Math.PI);
  return at < -1 ? at + 202 : at;
}

it('stands an upright stack on end, and turns rows by 45 degrees', () => {
  const upright = LAID('stack', [200, 100], 2, 90);
  // Along t the joints lie a tile's length apart, along s its width.
  expect(jointAt(upright, 51, 101)).toBe(0);
  expect(jointAt(upright, 51, 202)).toBeGreaterThan(0.4);
  expect(jointAt(upright, 102, 101)).toBeGreaterThan(0.4);
  const [straight, aslant] = [LAID('stack', [100, 100], 2), LAID('stack', [100, 100], 2, 45)];
  for (const d of [15, 40, 77]) expect(jointAt(aslant, d, d)).toBeCloseTo(jointAt(straight, d * Math.SQRT2, 0), 6);
});

it('lays a herringbone of whole pieces at right angles that cover the plane once', () => {
  // Brute force: the corners of both kinds of piece from the definition, k (W, W) + m (L, -L); every place lies in just one.
  const [l, w] = [152, 52];
  const texture = LAID('herringbone', [150, 50], 2);
  const random = mulberry32(7);
  for (let n = 0; n < 3000; n++) {
    const [s, t] = [2000 * (random() - 0.5), 2000 * (random() - 0.5)];
    const edges: number[] = [];
    for (let m = -25; m <= 25; m++) {
      for (let k = -80; k <= 80; k++) {
        const [x, y] = [s - k * w - m * l, t - k * w + m * l];
        if (x >= 0 && x < l && y >= 0 && y < w) edges.push(Math.min(x, l - x, y, w - y));
        const [p, q] = [x - l, y - w + l];
        if (p >= 0 && p < w && q >= 0 && q < l) edges.push(Math.min(p, w - p, q, l - q));
      }
    }
    expect(edges).toHaveLength(1);
    if (edges[0]! < 0.1) expect(jointAt(texture, s, t)).toBeGreaterThan(0.4);
    if (edges[0]! > 4) expect(jointAt(texture, s, t)).toBe(0);
  }
});

it('lays hexagons of the given width from flat to flat', () => {
  const texture = LAID('hexagon', [50, 50], 2);
  // Middles at (0, 0) and (26, 26 sqrt 3); flats at 26 mm from a middle, corners at 52 / sqrt 3 above it.
  for (const [s, t] of [
    [0, 0],
    [52, 0],
    [26, 45.03],
    [-26, 45.03],
  ] as const) {
    expect(jointAt(texture, s + 20, t)).toBe(0);
    expect(jointAt(texture, s + 26, t)).toBeGreaterThan(0.4);
    expect(jointAt(texture, s, t + 25)).toBe(0);
    expect(jointAt(texture, s, t + 30.02)).toBeGreaterThan(0.4);
  }
});

it('staggers the end joints of neighbouring boards by at least 300 mm', () => {
  for (let seed = 0; seed < 60; seed++) {
    const spec: PatternSpec = {
      pattern: { kind: 'grain', board_mm: [120, 1800] },
      layout: 'planks',
      variation: 'V2',
      shares: [0.8, 0.2],
      seed,
    };
    const grid = layPieces(spec, [4000, 1400])!;
    expect(grid.module_mm).toEqual([1800, 120]);
    const { offsets } = pieceField(spec, grid);
    offsets.forEach((offset, r) => {
      const d = Math.abs(offset - offsets[(r + 1) % offsets.length]!) % 1;
      expect(1800 * Math.min(d, 1 - d)).toBeGreaterThanOrEqual(300);
    });
  }
});

it('takes 4.5 % of luminance for one unit of CIEDE2000 from L* 50 to 95', () => {
  // CIEDE2000 (ISO/CIE 11664-6) from npm culori, on grays.
  for (const l of [50, 60, 70, 80, 90, 95]) {
    const y = ((l + 16) / 116) ** 3 * (1 + GAIN_PER_DE00);
    const brighter = 116 * Math.cbrt(y) - 16;
    const de = differenceCiede2000()({ mode: 'lab65', l, a: 0, b: 0 }, { mode: 'lab65', l: brighter, a: 0, b: 0 });
    expect(Math.abs(de - 1)).toBeLessThan(0.06);
  }
});

const CLASSES: readonly Variation[] = ['V0', 'V1', 'V2', 'V3', 'V4'];

it('spreads tiles in lightness by their variation class', () => {
  const spreads = CLASSES.map((variation) => tileSpread({ kind: 'plain' }, variation));
  CLASSES.forEach((variation, i) => {
    expect(spreads[i]! / gainSigma(variation)).toBeGreaterThan(0.85);
    expect(spreads[i]! / gainSigma(variation)).toBeLessThan(1.15);
    if (i > 0) expect(VARIATION_SIGMA_DE00[variation]).toBeGreaterThan(VARIATION_SIGMA_DE00[CLASSES[i - 1]!]);
  });
});

it.each<FinishPattern>([
  { kind: 'cleft', size_mm: 100 },
  { kind: 'veined', spacing_mm: 200, direction_deg: 30 },
  { kind: 'cloud', size_mm: 120 },
])('orders the classes from V0 to V4 on tiles with a pattern of their own ($kind)', (pattern) => {
  const spreads = CLASSES.map((variation) => tileSpread(pattern, variation));
  for (let i = 1; i < spreads.length; i++) expect(spreads[i]!).toBeGreaterThan(spreads[i - 1]!);
});

/** Standard deviation of the mean gain of 300 x 300 mm tiles. */
function tileSpread(pattern: FinishPattern, variation: Variation): number {
  const share = jointShare([300, 300], 3);
  const own = pattern.kind === 'plain' ? [1] : [0.85, 0.15];
  const shares = [...own.map((s) => s * (1 - share)), share];
  const texture = bakePattern(
    { pattern, layout: 'stack', piece_mm: [300, 300], joint_mm: 3, variation, shares, seed: 4 },
    { maxSize: 512 },
  );
  const columns = Math.round((1000 * texture.width_m) / 303);
  const rows = Math.round((1000 * texture.height_m) / 303);
  const sum = new Float64Array(columns * rows);
  const count = new Float64Array(columns * rows);
  for (let y = 0; y < texture.height; y++) {
    const v = (((y + 0.5) / texture.height) * rows) % 1;
    const r = Math.floor(((y + 0.5) / texture.height) * rows);
    for (let x = 0; x < texture.width; x++) {
      const u = (((x + 0.5) / texture.width) * columns) % 1;
      if (u < 0.05 || u > 0.95 || v < 0.05 || v > 0.95) continue;
      const k = r * columns + Math.floor(((x + 0.5) / texture.width) * columns);
      sum[k]! += texture.data[(y * texture.width + x) * 4 + 3]! / 128;
      count[k]! += 1;
    }
  }
  let mean = 0;
  let mean2 = 0;
  for (let k = 0; k < sum.length; k++) {
    const g = sum[k]! / count[k]!;
    mean += g / sum.length;
    mean2 += (g * g) / sum.length;
  }
  return Math.sqrt(mean2 - mean * mean);
}

function columnStep(texture: PatternTexture, a: number, b: number): number {
  let sum = 0;
  for (let y = 0; y < texture.height; y++) {
    for (let c = 0; c < 4; c++) {
      sum += Math.abs(texture.data[(y * texture.width + a) * 4 + c]! - texture.data[(y * texture.width + b) * 4 + c]!);
    }
  }
  return sum / texture.height;
}

function rowStep(texture: PatternTexture, a: number, b: number): number {
  let sum = 0;
  for (let x = 0; x < texture.width; x++) {
    for (let c = 0; c < 4; c++) {
      sum += Math.abs(texture.data[(a * texture.width + x) * 4 + c]! - texture.data[(b * texture.width + x) * 4 + c]!);
    }
  }
  return sum / texture.width;
}
