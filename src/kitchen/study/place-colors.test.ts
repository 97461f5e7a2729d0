import fc from 'fast-check';
import { expect, it } from 'vitest';
import { whiteOf } from '../../engine/color/xyz';
import { installedLab } from '../../engine/light/reading';
import { emissionSpd, reflectanceSpd } from '../../engine/spectrum/grid';
import { lightById } from '../../engine/spectrum/lights';
import { observer2 } from '../../engine/spectrum/observers';
import { placeColors } from './place-colors';

const spectrum = (least: number, most: number) =>
  fc.array(fc.double({ min: least, max: most, noNaN: true }), { minLength: 81, maxLength: 81 });

it('reads what a single reading of the place reads', () => {
  const white = whiteOf(lightById('LED-B2')!, observer2);
  fc.assert(
    fc.property(spectrum(0.01, 5), spectrum(0, 1), (light, reflectance) => {
      const irradiance = emissionSpd(light);
      const read = placeColors(irradiance, white);
      for (const rho of [reflectanceSpd(reflectance), null]) {
        const [fast, slow] = [read(rho), installedLab(irradiance, rho, white)];
        // The same sums in another order.
        for (const k of ['l', 'a', 'b'] as const) expect(Math.abs(fast[k] - slow[k])).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 50 },
  );
});

it('has no reading for a place without light', () => {
  const white = whiteOf(lightById('A')!, observer2);
  expect(() => placeColors(emissionSpd(new Float64Array(81)), white)).toThrow(RangeError);
});
