import { chromaOf } from '../color/lab';
import type { Lab } from '../color/types';
import type { InstalledReading } from './input';

/**
 * A reading with the tint of its place taken off: its color relative to the perfect white held there, as CIELAB relates
 * a color to its white, cube root by cube root. For a white this subtracts a* and b*; a dark surface takes on less tint
 * than a white, so it loses less. What is left is charged to the finish and the lamp.
 * @param placeWhite reading of the perfect white; only its a* and b* count, its L* is taken as 100
 */
export function withoutTint(lab: Lab<'D65-2'>, placeWhite: Pick<Lab<'D65-2'>, 'a' | 'b'>): Lab<'D65-2'> {
  if (placeWhite.a === 0 && placeWhite.b === 0) return lab;
  const fy = (lab.l + 16) / 116;
  const fx = (fy + lab.a / 500) / (1 + placeWhite.a / 500);
  const fz = (fy - lab.b / 200) / (1 - placeWhite.b / 200);
  return { l: lab.l, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** The same the other way: a color of a place without tint as it reads where the perfect white reads `placeWhite`. */
export function withTint(lab: Lab<'D65-2'>, placeWhite: Pick<Lab<'D65-2'>, 'a' | 'b'>): Lab<'D65-2'> {
  const fy = (lab.l + 16) / 116;
  const fx = (fy + lab.a / 500) * (1 + placeWhite.a / 500);
  const fz = (fy - lab.b / 200) * (1 - placeWhite.b / 200);
  return { l: lab.l, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** A place as it would be read under light of one color: the mix of lights taken off, the tint of the surfaces left on. */
export interface SurfacesTint {
  /** a*, b* of a perfect white there, from the surfaces alone. */
  readonly white: Lab<'D65-2'>;
  readonly average: Lab<'D65-2'>;
  /** True where the lights mix to another white than on the counter, by what people can tell. */
  readonly isMixed: boolean;
}

/** Chroma of a white from which people may tell it from a white: the perceptible limit, near the neutral axis. */
const TOLD_CHROMA = 0.8;

/** What the surfaces around make of a reading, apart from the mix of lights that falls there. */
export const surfacesTint = ({
  placeWhite,
  lightWhite,
  average,
}: Pick<InstalledReading, 'placeWhite' | 'lightWhite' | 'average'>): SurfacesTint => ({
  white: withoutTint(placeWhite, lightWhite),
  average: withoutTint(average, lightWhite),
  isMixed: chromaOf(lightWhite) >= TOLD_CHROMA,
});
