import { expect, it } from 'vitest';
import { adaptationMatrix, bradfordMatrix } from '../../src/engine/color/adapt';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLinearSrgb } from '../../src/engine/color/display';
import { labD65FromXyzD65 } from '../../src/engine/color/lab';
import { labD65FromReflectance } from '../../src/engine/color/lab-from-reflectance';
import { apply } from '../../src/engine/color/matrix3';
import type { Matrix3 } from '../../src/engine/color/types';
import { D65_2 } from '../../src/engine/color/whites';
import { lightById } from '../../src/engine/spectrum/lights';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import { COLOR_CHECKER } from '../vectors/color-checker.data';
import { CAMERAS, rendered } from './camera';
import { cardOf } from './scene';

// Spectra: Ohta's chart (see color-checker.data.ts); lights: CIE 15. Cameras are linear transforms of the CIE 1931 observer.
const LIGHTS = ['D50', 'D65', 'A', 'FL2', 'FL4', 'FL11', 'LED-B1', 'LED-B3', 'LED-B5', 'LED-RGB1', 'LED-V1'];

type Correct = (sample: readonly number[], card: readonly number[]) => ReturnType<typeof labD65FromXyzD65>;

const CARD = 0.18;
const xyzOf = ([r, g, b]: readonly number[]) => xyzD65FromLinearSrgb({ r: r!, g: g!, b: b! });
const through =
  (matrix: (white: { x: number; y: number; z: number }) => Matrix3): Correct =>
  (sample, card) => {
    const [s, c] = [xyzOf(sample), xyzOf(card)];
    const [x, y, z] = apply(matrix({ x: c.x / CARD, y: c.y / CARD, z: c.z / CARD }), [s.x, s.y, s.z]);
    const scale = (100 * CARD) / c.y;
    return labD65FromXyzD65({ x: x * scale, y: y * scale, z: z * scale });
  };

const METHODS: Readonly<Record<'none' | 'rgb' | 'cat16' | 'bradford', Correct>> = {
  none: (sample, card) => labD65FromXyzD65(xyzOf(sample.map((value) => (value * CARD) / card[1]!))),
  rgb: (sample, card) => labD65FromXyzD65(xyzOf(sample.map((value, c) => (value * CARD) / card[c]!))),
  cat16: through((white) => adaptationMatrix(white, D65_2)),
  bradford: through((white) => bradfordMatrix(white, D65_2)),
};

/** Root mean square CIEDE2000 over the chart, by camera, of one way to correct. */
function errors(correct: Correct): readonly number[] {
  return CAMERAS.map((camera) => {
    const squares = LIGHTS.flatMap((id) => {
      const light = lightById(id)!;
      const card = rendered(camera, cardOf(CARD), light);
      return COLOR_CHECKER.map(({ reflectance }) => {
        const rho = Float64Array.from(reflectance) as unknown as ReflectanceSpd;
        const said = correct(rendered(camera, rho, light), card);
        return differenceCiede2000(said, labD65FromReflectance(rho)) ** 2;
      });
    });
    return Math.sqrt(squares.reduce((sum, value) => sum + value, 0) / squares.length);
  });
}

it('corrects in tristimulus values by Bradford because that errs less than CAT16 and less than scaling red, green and blue', () => {
  const [none, rgb, cat16, bradford] = [METHODS.none, METHODS.rgb, METHODS.cat16, METHODS.bradford].map(errors);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  CAMERAS.forEach((_, i) => {
    expect(bradford![i]!).toBeLessThan(cat16![i]!);
    expect(bradford![i]!).toBeLessThan(none![i]!);
  });
  expect(mean(bradford!)).toBeLessThan(0.85 * mean(rgb!));
});
