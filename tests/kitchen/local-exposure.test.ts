import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Matrix3 } from '../../src/engine/color/types';
import { lightById, perLux } from '../../src/engine/spectrum/lights';
import { exposedColor } from '../../src/kitchen/study/component-colors';
import { localExposure } from '../../src/kitchen/study/local-exposure';
import type { SettingLight } from '../../src/kitchen/study/setting-light';

const spectrum = perLux(lightById('D65')!);
const setting: SettingLight = { id: 'day', levels: [1, 0], spectra: [spectrum, spectrum], daylight: null };

/** Linear sRGB, IEC 61966-2-1, so that white in 1000 lx of D65 is display white. */
const exposure: Matrix3 = (() => {
  const toRgb: Matrix3 = [3.2406, -1.5372, -0.4986, -0.9689, 1.8758, 0.0415, 0.0557, -0.204, 1.057];
  const white = Math.max(...exposedColor(spectrum, null, toRgb));
  return toRgb.map((value) => value / white / 1000) as unknown as Matrix3;
})();

it('leaves every place alone that white does not burn out in', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (lx) => {
      expect(localExposure(setting, exposure, [lx, 1e6])).toBeCloseTo(1, 12);
    }),
  );
});

it('keeps brighter places brighter, without a step, and white below twice display white at twenty times over', () => {
  const shown = (lx: number) => lx / 1000 / localExposure(setting, exposure, [lx, 0]);
  expect(shown(1000.001)).toBeCloseTo(1, 5);
  expect(shown(20_000)).toBeLessThan(2);
  fc.assert(
    fc.property(
      fc.double({ min: 10, max: 1e5, noNaN: true }),
      fc.double({ min: 1.001, max: 2, noNaN: true }),
      (lx, times) => {
        expect(shown(lx * times)).toBeGreaterThan(shown(lx));
      },
    ),
  );
});
