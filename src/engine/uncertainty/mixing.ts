import { multiply } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';
import { covarianceOf, sumOf } from './covariance';
import type { LabCovariance } from './lab-error';
import { labByXyz, xyzByLab } from './lab-slopes';

/** One colour of a mixture and its errors. */
export interface ErringPart {
  readonly lab: Lab<'D65-2'>;
  /** Its share of the light, 0-1. */
  readonly weight: number;
  /** Errors of L*, a*, b* by three standard normal numbers. */
  readonly axes: Matrix3;
  /** Parts of one source have the same three numbers; sources are independent. */
  readonly source: string;
}

/** How an error of a part moves the colour of a mixture in linear light: first order, row major. */
export function mixingSlopes(mixture: Lab<'D65-2'>, part: Lab<'D65-2'>, weight: number): Matrix3 {
  const slopes = multiply(labByXyz(mixture), xyzByLab(part));
  return slopes.map((slope) => slope * weight) as unknown as Matrix3;
}

/** Covariance of the colour `mixture` that the parts make together. */
export function mixedCovariance(mixture: Lab<'D65-2'>, parts: readonly ErringPart[]): LabCovariance {
  const bySource = new Map<string, Matrix3>();
  for (const { lab, weight, axes, source } of parts) {
    const errors = multiply(mixingSlopes(mixture, lab, weight), axes);
    const before = bySource.get(source);
    bySource.set(source, before ? sumOf([before, errors]) : errors);
  }
  return sumOf([...bySource.values()].map(covarianceOf));
}
