import { GLOSS_OF_MATT_WHITE_GU, INDEX_OF_COATINGS, SPHERE_ANGLE_DEG } from '../finish/specular';
import type { ReflectanceSpd } from '../spectrum/types';
import { coatAlbedo, metalWhite, ROUGHEST } from './albedo';
import { fresnelUnpolarized, schlickWeight } from './fresnel';
import type { Widths } from './ggx';
import { alphaOfBrushedShare, alphaOfShare } from './gloss-alpha';
import { GLASS_AT_60 } from './gloss-meter';

// How a finish's reflectance, which counts the mirror-like part (see ../finish/specular.ts), parts into a body that scatters and
// a mirror. A reflectance is what comes back of light from all sides at 8 degrees (di:8, CIE 15:2018), so the parts are set to sum
// to it exactly there. At any other angle the mirror takes its Fresnel share R of the light first and the body what enters:
//
//   coat:   rho(angle) = R(angle) + body (1 - R(angle)),  body = (rho - R(8)) / (1 - R(8))
//   metal:  rho(angle) = s(angle) + F0 (1 - s(angle)),    F0 = (rho - s(8)) / (1 - s(8))
//
// Both are mixtures of 1 and something below 1: under uniform light nothing sends back more than it gets. Taken per direction of the
// light the body is f = body (1 - R(in)) (1 - R(out)) / (pi (1 - mean R)), the reciprocal form of C. Kelemen and L. Szirmay-Kalos
// (A microfacet based coupled specular-matte BRDF model, 2001). Irradiance has no direction left, so (1 - R(in)) is replaced by its
// mean: right for light from all sides, up to a tenth too much for a lamp at grazing incidence on a counter.

const COSINE_OF_SPHERE = Math.cos((SPHERE_ANGLE_DEG * Math.PI) / 180);

/** Up to here a finish counts as matt, from here on its whole mirror shows; between, a part of it. Our judgment. */
const MATT_GU = 5;
const WHOLE_MIRROR_GU = 10;

/**
 * Slopes of a brushed metal across its brush lines over those along them. Our judgment for a belt-ground sheet; rolled brass measures
 * 3.2, rolled aluminum 2.2, a lightly brushed one 1.5 (G. Ward, Measuring and modeling anisotropic reflection, 1992).
 */
export const BRUSH_RATIO = 4;
const ROOT_OF_RATIO = Math.sqrt(BRUSH_RATIO);

/** How a finish mirrors. */
export interface Sheen {
  /**
   * Width of the GGX lobe's slopes, 0 = a clear mirror. Of a brushed metal the mean of both widths: the white in its mirror, averaged
   * over all sides one may look from, is that of an even lobe of this width (within 0.02 at a cosine of 0.1, 0.006 from 0.3 on).
   */
  readonly alpha: number;
  /** Of a brushed metal: along the brush lines, and across them. Absent: alpha both ways. */
  readonly widths?: Widths;
  /** Part of the mirror that is told apart from the body, 0-1: 0 for matt. The rest stays in the body's reflectance. */
  readonly part: number;
  readonly metal: boolean;
}

/**
 * The sheen of a finish by its gloss at 60 degrees (gloss units, ISO 2813) and luminous reflectance `y` (0-1); null for a matt one.
 * A coat of index 1.5 without roughness reads 89 units; what reads more is taken as smooth, too. For a metal, for which the standard
 * has no scale, the same units of flux are meant: a smooth one of `y` 0.6 would read over 600, so 100 is a brushed one. That of a
 * brushed metal is the mean of a reading along its brush lines and one across.
 */
export function sheenOfFinish(glossGu: number, y: number, metal: boolean, brushed = false): Sheen | null {
  if (!(glossGu > MATT_GU)) return null;
  const smooth = metal ? y + (1 - y) * schlickWeight(0.5) : fresnelUnpolarized(INDEX_OF_COATINGS, 0.5);
  const mirrorGloss = metal ? glossGu : glossGu - GLOSS_OF_MATT_WHITE_GU * y;
  const share = (mirrorGloss * GLASS_AT_60) / (100 * smooth);
  const part = Math.min(1, (glossGu - MATT_GU) / (WHOLE_MIRROR_GU - MATT_GU));
  if (!metal || !brushed) return { alpha: Math.min(ROUGHEST, alphaOfShare(share)), part, metal };
  const meanOfWidths = (ROOT_OF_RATIO + 1 / ROOT_OF_RATIO) / 2;
  const middle = Math.min(ROUGHEST / meanOfWidths, alphaOfBrushedShare(share));
  return { alpha: meanOfWidths * middle, widths: [middle / ROOT_OF_RATIO, middle * ROOT_OF_RATIO], part, metal };
}

/** Widths of the lobe along the brush lines and across them. */
export const widthsOf = ({ alpha, widths }: Sheen): Widths => widths ?? [alpha, alpha];

/** A reflectance parted as an eye at one angle meets it: linear in the reflectance, so that it serves any spectrum or colour. */
export interface SheenSplit {
  /** Body = `bodyScale` max(0, rho - `bodyLess`): a factor of the light that falls in from all sides. */
  readonly bodyLess: number;
  readonly bodyScale: number;
  /** Mirror = `mirrorWhite` + `mirrorScale` max(0, rho - `mirrorLess`): a factor of the light the lobe meets. */
  readonly mirrorWhite: number;
  readonly mirrorLess: number;
  readonly mirrorScale: number;
}

/** What a sphere instrument at 8 degrees gets of a coat's mirror, and of the white in a metal's, 0-1. */
const measuredWhite = ({ alpha, part, metal }: Sheen): number =>
  metal ? metalWhite(alpha, COSINE_OF_SPHERE) : part * coatAlbedo(alpha, COSINE_OF_SPHERE);

/** The body under a coat, or F0 of a metal, whose reflectance as measured is `rho`; per wavelength or colour channel, 0-1. */
export function baseReflectance(sheen: Sheen, rho: number): number {
  const measured = measuredWhite(sheen);
  return Math.max(0, rho - measured) / (1 - measured);
}

/** The parts for an eye at an angle to the normal of that cosine, 0-1. */
export function splitSheen(sheen: Sheen, cosine: number): SheenSplit {
  const { alpha, part, metal } = sheen;
  const measured = measuredWhite(sheen);
  if (metal) {
    const white = metalWhite(alpha, cosine);
    return {
      bodyLess: 0,
      bodyScale: 1 - part,
      mirrorWhite: part * white,
      mirrorLess: measured,
      mirrorScale: (part * (1 - white)) / (1 - measured),
    };
  }
  const mirror = part * coatAlbedo(alpha, cosine);
  return {
    bodyLess: measured,
    bodyScale: (1 - mirror) / (1 - measured),
    mirrorWhite: mirror,
    mirrorLess: 0,
    mirrorScale: 0,
  };
}

/** Body part of a reflectance (0-1), per wavelength or colour channel. */
export const bodyOf = ({ bodyLess, bodyScale }: SheenSplit, rho: number): number =>
  bodyScale * Math.max(0, rho - bodyLess);

/** Mirror part of a reflectance (0-1), per wavelength or colour channel. */
export const mirrorOf = ({ mirrorWhite, mirrorLess, mirrorScale }: SheenSplit, rho: number): number =>
  mirrorWhite + mirrorScale * Math.max(0, rho - mirrorLess);

/** Body part of a spectrum. */
export const bodySpectrum = (split: SheenSplit, rho: ReflectanceSpd): ReflectanceSpd =>
  rho.map((value) => bodyOf(split, value)) as ReflectanceSpd;
