import { expect, it } from 'vitest';
import { chromaticityFromXyz } from '../../src/engine/color/chromaticity';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { wavelengthNm } from '../../src/engine/spectrum/grid';
import { daylightSpd, LIGHT_IDS, lightById, perLux, planckSpd } from '../../src/engine/spectrum/lights';
import { observer2, observer10 } from '../../src/engine/spectrum/observers';

/** CIE 15:2018, tables 5 and 12, and CIE 15:2004, table T.7: x, y of the 2 degree observer as printed. */
const PUBLISHED_XY: readonly (readonly [id: string, x: number, y: number])[] = [
  ['A', 0.44758, 0.40745],
  ['C', 0.31006, 0.31616],
  ['D50', 0.3457, 0.3585],
  ['D55', 0.33243, 0.34744],
  ['D65', 0.3127, 0.329],
  ['D75', 0.29903, 0.31488],
  ['FL1', 0.3131, 0.3371],
  ['FL2', 0.3721, 0.3751],
  ['FL3', 0.4091, 0.3941],
  ['FL4', 0.4402, 0.4031],
  ['FL5', 0.3138, 0.3452],
  ['FL6', 0.3779, 0.3882],
  ['FL7', 0.3129, 0.3292],
  ['FL8', 0.3458, 0.3586],
  ['FL9', 0.3741, 0.3727],
  ['FL10', 0.3458, 0.3588],
  ['FL11', 0.3805, 0.3769],
  ['FL12', 0.437, 0.4042],
  ['LED-B1', 0.456, 0.4078],
  ['LED-B2', 0.4357, 0.4012],
  ['LED-B3', 0.3756, 0.3723],
  ['LED-B4', 0.3422, 0.3502],
  ['LED-B5', 0.3118, 0.3236],
  ['LED-BH1', 0.4474, 0.4066],
  ['LED-RGB1', 0.4557, 0.4211],
  ['LED-V1', 0.4548, 0.4044],
  ['LED-V2', 0.3781, 0.3775],
];

it('knows exactly the lights whose chromaticity is published', () => {
  expect([...LIGHT_IDS].sort()).toEqual(PUBLISHED_XY.map(([id]) => id).sort());
  expect(lightById('D99')).toBeNull();
});

it.each(PUBLISHED_XY)('%s has its published chromaticity to the last printed digit', (id, x, y) => {
  const xy = chromaticityFromXyz(xyzFromEmission(lightById(id)!, observer2));
  expect(Math.abs(xy.x - x)).toBeLessThan(5.05e-5);
  expect(Math.abs(xy.y - y)).toBeLessThan(5.05e-5);
});

it('has the 5 nm sums of the colour-matching functions (ISO/CIE 11664-1: 21.371 and 23.33, times 5 nm)', () => {
  const sum = (values: Float64Array) => 5 * values.reduce((total, value) => total + value, 0);
  const sums = [observer2, observer10].flatMap((observer) => [sum(observer.x), sum(observer.y), sum(observer.z)]);
  const published = [106.858, 106.857, 106.858, 116.647, 116.66, 116.671];
  sums.forEach((value, i) => {
    expect(Math.abs(value - published[i]!)).toBeLessThan(1e-3);
  });
});

it('makes D50, D55, D65, D75 from S0, S1, S2 as tabulated (CIE 15:2018, table 5)', () => {
  for (const [id, nominal_k] of [
    ['D50', 5000],
    ['D55', 5500],
    ['D65', 6500],
    ['D75', 7500],
  ] as const) {
    const made = daylightSpd((nominal_k * 1.4388) / 1.438);
    const tabled = lightById(id)!;
    const worst = Math.max(...made.map((power, i) => Math.abs(power - tabled[i]!)));
    expect(worst, id).toBeLessThan(1e-3);
  }
});

it('refuses daylight outside the range CIE 15 defines', () => {
  expect(() => daylightSpd(3999)).toThrow(RangeError);
  expect(() => daylightSpd(25001)).toThrow(RangeError);
  expect(() => daylightSpd(Number.NaN)).toThrow(RangeError);
});

it('has illuminant A as its defining formula gives it (ISO/CIE 11664-2: 100 at 560 nm, 2848 K, c2 1.435e7 nm K)', () => {
  const bose = (nm: number) => Math.exp(1.435e7 / (2848 * nm)) - 1;
  lightById('A')!.forEach((power, i) => {
    const nm = wavelengthNm(i);
    expect(Math.abs(power - 100 * (560 / nm) ** 5 * (bose(560) / bose(nm)))).toBeLessThan(5e-4);
  });
});

it('has the peak of thermal radiation where the displacement law puts it (Wien, 2.8978e6 nm K)', () => {
  const spd = planckSpd(2.8978e6 / 555);
  const peak = spd.indexOf(Math.max(...spd));
  expect(wavelengthNm(peak)).toBe(555);
});

it('scales every light to one lux: 683 lm/W x 5 nm x sum(S V) = 1 (SI, CIE 15)', () => {
  for (const id of LIGHT_IDS) {
    const spd = perLux(lightById(id)!);
    const lux = spd.reduce((sum, power, i) => sum + 683 * 5 * power * observer2.y[i]!, 0);
    expect(Math.abs(lux - 1)).toBeLessThan(1e-12);
    expect(xyzFromEmission(spd, observer2).y).toBeCloseTo(1, 12);
  }
});
