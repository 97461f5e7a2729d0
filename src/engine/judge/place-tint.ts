import type { Lab } from '../color/types';

/**
 * A reading with the tint of its place taken off: its color relative to the perfect white held there, as CIELAB relates
 * a color to its white, cube root by cube root. For a white this subtracts a* and b*; a dark surface takes on less tint
 * than a white, so it loses less. What is left is charged to the finish and the lamp.
 * @param placeWhite reading of the perfect white; only its a* and b* count, its L* is taken as 100
 */
export function withoutTint(lab: Lab<'D65-2'>, placeWhite: Pick<Lab<'D65-2'>, 'a' | 'b'>): Lab<'D65-2'> {
  const fy = (lab.l + 16) / 116;
  const fx = (fy + lab.a / 500) / (1 + placeWhite.a / 500);
  const fz = (fy - lab.b / 200) / (1 - placeWhite.b / 200);
  return { l: lab.l, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}
