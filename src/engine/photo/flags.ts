/** What may be wrong with a picture of a sample. */
export type PhotoFlagCode =
  | 'card-clipped'
  | 'card-colored'
  | 'card-too-dark'
  | 'card-too-light'
  | 'card-odd'
  | 'card-small'
  | 'card-tinted'
  | 'dark'
  | 'glare'
  | 'lamps-without-card'
  | 'lighter-than-white'
  | 'mixed-light'
  | 'no-white'
  | 'noisy'
  | 'sample-clipped'
  | 'strong-color'
  | 'uneven-light';

export interface PhotoFlag {
  readonly code: PhotoFlagCode;
  /** The number it was told by, and the one from which on it is raised. */
  readonly value: number;
  readonly limit: number;
  /** What it adds to the uncertainty, in quadrature, CIEDE2000 units. */
  readonly addsDe00: number;
}

interface Rule {
  readonly limit: number;
  /** Raised below the limit instead of above it. */
  readonly isLeast?: boolean;
  readonly adds: (value: number) => number;
}

/**
 * From where on a flag is raised and what it costs. All of them are our judgment; where synthetic pictures could be asked
 * (`tests/photo`), costs are no smaller than the errors found there.
 */
const RULES: Readonly<Record<PhotoFlagCode, Rule>> = {
  /** Share of the card's pixels with a channel at an end of its code: the light's color is cut off there. */
  'card-clipped': { limit: 0.01, adds: (share) => Math.min(8, 2 + 60 * share) },
  /**
   * CIELAB chroma of the card as the photo has it, made as light as white: what a camera leaves of the light. D50 left as it
   * is has 19; more is no daylight, or the card is cream or printed. By lamps it is told from `COLORED_BY_LAMPS` on.
   */
  'card-colored': { limit: 25, adds: () => 5 },
  /** Luminance of white beside a white card, 1 = the picture's white: a card that dark may be the gray one. */
  'card-too-dark': { limit: 0.25, isLeast: true, adds: () => 8 },
  /** The same beside a gray card: one that light may be the white one. */
  'card-too-light': { limit: 2, adds: () => 8 },
  /** Share of the card that is not like the rest of it. */
  'card-odd': { limit: 0.03, adds: (share) => Math.min(4, 1 + 10 * share) },
  /** Pixels of the card. */
  'card-small': { limit: 900, isLeast: true, adds: () => 1.5 },
  /** Distance of the card's chromaticity from all white lights, |Duv| in CIE 1960 u, v. */
  'card-tinted': { limit: 0.02, adds: () => 5 },
  /** Luminance of white beside the card, 1 = the picture's white. */
  dark: { limit: 0.15, isLeast: true, adds: () => 1.5 },
  /** Share of the sample in mirrored light; it is left out of the colors, but reaches further than one sees. */
  glare: { limit: 0.004, adds: (share) => Math.min(10, 1 + 25 * share) },
  /** 1 where it is so. A camera leaves much of a lamp's color in: 10 over lamps and cameras of `tests/photo`, 5 by daylight. */
  'lamps-without-card': { limit: 0, adds: () => 6 },
  /** Share of the sample that is lighter than white: the card is not what it was said to be, or stands in less light. */
  'lighter-than-white': { limit: 0.2, adds: () => 8 },
  /** Hue drift over the card, CIELAB units of a white. The sample lies further away than one side of the card from the other. */
  'mixed-light': { limit: 2, adds: (drift) => Math.min(10, drift) },
  /** Median CIELAB difference of neighboring pixels of the card. */
  noisy: { limit: 6, adds: () => 1 },
  /**
   * Luminance of the lightest half percent of a picture without a card, 1 = its white: with nothing near white in it, nobody knows
   * how light it was taken, and lightness is a guess.
   */
  'no-white': { limit: 0.6, isLeast: true, adds: (lightest) => Math.min(15, 8 / Math.max(0.1, lightest)) },
  'sample-clipped': { limit: 0.02, adds: (share) => Math.min(8, 1 + 20 * share) },
  /**
   * CIELAB chroma of the strongest color, where the light is not known to be daylight: a card mends grays; with lamps the error
   * grows with chroma: at 25 to 3.5 by lamps and to 6 by fluorescent tubes over the cameras of `tests/photo`; by daylight it stays below 1.
   */
  'strong-color': { limit: 12, adds: (chroma) => Math.min(6, 0.13 * chroma) },
  /** Change of luminance over card or sample, as a share. */
  'uneven-light': { limit: 0.15, adds: (change) => Math.min(6, 8 * change) },
};

/** Beyond this a card is more colored than a camera leaves it by lamps, in the units of 'card-colored'. */
export const COLORED_BY_LAMPS = 45;

/** The flag of a number, if it raises one. */
export function flagOf(code: PhotoFlagCode, value: number): PhotoFlag | null {
  const { limit, isLeast, adds } = RULES[code];
  const isRaised = isLeast ? value < limit : value > limit;
  return isRaised ? { code, value, limit, addsDe00: adds(value) } : null;
}
