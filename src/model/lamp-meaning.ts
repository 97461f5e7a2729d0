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

/** Differences in Duv from the usual white: seen by hardly anybody (our judgment), and as far as lamps may go (C78.377). */
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

/** Below it a tube of the oldest kind: our judgment. */
const POOR_RA = 60;

/**
 * Limits of R13, the test color "light skin" (5 YR 8/4, CIE 13.3), which light woods are near to: our judgment. A shift of
 * 2, 5 and 9 units of the index's color space (R = 100 - 4.6 dE, CIE 13.3).
 */
const RIGHT_R13 = 90;
const NEAR_R13 = 75;
const OFF_R13 = 60;

/** What the figures of a lamp mean for a room, in sentences. */
export function lampMeaning({ cct_k, duv, ra, r, outside_tolerance }: LampFigures): readonly string[] {
  if (cct_k === null || duv === null) return ['This light is no white: it has no color temperature.'];
  if (ra === null || !r) return ['This light is too far from white for color rendering figures.'];
  const tint = lampTint(cct_k, duv);
  const white = `White: ${tint === 'none' ? 'no tint' : tint}.`;
  if (outside_tolerance) return ['Too far from white for Ra to mean much (CIE 13.3).', white];
  // Indices are stated as whole numbers: 79.97 is 80.
  return [
    `Colors: ${renderingWords(Math.round(ra))}.`,
    `Strong reds: ${redWords(Math.round(r[8]!))}.`,
    `Wood and skin: ${skinWords(Math.round(r[12]!))}.`,
    white,
  ];
}

function renderingWords(ra: number): string {
  if (ra >= GOOD_RA) return 'right';
  if (ra >= USUAL_RA) return 'nearly right';
  return ra >= POOR_RA ? 'somewhat off' : 'off';
}

function redWords(r9: number): string {
  if (r9 < 0) return 'dull';
  if (r9 < USUAL_R9) return 'somewhat dull';
  return r9 < GOOD_R9 ? 'nearly right' : 'right';
}

function skinWords(r13: number): string {
  if (r13 >= RIGHT_R13) return 'right';
  if (r13 >= NEAR_R13) return 'nearly right';
  return r13 >= OFF_R13 ? 'somewhat off' : 'off';
}
