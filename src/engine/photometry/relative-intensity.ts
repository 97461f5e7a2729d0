import type { Beam, PhotometricWeb } from './types';
import { frontShare, webFlux } from './web-flux';
import { intensityOf } from './web-intensity';

const DEGREES = 180 / Math.PI;

/** A beam ready to be read in many directions. Plain data. */
export interface ReadyBeam {
  /** I per front lumen = scale x cos^exponent, or scale x the web's candela. */
  readonly scale: number;
  readonly exponent: number;
  readonly web: PhotometricWeb | null;
  readonly turn_deg: number;
  /** Share of the lamp's lumens that leaves to the front, 0-1. */
  readonly frontShare: number;
  /** Angle in rad over which the intensity changes much. */
  readonly width: number;
}

/** Webs have edges that their peak does not tell of. */
const WEB_WIDTH = 0.15;

/** A beam made ready; null for Lambert, which needs no beam. Bad exponents are bugs and throw. */
export function readyBeam(beam: Beam | undefined): ReadyBeam | null {
  if (!beam || beam.kind === 'lambert') return null;
  if (beam.kind === 'cosine-power') {
    const { exponent } = beam;
    if (!(exponent >= 0 && exponent < Infinity)) throw new RangeError(`exponent ${exponent}`);
    if (exponent === 1) return null;
    // The integral of cos^n over a hemisphere is 2 pi / (n + 1).
    const scale = (exponent + 1) / (2 * Math.PI);
    return { scale, exponent, web: null, turn_deg: 0, frontShare: 1, width: widthOf(scale) };
  }
  const { web, turn_deg } = beam;
  const front = webFlux(web, 90);
  const scale = front > 0 ? 1 / front : 0;
  const peak = scale * web.candela.reduce((most, candela) => Math.max(most, candela), 0);
  const width = Math.min(WEB_WIDTH, widthOf(peak));
  return { scale, exponent: 0, web, turn_deg, frontShare: frontShare(web), width };
}

/** Width of the cos^n that has this peak intensity per lumen: n = 2 pi I0 - 1, near the axis a bell of 1/sqrt(n) rad. */
const widthOf = (peak: number): number => 1 / Math.sqrt(Math.max(1, 2 * Math.PI * peak - 1));

/**
 * Luminous intensity in cd per lumen that leaves to the front, towards the unit direction (du, dv, dn) along the face's u
 * edge, v edge and normal. Its integral over the front hemisphere is 1; 0 behind.
 */
export function relativeIntensity(beam: ReadyBeam, du: number, dv: number, dn: number): number {
  if (dn <= 0) return 0;
  const { web } = beam;
  if (!web) return beam.scale * dn ** beam.exponent;
  const vertical = Math.acos(Math.min(dn, 1)) * DEGREES;
  if (web.horizontal_deg.length === 1) return beam.scale * intensityOf(web, vertical, 0);
  // Counter-clockwise from above is clockwise about a normal that points down.
  return beam.scale * intensityOf(web, vertical, beam.turn_deg - Math.atan2(dv, du) * DEGREES);
}
