/**
 * Luminous intensities of a lamp, IES LM-63 type C: vertical angles from straight down (0) to 90 or 180 degrees, horizontal
 * angles from 0 to 0, 90, 180 or 360 (rotational, quadrant, bilateral, no symmetry).
 */
export interface PhotometricWeb {
  readonly vertical_deg: Float64Array;
  readonly horizontal_deg: Float64Array;
  /** cd, horizontal angle after horizontal angle, vertical angles within. */
  readonly candela: Float64Array;
}

/** How the light of a lamp spreads from its face. The lamp's lumens scale it; straight ahead is the face's normal. */
export type Beam =
  | { readonly kind: 'lambert' }
  /** I = I0 cos^exponent. */
  | { readonly kind: 'cosine-power'; readonly exponent: number }
  /** `turn_deg` turns horizontal angle 0 from the face's u edge about the normal. */
  | { readonly kind: 'web'; readonly web: PhotometricWeb; readonly turn_deg: number };
