import { differenceCiede2000, type Lab65 } from 'culori';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { jointShare } from '../../src/engine/pattern/joint-share';
import { meanGain, meanWeights } from '../../src/engine/pattern/sample';
import {
  type FinishPattern,
  LAYOUTS,
  type Layout,
  type PatternTexture,
  type Variation,
} from '../../src/engine/pattern/types';
import { FINISHES, specOf } from './pattern-specs';

const baked = new Map<string, PatternTexture>();
function bakedFinish(name: string): PatternTexture {
  const kept = baked.get(name) ?? bakePattern(specOf(FINISHES.find((f) => f.name === name)!));
  baked.set(name, kept);
  return kept;
}

// Closed form 1 - L W / ((L + J)(W + J)); values worked by hand to two decimals of a per cent.
it.each([
  [300, 75, 2, 3.24],
  [23, 23, 2, 15.36],
  [600, 600, 3, 0.99],
  [1200, 600, 2, 0.5],
])('takes %d x %d mm with a %d mm joint to be %d %% joint', (length, width, joint, percent) => {
  expect(100 * jointShare([length, width], joint)).toBeCloseTo(percent, 2);
});

it.each(FINISHES.map((f) => f.name))('draws %s with the shares it was given, after rounding to bytes', (name) => {
  const spec = specOf(FINISHES.find((f) => f.name === name)!);
  const means = meanWeights(bakedFinish(name));
  spec.shares.forEach((share, k) => {
    expect(Math.abs(means[k]! - share)).toBeLessThan(0.005);
  });
  expect(means.slice(spec.shares.length).every((w) => w === 0)).toBe(true);
  expect(Math.abs(meanGain(bakedFinish(name)) - 1)).toBeLessThan(0.002);
});

it.each([
  [300, 75, 2],
  [23, 23, 2],
  [600, 600, 3],
  [1200, 600, 2],
])('draws the joint of %d x %d mm, %d mm wide, by exact area in either bond', (length, width, joint) => {
  const share = jointShare([length, width], joint);
  for (const layout of ['stack', 'running-bond', 'third-offset', 'herringbone'] as const) {
    const texture = bakePattern({
      pattern: { kind: 'plain' },
      layout,
      piece_mm: [length, width],
      joint_mm: joint,
      variation: 'V0',
      shares: [1 - share, share],
      seed: 3,
    });
    expect(Math.abs(meanWeights(texture)[1] - share)).toBeLessThan(0.0005);
  }
});

// Closed form 1 - (W / (W + J))^2; 50 mm flat to flat with a joint of 2 mm worked by hand to 7.54 %.
it.each([
  [50, 2, 7.54],
  [150, 3, 3.88],
  [25, 2, 14.27],
])('takes and draws hexagons of %d mm with a %d mm joint as %d %% joint', (width, joint_mm, percent) => {
  const share = jointShare([width, width], joint_mm, 'hexagon');
  expect(100 * share).toBeCloseTo(percent, 2);
  const texture = bakePattern({
    pattern: { kind: 'plain' },
    layout: 'hexagon',
    piece_mm: [width, width],
    joint_mm,
    variation: 'V0',
    shares: [1 - share, share],
    seed: 3,
  });
  expect(Math.abs(meanWeights(texture)[1] - share)).toBeLessThan(0.0005);
});

it('keeps shares, gain and sums for any pattern, layout, class and seed, at any size', () => {
  const pattern = fc.constantFrom<FinishPattern>(
    { kind: 'plain' },
    { kind: 'veined', spacing_mm: 150, direction_deg: 70 },
    { kind: 'fleck', size_mm: 8 },
    { kind: 'grain' },
    { kind: 'grain', figure: 'ray-fleck' },
    { kind: 'cleft', size_mm: 90 },
    { kind: 'cloud', size_mm: 60 },
    { kind: 'cloud', size_mm: 20, gathers: 'edges' },
    { kind: 'thread', size_mm: 2 },
    { kind: 'grain', figure: 'pores' },
    { kind: 'linear', size_mm: 6, direction_deg: 0 },
    { kind: 'brushed' },
  );
  const layout = fc.constantFrom<Layout>(...LAYOUTS);
  const variation = fc.constantFrom<Variation>('V0', 'V1', 'V2', 'V3', 'V4');
  fc.assert(
    fc.property(
      pattern,
      layout,
      variation,
      fc.integer({ min: 0, max: 1e6 }),
      fc.double({ min: 0, max: 0.4, noNaN: true }),
      fc.double({ min: 0, max: 0.25, noNaN: true }),
      fc.double({ min: 1, max: 6, noNaN: true }),
      (kind, laid, spread, seed, second, third, joint_mm) => {
        const piece_mm = [240, 180] as const;
        const joint = laid === 'plain' ? 0 : jointShare(piece_mm, joint_mm, laid);
        const own = [1 - second - third, second, third].map((s) => s * (1 - joint));
        const shares = joint > 0 ? [...own, joint] : own;
        const texture = bakePattern(
          { pattern: kind, layout: laid, piece_mm, joint_mm, variation: spread, shares, seed },
          { maxSize: 128 },
        );
        const means = meanWeights(texture);
        for (let k = 0; k < shares.length; k++) expect(Math.abs(means[k]! - shares[k]!)).toBeLessThan(0.005);
        expect(Math.abs(meanGain(texture) - 1)).toBeLessThan(0.002);
        let most = 0;
        for (let i = 0; i < texture.data.length; i += 4) {
          most = Math.max(most, texture.data[i]! + texture.data[i + 1]! + texture.data[i + 2]!);
        }
        expect(most).toBeLessThanOrEqual(255);
      },
    ),
    { numRuns: 60, seed: 11 },
  );
});

it.each(FINISHES.map((f) => f.name))('looks from afar like the mixture of %s by shares', (name) => {
  // Mixing is in linear light; the difference by CIEDE2000 (ISO/CIE 11664-6) from npm culori.
  const finish = FINISHES.find((f) => f.name === name)!;
  const spec = specOf(finish);
  const colors = finish.lab.map(xyzFromLab);
  const { data } = bakedFinish(name);
  const seen = [0, 0, 0];
  for (let i = 0; i < data.length; i += 4) {
    const gain = data[i + 3]! / 128;
    const w = [data[i]! / 255, data[i + 1]! / 255, data[i + 2]! / 255];
    const rest = 1 - w[0]! - w[1]! - w[2]!;
    for (let c = 0; c < 3; c++) {
      let mixed = rest * colors[0]![c]!;
      for (let k = 1; k < colors.length; k++) mixed += w[k - 1]! * colors[k]![c]!;
      seen[c]! += gain * mixed;
    }
  }
  const texels = data.length / 4;
  const expected = [0, 1, 2].map((c) => spec.shares.reduce((sum, share, k) => sum + share * colors[k]![c]!, 0));
  expect(
    difference(
      seen.map((v) => v / texels),
      expected,
    ),
  ).toBeLessThan(0.3);
});

const WHITE_D65 = [0.95047, 1, 1.08883];

function xyzFromLab([l, a, b]: readonly [number, number, number]): number[] {
  const fy = (l + 16) / 116;
  return [fy + a / 500, fy, fy - b / 200].map(
    (f, c) => WHITE_D65[c]! * (f > 6 / 29 ? f ** 3 : 3 * (6 / 29) ** 2 * (f - 4 / 29)),
  );
}

function difference(xyz1: readonly number[], xyz2: readonly number[]): number {
  const lab = (xyz: readonly number[]): Lab65 => {
    const [fx, fy, fz] = xyz.map((v, c) => {
      const t = v / WHITE_D65[c]!;
      return t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29;
    });
    return { mode: 'lab65', l: 116 * fy! - 16, a: 500 * (fx! - fy!), b: 200 * (fy! - fz!) };
  };
  return differenceCiede2000()(lab(xyz1), lab(xyz2));
}
