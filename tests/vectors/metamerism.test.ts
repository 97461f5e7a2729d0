import Color from 'colorjs.io';
import { differenceCiede2000 as culoriDifference } from 'culori/fn';
import { expect, it } from 'vitest';
import { labUnder } from '../../src/engine/change/lab-under';
import { metamerismIndex } from '../../src/engine/change/metamerism';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';
import { lhtssReflectance } from '../../src/engine/spectrum/lhtss';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { WEIGHTS_D65_2 } from '../../src/engine/spectrum/tristimulus-weights';
import type { EmissionSpd, ReflectanceSpd } from '../../src/engine/spectrum/types';
import { COLOR_CHECKER } from './color-checker.data';

// Special metamerism index, change in illuminant: definition of CIE 15 and ISO 18314-4 (its text from memory), differences by
// culori and colorjs.io, tristimulus values and CIELAB by the lines below.

const D65 = lightById('D65')!;
const TEST_LIGHTS = ['A', 'FL2', 'FL11', 'LED-B3', 'LED-RGB1'].map((id) => [id, lightById(id)!] as const);

const patch = (name: string): ReflectanceSpd =>
  reflectanceSpd(COLOR_CHECKER.find((entry) => entry.patch.startsWith(name))!.reflectance);

function xyz(rho: ArrayLike<number>, light: EmissionSpd): [number, number, number] {
  const sum = (matching: Float64Array) => light.reduce((total, power, i) => total + power * matching[i]! * rho[i]!, 0);
  const perfect = light.reduce((total, power, i) => total + power * observer2.y[i]!, 0);
  return [sum(observer2.x) / perfect, sum(observer2.y) / perfect, sum(observer2.z) / perfect];
}

function cielab(value: readonly number[], white: readonly number[]): [number, number, number] {
  const [fx, fy, fz] = value.map((v, r) => {
    const t = v / white[r]!;
    return t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116;
  });
  return [116 * fy! - 16, 500 * (fx! - fy!), 200 * (fy! - fz!)];
}

const byCulori = culoriDifference();
function independentDe00(one: readonly number[], other: readonly number[]): number {
  const lab65 = ([l, a, b]: readonly number[]) => ({ mode: 'lab65' as const, l: l!, a: a!, b: b! });
  const culori = byCulori(lab65(one), lab65(other));
  const colorjs = new Color('lab', one as [number, number, number]).deltaE(
    new Color('lab', other as [number, number, number]),
    '2000',
  );
  // Two libraries, one formula.
  expect(Math.abs(culori - colorjs)).toBeLessThan(1e-9);
  return culori;
}

/** The part of a curve that D65 does not see: a metameric black (Wyszecki 1953), by Gauss on the three weight rows. */
function metamericBlack(curve: (nm: number) => number): Float64Array {
  const values = Float64Array.from({ length: 81 }, (_, i) => curve(380 + 5 * i));
  const rows = [observer2.x, observer2.y, observer2.z].map((matching) => D65.map((power, i) => power * matching[i]!));
  const basis: Float64Array[] = [];
  const dot = (a: Float64Array, b: Float64Array) => a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  for (const row of rows) {
    const rest = row.slice() as Float64Array;
    for (const done of basis) {
      const part = dot(rest, done);
      for (let i = 0; i < 81; i++) rest[i] = rest[i]! - part * done[i]!;
    }
    const length = Math.sqrt(dot(rest, rest));
    basis.push(rest.map((value) => value / length));
  }
  for (const direction of basis) {
    const part = dot(values, direction);
    for (let i = 0; i < 81; i++) values[i] = values[i]! - part * direction[i]!;
  }
  return values;
}

it('is 0 for equal curves, and for a curve and a darker copy of it', () => {
  const rho = patch('moderate red');
  for (const [, light] of TEST_LIGHTS) {
    expect(metamerismIndex(rho, rho, light)).toBe(0);
    expect(metamerismIndex(rho, rho.map((value) => 0.8 * value) as ReflectanceSpd, light)).toBeLessThan(1e-9);
  }
});

it('is the plain difference of a pair made by a metameric black, the same with one sample darker, and 0 under D65', () => {
  const gray = reflectanceSpd(new Float64Array(81).fill(0.4));
  const black = metamericBlack((nm) => 0.12 * Math.sin((nm - 380) / 25));
  const metamer = reflectanceSpd(gray.map((value, i) => value + black[i]!));
  expect(metamer.every((value) => value > 0 && value < 1)).toBe(true);
  expect(differenceCiede2000(labD65FromReflectance(gray), labD65FromReflectance(metamer))).toBeLessThan(1e-9);
  expect(metamerismIndex(gray, metamer, D65)).toBeLessThan(1e-9);
  for (const [id, light] of TEST_LIGHTS) {
    const white = xyz(new Float64Array(81).fill(1), light);
    const [one, other] = [cielab(xyz(gray, light), white), cielab(xyz(metamer, light), white)];
    const expected = independentDe00(one, other);
    expect(expected, id).toBeGreaterThan(1);
    // Only the order of sums differs.
    expect(Math.abs(metamerismIndex(gray, metamer, light)! - expected)).toBeLessThan(1e-9);
    const deab = Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
    expect(Math.abs(metamerismIndex(gray, metamer, light, D65, 'deab')! - deab)).toBeLessThan(1e-9);
    const darker = metamer.map((value) => 0.9 * value) as ReflectanceSpd;
    expect(Math.abs(metamerismIndex(gray, darker, light)! - expected)).toBeLessThan(1e-9);
  }
});

it.each(['neutral 5', 'light skin', 'blue sky', 'foliage'])(
  'agrees with an independent computation for the chart patch %s and its smoothest metamer',
  (name) => {
    const measured = patch(name);
    const smoothest = lhtssReflectance(Float64Array.from(xyz(measured, D65)), WEIGHTS_D65_2)!;
    for (const [id, light] of TEST_LIGHTS) {
      const white = xyz(new Float64Array(81).fill(1), light);
      const [referenceA, referenceB] = [xyz(measured, D65), xyz(smoothest, D65)];
      const corrected = xyz(smoothest, light).map((value, r) => (value * referenceA[r]!) / referenceB[r]!);
      const expected = independentDe00(cielab(xyz(measured, light), white), cielab(corrected, white));
      expect(Math.abs(metamerismIndex(measured, smoothest, light)! - expected), id).toBeLessThan(1e-9);
    }
  },
);

it('orders the two samples at will where they match, and knows another reference light', () => {
  const measured = patch('light skin');
  const smoothest = lhtssReflectance(Float64Array.from(xyz(measured, D65)), WEIGHTS_D65_2)!;
  const a = lightById('A')!;
  const there = metamerismIndex(measured, smoothest, a)!;
  // The match is exact to 1e-9 in X, Y, Z.
  expect(Math.abs(metamerismIndex(smoothest, measured, a)! - there)).toBeLessThan(1e-6);
  expect(metamerismIndex(measured, smoothest, a, a)).toBeLessThan(1e-9);
  expect(metamerismIndex(measured, smoothest, D65, a)).toBeGreaterThan(0.5);
});

it('is close to the difference under the light after adaptation, which is how pairs are judged', () => {
  // CAT16 to D65 moves both samples alike; for near-neutrals the two ways of taking the white off differ by a few percent.
  const measured = patch('neutral 5');
  const bumpy = reflectanceSpd(
    measured.map((value, i) => value + 0.2 * metamericBlack((nm) => 0.12 * Math.sin((nm - 380) / 25))[i]!),
  );
  for (const [, light] of TEST_LIGHTS) {
    const adapted = differenceCiede2000(labUnder(measured, light), labUnder(bumpy, light));
    expect(metamerismIndex(measured, bumpy, light)! / adapted).toBeGreaterThan(0.75);
    expect(metamerismIndex(measured, bumpy, light)! / adapted).toBeLessThan(1.33);
  }
});

it('has no index where the second sample is black: there is nothing to multiply', () => {
  const black = reflectanceSpd(new Float64Array(81));
  const gray = reflectanceSpd(new Float64Array(81).fill(0.4));
  expect(metamerismIndex(gray, black, D65)).toBeNull();
  expect(metamerismIndex(black, gray, D65)).toBe(0);
});
