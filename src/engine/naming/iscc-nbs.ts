import { HUE_SECTORS } from './iscc-nbs-blocks.data';
import { LEVEL_2, LEVEL_3 } from './iscc-nbs-names.data';
import type { Munsell } from './munsell';

/** A colour name of the ISCC-NBS system with the two coarser names it belongs to; lower case. */
export interface IsccNbsName {
  /** 1-267. */
  readonly block: number;
  /** Level 3, for example 'light yellowish brown'. */
  readonly name: string;
  /** Level 2 (29 names), for example 'yellowish brown'. */
  readonly level2: string;
  /** Level 1 (13 names), for example 'brown'. */
  readonly level1: string;
}

/** Block 1 at index 0. */
export const ISCC_NBS_NAMES: readonly IsccNbsName[] = LEVEL_3.flatMap(([group, names]) =>
  names.split(',').map((name) => ({ name, level2: LEVEL_2[group]![0], level1: LEVEL_2[group]![1] })),
).map((entry, index) => ({ block: index + 1, ...entry }));

interface HueSector {
  readonly beginsAt: number;
  /** Five numbers per rectangle: block, value from, value to, chroma from, chroma to. */
  readonly rectangles: Float64Array;
}

const SECTORS: readonly HueSector[] = HUE_SECTORS.map(([beginsAt, text]) => ({
  beginsAt,
  rectangles: Float64Array.from(
    text
      .split(';')
      .flatMap((rectangle) => rectangle.split(' ').map((x) => (x === '~' ? Number.POSITIVE_INFINITY : +x))),
  ),
}));

/**
 * ISCC-NBS name of a Munsell colour (Kelly and Judd 1955, NBS Circular 553). Every colour has exactly one.
 * `hue100` on the circle of 100, value 0-10, chroma from 0 up; other values are a bug in the caller and throw.
 */
export const isccNbsName = ({ hue100, value, chroma }: Omit<Munsell, 'notation'>): IsccNbsName =>
  ISCC_NBS_NAMES[isccNbsBlock(hue100, value, chroma) - 1]!;

/** Number of the block, 1-267, that a Munsell colour lies in; as `isccNbsName`. */
export function isccNbsBlock(hue100: number, value: number, chroma: number): number {
  if (Number.isFinite(hue100) && value <= 10) {
    const { rectangles } = sectorOf(((hue100 % 100) + 100) % 100);
    for (let i = 0; i < rectangles.length; i += 5) {
      if (
        value >= rectangles[i + 1]! &&
        value < rectangles[i + 2]! &&
        chroma >= rectangles[i + 3]! &&
        chroma < rectangles[i + 4]!
      ) {
        return rectangles[i]!;
      }
    }
  }
  throw new RangeError(`no color name for hue ${hue100}, value ${value}, chroma ${chroma}`);
}

/** The last sector wraps through 0, so hues below the first beginning belong to it. */
function sectorOf(hue: number): HueSector {
  for (let i = SECTORS.length - 1; i >= 0; i--) {
    if (hue >= SECTORS[i]!.beginsAt) return SECTORS[i]!;
  }
  return SECTORS[SECTORS.length - 1]!;
}
