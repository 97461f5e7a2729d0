/** A place in a uniform colour space: J', a', b'. */
export interface Ucs {
  readonly j: number;
  readonly a: number;
  readonly b: number;
}

/**
 * Uniform coordinates of a colour: CAM02-UCS from CIECAM02 correlates (Luo, Cui and Li 2006, Color Res. Appl. 31, 320),
 * CAM16-UCS from those of CAM16 (Li et al. 2017); the equations are the same.
 */
export function ucsFromCam({ j, m, h_deg }: { j: number; m: number; h_deg: number }): Ucs {
  const colourfulness = Math.log1p(0.0228 * m) / 0.0228;
  const hue = (h_deg * Math.PI) / 180;
  return {
    j: (1.7 * j) / (1 + 0.007 * j),
    a: colourfulness * Math.cos(hue),
    b: colourfulness * Math.sin(hue),
  };
}

/** Colour difference dE' between two places of one uniform space; the scale of Rf (CIE 224:2017). */
export const ucsDifference = (first: Ucs, second: Ucs): number =>
  Math.hypot(first.j - second.j, first.a - second.a, first.b - second.b);
