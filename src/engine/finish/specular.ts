import { differenceCiede2000 } from '../color/difference';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import { lrvFromReflectance } from '../color/lrv';
import { fresnelUnpolarized } from '../sheen/fresnel';
import type { ReflectanceSpd } from '../spectrum/types';
import type { FinishClass, FinishComponent } from './types';

// Which reflectance this program computes with: mirror-like reflection included (SCI, sphere geometry di:8 of CIE 15:2018;
// what LRV is read with, BS 8493). It is what a surface sends back of light that comes from everywhere, as in a room on
// average; excluded (SCE) is nearer to what an eye sees that holds the sample so that no lamp mirrors in it.

/** Refractive index of varnishes, glazes, polished stone and plastics: 1.5 to within 0.05 (common practice, no source). */
export const INDEX_OF_COATINGS = 1.5;
/** ISO 2813:2014: black glass of this index reads 100 gloss units. */
export const INDEX_OF_GLOSS_STANDARD = 1.567;
const GLOSS_ANGLE_DEG = 60;
/** Sphere instruments look 8 degrees from the normal (CIE 15:2018, 5.1). */
export const SPHERE_ANGLE_DEG = 8;

/** Reflectance of a smooth surface of a refractive index for unpolarised light (Fresnel), 0-1; angle from the normal, 0-90. */
export const fresnelReflectance = (index: number, angle_deg: number): number =>
  fresnelUnpolarized(index, Math.cos((angle_deg * Math.PI) / 180));

/** 4.0 % of the light of a sphere instrument. */
const WHOLE_MIRROR = fresnelReflectance(INDEX_OF_COATINGS, SPHERE_ANGLE_DEG);

/** Gloss units of a perfectly smooth surface of index 1.5 on the scale of the standard: 89. */
const MOST_GLOSS_GU =
  (100 * fresnelReflectance(INDEX_OF_COATINGS, GLOSS_ANGLE_DEG)) /
  fresnelReflectance(INDEX_OF_GLOSS_STANDARD, GLOSS_ANGLE_DEG);

/**
 * Gloss units that a perfect matt white reads by its diffuse light alone: 0.5 x solid angle / pi of it reaches the receptor
 * (4.4 x 11.7 degrees at 60 degrees, ISO 2813), of a tenth of which the standard's 100 units are made.
 */
export const GLOSS_OF_MATT_WHITE_GU = 2.5;

/**
 * The part of a sphere instrument's light that comes back as from a mirror, 0-0.04: what a trap takes away. In proportion to
 * the gloss at 60 degrees, less what a matt surface of luminance factor `y` (0-1) reads by its diffuse light; whole from the
 * gloss of a perfectly smooth surface on. The proportion is a model of our own; the two reflectances are Fresnel's.
 * Not for metals: nearly all of their light comes back so.
 */
export function mirrorPart(glossGu: number, y: number): number {
  const mirrorGloss = glossGu - GLOSS_OF_MATT_WHITE_GU * y;
  return WHOLE_MIRROR * Math.min(1, Math.max(0, mirrorGloss / MOST_GLOSS_GU));
}

/** No curve of the family that a color may have reaches 1. */
const MOST_REFLECTED = 1 - 1e-6;

/** A reflectance measured with the mirror-like part excluded, with that part put back (see `mirrorPart`); below 1 where it was. */
export function withMirrorPart(rho: ReflectanceSpd, glossGu: number): ReflectanceSpd {
  const part = mirrorPart(glossGu, lrvFromReflectance(rho) / 100);
  return rho.map((value) => Math.max(value, Math.min(MOST_REFLECTED, value + part))) as ReflectanceSpd;
}

/**
 * How far a colour would be off if the mirror-like part had been excluded and nobody said so, CIEDE2000; 0 where it was said.
 * For a metal nobody can tell: null.
 */
export function specularDoubtDe00(
  component: Pick<FinishComponent, 'spectrum' | 'specular'>,
  finishClass: FinishClass,
  glossGu: number,
): number | null {
  if (component.specular) return 0;
  if (finishClass === 'metal') return null;
  const { spectrum } = component;
  return differenceCiede2000(labD65FromReflectance(spectrum), labD65FromReflectance(withMirrorPart(spectrum, glossGu)));
}
