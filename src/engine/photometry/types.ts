/**
 * Luminous intensities of a lamp, IES LM-63 type C: vertical angles rise from straight down (0) to 90 or 180 degrees,
 * horizontal angles from 0 to 0, 90, 180 or 360 (rotational, quadrant, bilateral, no symmetry), counted counter-clockwise
 * as seen from above a lamp that points down. Horizontal angle 0 lies along the lamp's length.
 */
export interface PhotometricWeb {
  readonly vertical_deg: Float64Array;
  readonly horizontal_deg: Float64Array;
  /** cd, horizontal angle after horizontal angle, vertical angles within. */
  readonly candela: Float64Array;
}

/**
 * How the light of a lamp spreads from its face; straight ahead is the face's normal. The lamp's lumens scale all of it, also
 * what a web sends backwards (beyond 90 degrees): that is lost behind the face, as it is in the ceiling over a recessed lamp.
 */
export type Beam =
  | { readonly kind: 'lambert' }
  /** I = I0 cos^exponent. */
  | { readonly kind: 'cosine-power'; readonly exponent: number }
  /** `turn_deg` turns horizontal angle 0 from the face's u edge about the normal, towards v. */
  | { readonly kind: 'web'; readonly web: PhotometricWeb; readonly turn_deg: number };
