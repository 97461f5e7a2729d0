import { CAT16 } from '../../src/engine/color/cone-spaces';
import { linearSrgbFromXyzD65 } from '../../src/engine/color/display';
import { apply, inverse } from '../../src/engine/color/matrix3';
import type { Matrix3, White, Xyz } from '../../src/engine/color/types';
import { D65_2 } from '../../src/engine/color/whites';
import { whiteOf, xyzFromReflectance } from '../../src/engine/color/xyz';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../src/engine/spectrum/types';

type Triple = readonly [number, number, number];

/**
 * A camera that meets the Luther condition: its sensitivities are a linear transform of the CIE 1931 observer. It sets its
 * white in its own channels, as cameras do: `balance` 1 quite to the light, 0 to daylight.
 */
export interface Camera {
  readonly sensors: Matrix3;
  readonly balance: number;
}

/** Sharp sensors (the cone space of CAT16) and broad ones (between those and XYZ); their balance is our choice. */
export const CAMERAS: readonly Camera[] = [
  { sensors: CAT16, balance: 0 },
  { sensors: CAT16, balance: 0.7 },
  { sensors: CAT16, balance: 0.9 },
  { sensors: [0.7, 0.45, -0.15, -0.1, 1.05, 0.05, 0, 0, 1], balance: 0.7 },
];

/**
 * Linear sRGB of a surface as the camera renders it, on the scale where the perfect diffuser under `light` has Y 1;
 * `adopted`: the light it balances to.
 */
export function rendered(
  camera: Camera,
  rho: ReflectanceSpd,
  light: EmissionSpd,
  adopted: EmissionSpd = light,
): Triple {
  const raw = ({ x, y, z }: Xyz<White>) => apply(camera.sensors, [x, y, z]);
  const sample = raw(xyzFromReflectance(rho, light, observer2));
  const [white, daylight] = [raw(whiteOf(adopted, observer2)), raw(D65_2)];
  const balanced = sample.map((value, i) => value * (daylight[i]! / white[i]!) ** camera.balance);
  const [x, y, z] = apply(inverse(camera.sensors), balanced as unknown as Triple);
  const { r, g, b } = linearSrgbFromXyzD65({ x, y, z });
  return [r, g, b];
}
