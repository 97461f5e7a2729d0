import { CAT02, CAT02_INVERSE, CAT16, HUNT_POINTER_ESTEVEZ } from '../color/cone-spaces';
import { apply, diagonal, inverse, multiply } from '../color/matrix3';
import type { Matrix3, White, Xyz } from '../color/types';
import { compressed } from './cone-response';

/** How bright what lies around the field is: as bright, dimmer (a television in the evening), dark (a cinema). */
export type Surround = keyof typeof SURROUNDS;

/** F, c and Nc of the surrounds (CIE 159:2004, table 1; the same in CIE 248:2022). */
const SURROUNDS = {
  average: { f: 1, c: 0.69, nc: 1 },
  dim: { f: 0.9, c: 0.59, nc: 0.9 },
  dark: { f: 0.8, c: 0.525, nc: 0.8 },
} as const;

/** Conditions under which a colour is looked at. */
export interface ViewedUnder<W extends White> {
  /** The adopted white, on the scale of the colours (perfect diffuser Y = 100). */
  readonly white: Xyz<W>;
  /** Luminance the eye adapts to, cd/m2, above 0; by custom a fifth of the white's. */
  readonly la_cd_m2: number;
  /** Luminance factor of the background, on the white's scale, above 0; 20 for a room or a gray. */
  readonly yb: number;
  /** Average when left out. */
  readonly surround?: Surround;
  /** Degree of adaptation, 0-1; as `adaptationDegree` has it when left out; 1 where the lamp is discounted. */
  readonly degree?: number;
}

/** What a cone space makes of a white: part of `ViewingConditions`. */
export interface AdaptedCones {
  /** Tristimulus values to adapted cone responses, and back. */
  readonly fromXyz: Matrix3;
  readonly toXyz: Matrix3;
  /** Achromatic response of the white. */
  readonly achromaticWhite: number;
}

/** Everything CIECAM02 and CAM16 need of the conditions, ready for many colours. */
export interface ViewingConditions<W extends White> {
  readonly c: number;
  readonly nc: number;
  /** Factor of luminance level, and its fourth root. */
  readonly fl: number;
  readonly flRoot: number;
  /** Yb / Yw, the exponent base z, and the induction factors Nbb = Ncb. */
  readonly n: number;
  readonly z: number;
  readonly nbb: number;
  readonly degree: number;
  readonly white: Xyz<W>;
  readonly ciecam02: AdaptedCones;
  readonly cam16: AdaptedCones;
}

/**
 * Degree of adaptation D, clipped to 0-1 (CIE 159:2004, equation 10; clipping as in CIE 248:2022).
 * `f` is the F of the surround (1 average, 0.9 dim, 0.8 dark), `la_cd_m2` the luminance the eye adapts to.
 */
export function adaptationDegree(f: number, la_cd_m2: number): number {
  const degree = f * (1 - (1 / 3.6) * Math.exp((-la_cd_m2 - 42) / 92));
  return Math.min(1, Math.max(0, degree));
}

/** The parts of both models that depend on the conditions only. Throws a RangeError unless La, Yb and Yw are above 0. */
export function viewingConditions<W extends White>(under: ViewedUnder<W>): ViewingConditions<W> {
  const { white, la_cd_m2, yb } = under;
  if (!(la_cd_m2 > 0 && yb > 0 && white.y > 0)) throw new RangeError('an eye adapts to some light, not to none');
  const { f, c, nc } = SURROUNDS[under.surround ?? 'average'];
  const degree = under.degree ?? adaptationDegree(f, la_cd_m2);
  const k4 = (1 / (5 * la_cd_m2 + 1)) ** 4;
  const fl = k4 * la_cd_m2 + 0.1 * (1 - k4) ** 2 * Math.cbrt(5 * la_cd_m2);
  const n = yb / white.y;
  const nbb = 0.725 * n ** -0.2;

  const adaptedCones = (fromXyz: Matrix3): AdaptedCones => {
    const [r, g, b] = compressed(apply(fromXyz, [white.x, white.y, white.z]), fl);
    return { fromXyz, toXyz: inverse(fromXyz), achromaticWhite: (2 * r + g + 0.05 * b) * nbb };
  };
  const gains = (cones: Matrix3) => {
    const [r, g, b] = apply(cones, [white.x, white.y, white.z]);
    const gain = (response: number) => (degree * white.y) / response + 1 - degree;
    return multiply(diagonal([gain(r), gain(g), gain(b)]), cones);
  };
  return {
    c,
    nc,
    fl,
    flRoot: fl ** 0.25,
    n,
    z: 1.48 + Math.sqrt(n),
    nbb,
    degree,
    white,
    ciecam02: adaptedCones(multiply(HUNT_POINTER_ESTEVEZ, multiply(CAT02_INVERSE, gains(CAT02)))),
    cam16: adaptedCones(gains(CAT16)),
  };
}
