import { expect, it } from 'vitest';
import { cctDuv } from '../engine/color/correlated-temperature';
import { whiteOf } from '../engine/color/xyz';
import { colorRendering } from '../engine/lamp/color-rendering';
import { observer2 } from '../engine/spectrum/observers';
import { LAMP_COLORS, lampColorNear, ledLight, ledOfLight, OTHER_LAMPS, RENDERING_CLASSES } from './lamp-kinds';
import { lightOfProject } from './project-lights';

const spectrumOf = (light: string) => {
  const found = lightOfProject({}, light);
  if (!found.ok) throw new Error(found.problem.text);
  return found.value;
};
const kelvinOf = (light: string) => cctDuv(whiteOf(spectrumOf(light), observer2))!.cct_k;

it('gives every LED lamp a spectrum near the numbers on its box, and knows it again', () => {
  for (const { nominal_k } of LAMP_COLORS) {
    for (const ra of RENDERING_CLASSES) {
      const light = ledLight({ nominal_k, ra });
      expect(ledOfLight(light)).toEqual({ nominal_k, ra });
      // CIE LED-B4 has 5109 K and LED-B5 6598 K (CIE 15:2018); the model meets its temperature.
      expect(Math.abs(kelvinOf(light) - nominal_k)).toBeLessThan(ra === 80 ? 150 : 1);
      // CIE LED-B1 to B5 have Ra 77 to 85; the model meets its Ra.
      expect(Math.abs(colorRendering(spectrumOf(light))!.ra - ra)).toBeLessThan(ra === 80 ? 6 : 0.1);
    }
  }
});

it('says the color temperature of the other lamps as it is', () => {
  for (const { light, words } of OTHER_LAMPS) {
    expect(ledOfLight(light)).toBeNull();
    // Tubes are sold in steps of hundreds: FL11 has 4000 K, FL12 3000 K (CIE 15:2018).
    expect(Math.abs(kelvinOf(light) - Number(/\d{4}/.exec(words)![0]))).toBeLessThan(10);
  }
});

it('finds the color nearest to a temperature as the eye counts', () => {
  expect(LAMP_COLORS.map(({ nominal_k }) => lampColorNear(nominal_k).nominal_k)).toEqual([
    2700, 3000, 4000, 5000, 6500,
  ]);
  expect(lampColorNear(1000).nominal_k).toBe(2700);
  expect(lampColorNear(20_000).nominal_k).toBe(6500);
  // 5652 K lies half way between 5000 and 6500 K in reciprocal kelvin.
  expect(lampColorNear(5600).nominal_k).toBe(5000);
  expect(lampColorNear(5700).nominal_k).toBe(6500);
});

it.each([
  ['led b1', 2700, 80],
  ['LED:3000', 3000, 80],
  ['led:2700, 90', 2700, 90],
])('knows the LED lamp of %s, however it is written', (light, nominal_k, ra) => {
  expect(ledOfLight(light)).toEqual({ nominal_k, ra });
});

it.each(['0.5 led:2700,90 + 0.5 LED-B2', 'D65', 'led:2650,90', 'my-lamp'])('takes %s for none of the list', (light) => {
  expect(ledOfLight(light)).toBeNull();
});
