/**
 * How bright the round opening of a shade looks from its middle to its rim, beside its mean. A bulb that shines to all sides hangs in the
 * middle of a white shade; the opening is seen as a matt pane under it. Straight from the bulb, at height h over a pane of radius r, come
 * cos^4 of the angle, which has the mean 1 / (1 + k) over the pane, k = (r / h)^2; what the shade sends back is even:
 *
 *   share(rho) = even + (1 - even) (1 + k) / (1 + k rho^2)^2,   rho from 0 in the middle to 1 at the rim
 */
export interface ShadeFalloff {
  /** Part of the light that comes by way of the shade, 0-1. */
  readonly even: number;
  readonly k: number;
}

/** Of white lacquer inside (common practice, no source). */
const REFLECTANCE = 0.8;
/** Inner area of a shade over that of its opening: half a sphere has 2. */
const AREAS = 2;

/** `height` of the shade over the radius of its opening; the bulb hangs at half of it. */
export function shadeFalloff(height: number): ShadeFalloff {
  const bulb = height / 2;
  const k = 1 / (bulb * bulb);
  // Solid angle of the opening from the bulb over the whole sphere.
  const straight = (1 - bulb / Math.hypot(1, bulb)) / 2;
  // An even cavity: a wall sends 1 / AREAS of what it reflects out (form factors are reciprocal), the rest meets walls again.
  const out = REFLECTANCE / AREAS / (1 - REFLECTANCE * (1 - 1 / AREAS));
  const byShade = (1 - straight) * out;
  return { even: byShade / (byShade + straight), k };
}

/** Luminance at a place over the mean of the opening; `rho` from the middle over the radius, 0-1. The twin of lamp.frag. */
export const shadeShare = ({ even, k }: ShadeFalloff, rho: number): number =>
  even + ((1 - even) * (1 + k)) / (1 + k * rho * rho) ** 2;
