/** Figures of a lamp that say how colors look under it; null where they do not exist for it. */
export interface LampFigures {
  readonly cct_k: number | null;
  readonly duv: number | null;
  readonly ra: number | null;
  /** R1-R14 of CIE 13.3. */
  readonly r: readonly number[] | null;
  /** Too far from white for Ra to mean much (CIE 13.3). */
  readonly outside_tolerance: boolean;
}

type LampTint = 'none' | 'slightly greenish' | 'greenish' | 'slightly pinkish' | 'pinkish';

/** Differences in Duv from the usual white: seen by hardly anybody (our judgement), and as far as lamps may go (C78.377). */
const SEEN_DUV = 0.003;
const FAR_DUV = 0.006;

/**
 * Duv of the usual white of lamps of a color temperature: on the Planckian locus up to 2870 K, then towards daylight
 * (ANSI C78.377-2011, the centers of its quadrangles; from memory). Beyond 6500 K that of 6500 K.
 */
function usualDuv(cct_k: number): number {
  const k = Math.min(cct_k, 6500);
  return k <= 2870 ? 0 : 57700 / k ** 2 - 44.6 / k + 0.0085387;
}

/** Whether a lamp looks greenish or pinkish beside a usual lamp of its color temperature. */
export function lampTint(cct_k: number, duv: number): LampTint {
  const off = duv - usualDuv(cct_k);
  if (Math.abs(off) < SEEN_DUV) return 'none';
  const word = off > 0 ? 'greenish' : 'pinkish';
  return Math.abs(off) < FAR_DUV ? `slightly ${word}` : word;
}

/** Limits of Ra and R9 by which lamps are bought: common practice, no source. */
const GOOD_RA = 90;
const USUAL_RA = 80;
const GOOD_R9 = 80;
const USUAL_R9 = 50;

/** What the figures of a lamp mean for a room, in sentences. */
export function lampMeaning({ cct_k, duv, ra, r, outside_tolerance }: LampFigures): readonly string[] {
  if (cct_k === null || duv === null) return ['This light is no white: it has no color temperature.'];
  if (ra === null || !r) return ['This light is too far from white for color rendering figures.'];
  // Indices are stated as whole numbers: 79.97 is 80.
  const tint = tintMeaning(lampTint(cct_k, duv));
  if (outside_tolerance) return ['Too far from white for Ra to mean much (CIE 13.3).', tint];
  return [renderingMeaning(Math.round(ra)), redMeaning(Math.round(r[8]!)), tint];
}

function renderingMeaning(ra: number): string {
  if (ra >= GOOD_RA) return 'Colors look much as they should.';
  return ra >= USUAL_RA
    ? 'Usual for homes; fine differences may look other than by day.'
    : 'Colors look off; less than homes usually have.';
}

function redMeaning(r9: number): string {
  if (r9 < 0) return 'Reds look dull under this lamp, and wood and skin with them.';
  if (r9 < USUAL_R9) return 'Strong reds look somewhat dull.';
  return r9 < GOOD_R9 ? 'Strong reds look nearly as they should.' : 'Reds look as they should.';
}

const tintMeaning = (tint: LampTint): string =>
  tint === 'none' ? 'Its white has no green or pink tint.' : `Its white is ${tint}.`;
