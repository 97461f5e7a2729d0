import { BRADFORD, BRADFORD_INVERSE, CAT16, CAT16_INVERSE } from './cone-spaces';
import { apply, applyRow, diagonal, multiply } from './matrix3';
import type { Matrix3, White, Xyz } from './types';
import { C_2, D65_2 } from './whites';

/**
 * CAT16 as one matrix, for many colours under the same pair of whites.
 * `degree` is the degree of adaptation D, 0-1: at 1 the white of the first light becomes exactly the white of the second.
 */
export function adaptationMatrix(fromWhite: Xyz<White>, toWhite: Xyz<White>, degree = 1): Matrix3 {
  return coneScaling(CAT16, CAT16_INVERSE, fromWhite, toWhite, degree);
}

/** Colour that looks the same under `toWhite` as `xyz` does under `fromWhite` (CAT16; see `adaptationMatrix`). */
export function adaptXyz<To extends White>(
  xyz: Xyz<White>,
  fromWhite: Xyz<White>,
  toWhite: Xyz<To>,
  degree = 1,
): Xyz<To> {
  return adaptXyzBy<To>(adaptationMatrix(fromWhite, toWhite, degree), xyz);
}

/** Tristimulus values through a ready adaptation matrix. */
function adaptXyzBy<To extends White>(matrix: Matrix3, xyz: Xyz<White>): Xyz<To> {
  const { x, y, z } = xyz;
  return {
    x: applyRow(matrix, 0, x, y, z),
    y: applyRow(matrix, 3, x, y, z),
    z: applyRow(matrix, 6, x, y, z),
  };
}

const BRADFORD_D65_TO_C = coneScaling(BRADFORD, BRADFORD_INVERSE, D65_2, C_2, 1);
const BRADFORD_C_TO_D65 = coneScaling(BRADFORD, BRADFORD_INVERSE, C_2, D65_2, 1);

/** From D65 to illuminant C by linear Bradford: the way into the Munsell renotation, which is defined under C. */
export const bradfordD65ToC = (xyz: Xyz<'D65-2'>): Xyz<'C-2'> => adaptXyzBy<'C-2'>(BRADFORD_D65_TO_C, xyz);

/** From illuminant C to D65 by linear Bradford: the way out of the Munsell renotation. */
export const bradfordCToD65 = (xyz: Xyz<'C-2'>): Xyz<'D65-2'> => adaptXyzBy<'D65-2'>(BRADFORD_C_TO_D65, xyz);

/** Linear Bradford as one matrix between any two whites, complete adaptation. */
export function bradfordMatrix(fromWhite: Xyz<White>, toWhite: Xyz<White>): Matrix3 {
  return coneScaling(BRADFORD, BRADFORD_INVERSE, fromWhite, toWhite, 1);
}

function coneScaling(
  cones: Matrix3,
  conesInverse: Matrix3,
  fromWhite: Xyz<White>,
  toWhite: Xyz<White>,
  degree: number,
): Matrix3 {
  const [r, g, b] = apply(cones, [fromWhite.x, fromWhite.y, fromWhite.z]);
  const [rTo, gTo, bTo] = apply(cones, [toWhite.x, toWhite.y, toWhite.z]);
  // Whites may come on different Y scales; the ratio keeps a factor of luminance a factor of luminance.
  const y = fromWhite.y / toWhite.y;
  const gain = (from: number, to: number) => degree * y * (to / from) + 1 - degree;
  return multiply(conesInverse, multiply(diagonal([gain(r, rTo), gain(g, gTo), gain(b, bTo)]), cones));
}
