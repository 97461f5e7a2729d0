import fc from 'fast-check';
import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { BAND_COUNT, bandMeansFromReflectance } from '../../src/engine/light/bands';
import { installedLab, irradianceSpectrum } from '../../src/engine/light/reading';
import { type SolvableTransport, solveGroup } from '../../src/engine/light/solve';
import { buildTransport, type Transport } from '../../src/engine/light/transport';
import { emissionSpd, reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { perLux } from '../../src/engine/spectrum/per-lux';
import { boxRects, ceilingLamp, roomOf } from './box-room';

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

it('CIE 171 case 5.8: mean indirect illuminance of a closed cube is Phi rho / (S (1 - rho)) (0.1 %)', () => {
  const published = { 0.05: 5.48, 0.2: 26.04, 0.5: 104.17, 0.8: 416.67, 0.95: 1979.17 };
  for (const [rho, mean] of Object.entries(published)) {
    const b = solveGroup(cube, uniform(Number(rho)), cube.direct[0]!, { bands: 1 });
    const indirect = areaMean(cube, irradiance(cube, b, 1, 0)) - areaMean(cube, cube.direct[0]!);
    expect(Math.abs(indirect / mean - 1)).toBeLessThan(2e-3);
    const exact = (LUMENS * Number(rho)) / (96 * (1 - Number(rho)));
    expect(Math.abs(indirect / exact - 1)).toBeLessThan(1e-3);
  }
});

it('one-colour room: mean irradiance is S / (1 - rho), to 0.05 CIEDE2000 for smooth finishes under spiky lamps', () => {
  const finishes = [
    reflectanceSpd(Array.from({ length: 81 }, (_, i) => 0.15 + 0.5 / (1 + Math.exp((560 - wavelengthNm(i)) / 40)))),
    reflectanceSpd(Array.from({ length: 81 }, (_, i) => 0.5 - 0.25 / (1 + Math.exp((520 - wavelengthNm(i)) / 50)))),
    reflectanceSpd(Array.from({ length: 81 }, (_, i) => 0.3 + 0.2 * Math.exp(-(((wavelengthNm(i) - 540) / 70) ** 2)))),
  ];
  for (const light of ['A', 'D65', 'FL11', 'LED-B3']) {
    const spectrum = perLux(lightById(light)!);
    for (const rho of finishes) {
      const bands = Float32Array.from(bandMeansFromReflectance(rho));
      const reflectance = new Float32Array(6 * BAND_COUNT);
      for (let s = 0; s < 6; s++) reflectance.set(bands, s * BAND_COUNT);
      const b = solveGroup(cube, reflectance, cube.direct[0]!);
      const direct = areaMean(cube, cube.direct[0]!);
      const indirect = Array.from(
        { length: BAND_COUNT },
        (_, k) => areaMean(cube, irradiance(cube, b, BAND_COUNT, k)) - direct,
      );
      const got = irradianceSpectrum([spectrum], [1], [direct], [indirect]);
      const exact = emissionSpd(spectrum.map((s, i) => s / (1 - rho[i]!)));
      const white = { x: 95.04, y: 100, z: 108.88 };
      const difference = differenceCiede2000(installedLab(got, rho, white), installedLab(exact, rho, white));
      expect(difference).toBeLessThan(0.05);
    }
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

it('a room turned by 90 degrees keeps its light (within ray noise, 0.5 %)', () => {
  const rho = Float32Array.from([0.3, 0.8, 0.5, 0.5, 0.5, 0.5]);
  const mean = (a: number, b: number): number[] => {
    const lamp = ceilingLamp(a / 2, b / 2, 2.5, 0.5, LUMENS);
    const t = buildTransport(roomOf(boxRects(a, b, 2.5), { lamps: [lamp] }));
    const e = irradiance(t, solveGroup(t, rho, t.direct[0]!, { bands: 1 }), 1, 0);
    return [0, 1].map((rect) => {
      const own = [...e.keys()].filter((i) => t.patches.rect[i] === rect);
      return own.reduce((sum, i) => sum + e[i]!, 0) / own.length;
    });
  };
  const [floor, ceiling] = mean(4, 3);
  const [turnedFloor, turnedCeiling] = mean(3, 4);
  expect(Math.abs(floor! / turnedFloor! - 1)).toBeLessThan(5e-3);
  expect(Math.abs(ceiling! / turnedCeiling! - 1)).toBeLessThan(5e-3);
});

it('a warm start ends where a cold start does', () => {
  const rho = Float32Array.from([0.2, 0.8, 0.5, 0.6, 0.3, 0.7]);
  const cold = solveGroup(cube, rho, cube.direct[0]!, { bands: 1, tolerance: 1e-6 });
  const wrong = Float32Array.from(cold, (b) => 2 * b + 5);
  const warm = solveGroup(cube, rho, cube.direct[0]!, { bands: 1, tolerance: 1e-6, warmStart: wrong });
  for (let i = 0; i < cold.length; i++) expect(Math.abs(warm[i]! / cold[i]! - 1)).toBeLessThan(1e-5);
});
