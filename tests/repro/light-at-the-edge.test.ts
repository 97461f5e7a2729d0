import { expect, it } from 'vitest';
import { cctDuv } from '../../src/engine/color/correlated-temperature';
import { whiteOf } from '../../src/engine/color/xyz';
import { lightFromWords } from '../../src/engine/lamp/light-words';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { planckSpd } from '../../src/engine/spectrum/planck';
import { emissionOnGrid } from '../../src/engine/spectrum/resample-emission';

// 1000 K was promised, but the search of the nearest black body found no neighbour below it.
it.each([1000, 1010, 1500, 99_000])('finds the color temperature of a black body of %d K', (cct_k) => {
  const found = cctDuv(whiteOf(planckSpd(cct_k), observer2))!;
  // At 100 000 K a tenth of a percent in temperature moves u, v by 1e-7.
  expect(Math.abs(found.cct_k / cct_k - 1)).toBeLessThan(1e-4);
  expect(Math.abs(found.duv)).toBeLessThan(1e-6);
});

// 10 nm from a start that binary numbers do not hold was refused as "a step of 10.000000000000057 nm".
it('takes steps of 10 nm from a decimal start', () => {
  const nm = Array.from({ length: 43 }, (_, i) => 370.2 + i * 10);
  expect(Math.max(...nm.slice(1).map((value, i) => value - nm[i]!))).toBeGreaterThan(10);
  expect(emissionOnGrid({ nm, power: nm.map(() => 1) }).ok).toBe(true);
});

// Tubes are often sold and tabled as F11 or CIE F11; CIE 15:2018 says FL11.
it.each(['F11', 'cie f11', 'FL 11', 'CIE FL11'])('knows %s', (words) => {
  const light = lightFromWords(words);
  expect(light.ok && light.value).toBe(lightById('FL11'));
});
