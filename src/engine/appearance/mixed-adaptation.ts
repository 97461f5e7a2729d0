import { CAT16, CAT16_INVERSE } from '../color/cone-spaces';
import { apply, diagonal, multiply } from '../color/matrix3';
import type { Matrix3, White, Xyz } from '../color/types';

/** A light in view of an eye that adapts to several at once. */
export interface LightInView<W extends White> {
  /** Tristimulus values of a perfect white in it, on any scale of Y. */
  readonly white: Xyz<W>;
  /** Luminance of that white, cd/m2, above 0. */
  readonly white_cd_m2: number;
  /** How much the eye turns to it, 0 or more; only the ratios count. */
  readonly weight: number;
}

/**
 * The white an eye adopts that adapts to several lights at once, a worktop under lamps and a window, say; Y = 100.
 * Cone responses of the whites in the CAT16 space, weighted by `weight` times the cube root of luminance: the mixed
 * adaptation of S-LMS (Katoh and Nakabayashi; CIE 162:2010; formula from memory). Katoh found weights of 0.6 for a screen
 * and 0.4 for the room around it, Sueeprasan and Luo (2003, Color Res. Appl. 28, 436) 0.4-0.6 for the screen; for rooms
 * without a screen there are none. Throws a RangeError where no light has weight.
 */
export function mixedWhite<W extends White>(lights: readonly LightInView<W>[]): Xyz<W> {
  const shares = lights.map(({ white_cd_m2, weight }) => weight * Math.cbrt(white_cd_m2));
  const whole = shares.reduce((sum, share) => sum + share, 0);
  if (!(whole > 0)) throw new RangeError('an eye adapts to some light, not to none');
  const cones: [number, number, number] = [0, 0, 0];
  lights.forEach(({ white }, i) => {
    const response = apply(CAT16, [white.x, white.y, white.z]);
    for (let k = 0; k < 3; k++) cones[k]! += (shares[i]! / whole) * (response[k]! / white.y);
  });
  const [x, y, z] = apply(CAT16_INVERSE, cones);
  return { x: (100 * x) / y, y: 100, z: (100 * z) / y };
}

/** A state of the eye: the white it has before it, and how far it has adapted to it (D, 0-1). */
export interface AdaptedTo {
  readonly white: Xyz<White>;
  readonly degree: number;
}

/** Baseline of an eye adapted to nothing: equal energy, as Zhai and Luo take it for both observers. */
const EQUAL_ENERGY: Xyz<White> = { x: 100, y: 100, z: 100 };

/**
 * Colours that look alike to two states of the eye: CAT16 in two steps, to the baseline at the one's degree and from it at
 * the other's (Smet et al. 2017; Zhai and Luo 2018, Optics Express 26, 7724; for CAT16 also Li et al. 2017). Both eyes may be
 * incompletely adapted; the way back is the inverse, and steps through a third state change nothing. With both degrees at 1 it is
 * `adaptationMatrix`.
 */
export function twoStepMatrix(from: AdaptedTo, to: AdaptedTo, baseline: Xyz<White> = EQUAL_ENERGY): Matrix3 {
  const there = gains(from, baseline);
  const back = gains(to, baseline);
  return multiply(
    CAT16_INVERSE,
    multiply(diagonal([there[0] / back[0], there[1] / back[1], there[2] / back[2]]), CAT16),
  );
}

function gains({ white, degree }: AdaptedTo, baseline: Xyz<White>): [number, number, number] {
  const has = apply(CAT16, [white.x, white.y, white.z]);
  const base = apply(CAT16, [baseline.x, baseline.y, baseline.z]);
  const gain = (k: 0 | 1 | 2) => (degree * white.y * base[k]) / (baseline.y * has[k]) + 1 - degree;
  return [gain(0), gain(1), gain(2)];
}
