import { localMetricCiede2000 } from '../color/difference';
import { apply } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';

/** Covariance of errors of L*, a*, b*: symmetric, row major. */
export type LabCovariance = Matrix3;

/** Errors of lightness, and in the two directions of chroma and hue, share an uncertainty as 1, 0.7 and 0.7: our judgment. */
const LIGHTNESS_PART = 1 / Math.hypot(1, 0.7, 0.7);

/**
 * Columns that turn three standard normal numbers into an error of L*, a*, b*: lightness, then towards red, then towards
 * yellow. Errors of chroma and of hue are alike in CIEDE2000 units (local weights, stretch of a*, rotation term), lightness
 * has 1 / 0.7 of each, and the root mean square CIEDE2000 difference is `uncertaintyDe00` for small errors: within 1 %
 * up to 1 and 4 % up to 2.5; at 5 (a photo, by eye, a screen) 0.84 of it near white and black, 1.16 in a dark blue.
 * The chromatic columns are the symmetric square root, not the directions of chroma and hue: the same spread, but without
 * a jump at the neutral axis, and two colours with the same three numbers err the same way.
 * `lightnessDe00`: the part of lightness where that is known apart, as from a light reflectance value; the rest is chromatic.
 */
export function errorAxes(lab: Lab<'D65-2'>, uncertaintyDe00: number, lightnessDe00?: number): Matrix3 {
  const metric = localMetricCiede2000(lab);
  const ofLightness = Math.min(uncertaintyDe00, lightnessDe00 ?? LIGHTNESS_PART * uncertaintyDe00);
  const chromatic = Math.sqrt((uncertaintyDe00 ** 2 - ofLightness ** 2) / 2);
  // Inverse of the 2 x 2 metric of a* and b*, then its root: sqrt(S) = (S + sqrt(det S) I) / sqrt(trace S + 2 sqrt(det S)).
  const determinant = metric[4] * metric[8] - metric[5] * metric[5];
  const [aa, ab, bb] = [metric[8] / determinant, -metric[5] / determinant, metric[4] / determinant];
  const root = 1 / Math.sqrt(determinant);
  const scale = chromatic / Math.sqrt(aa + bb + 2 * root);
  const l = ofLightness / Math.sqrt(metric[0]);
  return [l, 0, 0, 0, (aa + root) * scale, ab * scale, 0, ab * scale, (bb + root) * scale];
}

/** What the colour may be: `lab` with the error of three standard normal numbers (`errorAxes`); L* held inside 0-100. */
export function drawLab(
  lab: Lab<'D65-2'>,
  uncertaintyDe00: number,
  normals: readonly [number, number, number],
  lightnessDe00?: number,
): Lab<'D65-2'> {
  const [l, a, b] = apply(errorAxes(lab, uncertaintyDe00, lightnessDe00), normals);
  return { l: Math.min(100, Math.max(0, lab.l + l)), a: lab.a + a, b: lab.b + b };
}

/** Covariance of the errors of a colour known to `uncertaintyDe00`. */
export function labCovariance(lab: Lab<'D65-2'>, uncertaintyDe00: number, lightnessDe00?: number): LabCovariance {
  const [ll, , , , aa, ab, , , bb] = errorAxes(lab, uncertaintyDe00, lightnessDe00);
  return [ll * ll, 0, 0, 0, aa * aa + ab * ab, ab * (aa + bb), 0, ab * (aa + bb), ab * ab + bb * bb];
}

/** Root mean square CIEDE2000 difference of errors with this covariance around `lab`: the inverse of `labCovariance`. */
export function rmsDe00(lab: Lab<'D65-2'>, covariance: LabCovariance): number {
  const metric = localMetricCiede2000(lab);
  return Math.sqrt(metric.reduce((sum, weight, i) => sum + weight * covariance[i]!, 0));
}
