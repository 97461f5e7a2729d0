import type { Vec3 } from '../light/types';
import { reachedOfSeen, type Widths } from './ggx';

/** One lookup of a brushed lobe: local direction (x along the brush lines, z along the normal), share of the mirrored light, half angle, rad. */
export interface BrushTap {
  readonly direction: Vec3;
  readonly weight: number;
  readonly cone: number;
}

const TAPS = 8;

/**
 * Where an eye in local direction `toEye` (unit, z > 0) looks in a brushed mirror: eight lookups in the middles of equal parts of the
 * facets it sees. The slopes y = a tan(t) of GGX's facets across the brush, whatever those along it, have a density in t of cos(t);
 * how large they look goes with (z + y e), e and z the eye's direction across and up. The visible part up to t so is proportional to
 * z sin(t) - a e cos(t) = R sin(t - d), which goes from -1 to cos(d) where d > 0, else from -cos(d) to 1, and can be turned round.
 * Each part weighs by how much of the light reaches it; weights sum to 1. The twin of `shaders/brushed.glsl`.
 */
export function brushTaps(widths: Widths, toEye: Vec3): readonly BrushTap[] {
  const [along, across] = widths;
  const [x, e, z] = toEye;
  const r = Math.hypot(z, across * e);
  const [sinD, cosD] = [(across * e) / r, z / r];
  const step = (1 + cosD) / TAPS;
  const from = sinD > 0 ? -1 : -cosD;
  const taps: BrushTap[] = [];
  for (let i = 0; i < TAPS; i++) {
    const s = from + (i + 0.5) * step;
    const c = Math.sqrt(1 - s * s);
    const [sin, cos] = [s * cosD + c * sinD, c * cosD - s * sinD];
    const slope = (across * sin) / cos;
    const length2 = 1 + slope * slope;
    const twice = (2 * (z + slope * e)) / length2;
    const direction: Vec3 = [-x, twice * slope - e, twice - z];
    if (direction[2] <= 0) continue;
    taps.push({
      direction,
      weight: reachedOfSeen(widths, toEye, direction),
      // Facets of that slope spread along the brush by a_x / cos(t); a mirrored direction turns twice as far as its facet.
      cone: Math.max((2 * along) / cos, (across * step) / (c * cos * cos * length2)),
    });
  }
  const whole = taps.reduce((sum, { weight }) => sum + weight, 0);
  return taps.map((tap) => ({ ...tap, weight: tap.weight / whole }));
}
