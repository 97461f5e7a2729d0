/** A lamp as one buys it: the number on the box, and the spectrum that stands for it. */
export interface LampKind {
  /** Nominal color temperature as printed on the box, K. */
  readonly nominal_k: number;
  /** Id of the spectrum. */
  readonly light: string;
  /** Correlated color temperature of that spectrum, K. */
  readonly cct_k: number;
  readonly words: string;
}

/**
 * The usual color temperatures of white LED lamps, each with the CIE illuminant nearest to it: phosphor-converted blue LEDs
 * LED-B1 to LED-B5, correlated color temperatures as in CIE 15:2018. Real lamps of the same number differ.
 */
export const LAMP_KINDS: readonly LampKind[] = [
  { nominal_k: 2700, light: 'LED-B1', cct_k: 2733, words: 'Warm, yellowish (2700 K)' },
  { nominal_k: 3000, light: 'LED-B2', cct_k: 2998, words: 'Warm white (3000 K)' },
  { nominal_k: 4000, light: 'LED-B3', cct_k: 4103, words: 'Neutral white (4000 K)' },
  { nominal_k: 5000, light: 'LED-B4', cct_k: 5109, words: 'Cool white (5000 K)' },
  { nominal_k: 6500, light: 'LED-B5', cct_k: 6598, words: 'Bluish, daylight (6500 K)' },
];

/** The lamp kind that a spectrum stands for, or null when it is no lamp of the list (daylight, a fluorescent tube). */
export const lampKindOfLight = (light: string): LampKind | null =>
  LAMP_KINDS.find((kind) => kind.light === light) ?? null;
