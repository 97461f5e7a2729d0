import { inverse } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';
import { D65_2 } from '../color/whites';

const DELTA = 6 / 29;

/** Slope of the cube of CIELAB (ISO/CIE 11664-4:2019), 3 f^2, and of its straight piece near black. */
const slope = (f: number): number => 3 * Math.max(f, DELTA) ** 2;

/** Slopes of X, Y, Z (100 for the perfect diffuser) in L*, a*, b* at a colour; row major, a row each for X, Y, Z. */
export function xyzByLab(lab: Lab<'D65-2'>): Matrix3 {
  const fy = (lab.l + 16) / 116;
  const x = D65_2.x * slope(fy + lab.a / 500);
  const y = D65_2.y * slope(fy);
  const z = D65_2.z * slope(fy - lab.b / 200);
  return [x / 116, x / 500, 0, y / 116, 0, 0, z / 116, 0, -z / 200];
}

/** Slopes of L*, a*, b* in X, Y, Z: the inverse of `xyzByLab`. */
export const labByXyz = (lab: Lab<'D65-2'>): Matrix3 => inverse(xyzByLab(lab));
