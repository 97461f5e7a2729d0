import { apply } from '../color/matrix3';
import type { White, Xyz } from '../color/types';
import { compressed, expanded } from './cone-response';
import { hueQuadrature } from './hue-quadrature';
import type { AdaptedCones, ViewingConditions } from './viewing-conditions';

/** What a colour appearance model says of a colour. */
export interface Cam {
  /** Lightness, 0-100 for surfaces, 100 the white. */
  readonly j: number;
  /** Chroma. */
  readonly c: number;
  /** Hue angle, degrees in [0, 360); 0 where there is no hue. */
  readonly h_deg: number;
  /** Brightness. */
  readonly q: number;
  /** Colourfulness. */
  readonly m: number;
  /** Saturation. */
  readonly s: number;
  /** Hue quadrature, 0-400: 0 red, 100 yellow, 200 green, 300 blue. */
  readonly hueQuadrature: number;
}

/** As much of a `Cam` as a colour can be found from. */
export type CamGiven = ({ readonly j: number } | { readonly q: number }) &
  ({ readonly m: number } | { readonly c: number } | { readonly s: number }) & { readonly h_deg: number };

const RADIANS = Math.PI / 180;

/** The steps that CIECAM02 and CAM16 share, forward (CIE 159:2004, equations 17-28). */
export function correlatesFromXyz<W extends White>(
  xyz: Xyz<W>,
  conditions: ViewingConditions<W>,
  cones: AdaptedCones,
): Cam {
  const [r, g, b] = compressed(apply(cones.fromXyz, [xyz.x, xyz.y, xyz.z]), conditions.fl);
  const redGreen = r - (12 * g - b) / 11;
  const yellowBlue = (r + g - 2 * b) / 9;
  const angle = Math.atan2(yellowBlue, redGreen) / RADIANS;
  const h_deg = angle < 0 ? angle + 360 : angle;

  // Sums of responses end at black: the models give no rule below it, and a power of a negative number would be no number.
  // CAM16 never gets there with a surface, CIECAM02 with faint violets of almost one wavelength.
  const achromatic = Math.max(0, 2 * r + g + 0.05 * b) * conditions.nbb;
  const rootJ = (achromatic / cones.achromaticWhite) ** (0.5 * conditions.c * conditions.z);
  const sum = Math.max(0, r + g + 1.05 * b) + 0.305;
  const t = (opponentGain(h_deg, conditions) * Math.hypot(redGreen, yellowBlue)) / sum;
  const alpha = t ** 0.9 * backgroundFactor(conditions);
  const c = alpha * rootJ;
  return {
    j: 100 * rootJ * rootJ,
    c,
    h_deg,
    q: rootJ * brightnessOfWhite(conditions, cones),
    m: c * conditions.flRoot,
    s: 50 * Math.sqrt((conditions.c * alpha) / (cones.achromaticWhite + 4)),
    hueQuadrature: hueQuadrature(h_deg),
  };
}

/** The same backward: from lightness or brightness, from colourfulness, chroma or saturation, and hue. */
export function xyzFromCorrelates<W extends White>(
  cam: CamGiven,
  conditions: ViewingConditions<W>,
  cones: AdaptedCones,
): Xyz<W> {
  const rootJ = 'j' in cam ? Math.sqrt(cam.j / 100) : cam.q / brightnessOfWhite(conditions, cones);
  if (!(rootJ > 0)) return { x: 0, y: 0, z: 0 };
  const t = (alphaOf(cam, rootJ, conditions, cones) / backgroundFactor(conditions)) ** (1 / 0.9);
  const cos = Math.cos(cam.h_deg * RADIANS);
  const sin = Math.sin(cam.h_deg * RADIANS);
  const achromatic = (cones.achromaticWhite * rootJ ** (2 / (conditions.c * conditions.z))) / conditions.nbb;
  const reach =
    (23 * (achromatic + 0.305) * t) / (23 * opponentGain(cam.h_deg, conditions) + t * (11 * cos + 108 * sin));
  const a = reach * cos;
  const b = reach * sin;
  const [x, y, z] = apply(
    cones.toXyz,
    expanded(
      [
        (460 * achromatic + 451 * a + 288 * b) / 1403,
        (460 * achromatic - 891 * a - 261 * b) / 1403,
        (460 * achromatic - 220 * a - 6300 * b) / 1403,
      ],
      conditions.fl,
    ),
  );
  return { x, y, z };
}

function alphaOf(cam: CamGiven, rootJ: number, conditions: ViewingConditions<White>, cones: AdaptedCones): number {
  if ('c' in cam) return cam.c / rootJ;
  if ('m' in cam) return cam.m / conditions.flRoot / rootJ;
  return ((cam.s / 50) ** 2 * (cones.achromaticWhite + 4)) / conditions.c;
}

const brightnessOfWhite = (conditions: ViewingConditions<White>, cones: AdaptedCones): number =>
  (4 / conditions.c) * (cones.achromaticWhite + 4) * conditions.flRoot;

const backgroundFactor = ({ n }: ViewingConditions<White>): number => (1.64 - 0.29 ** n) ** 0.73;

/** 50000/13 Nc Ncb times the eccentricity of the hue. */
const opponentGain = (h_deg: number, { nc, nbb }: ViewingConditions<White>): number =>
  (50000 / 13) * nc * nbb * 0.25 * (Math.cos(h_deg * RADIANS + 2) + 3.8);
