/**
 * What a colour word stands for when only it and a light reflectance value are known: Munsell hue and chroma.
 * `lrv` is the range in which the word is usual; outside it the word and the number disagree.
 */
export interface HueWord {
  /** Munsell hue on the circle of 100 (10 = 10R, 20 = 10YR, 30 = 10Y ...). */
  readonly hue100: number;
  readonly chroma: number;
  readonly lrv: readonly [least: number, most: number];
}

const word = (hue100: number, chroma: number, least: number, most: number): HueWord => ({
  hue100,
  chroma,
  lrv: [least, most],
});

/**
 * Tinted whites, grays and blacks and the browns: central notations of their ISCC-NBS blocks (Kelly 1958, J. Res. NBS 61,
 * 427); white from Munsell value 8, gray 2.5-8.5, black below 3. Other hues: the middle of the 'moderate' block (Kelly and
 * Judd 1955). Words of the trade (off-white, cream, beige, greige, taupe, warm and cool): common practice, no source.
 */
export const HUE_WORDS: { readonly [word: string]: HueWord } = {
  white: word(0, 0, 56, 100),
  gray: word(0, 0, 4, 67),
  black: word(0, 0, 0, 7),

  'pinkish white': word(7.6, 1, 56, 100),
  'yellowish white': word(24.1, 1.3, 56, 100),
  'greenish white': word(47, 0.8, 56, 100),
  'bluish white': word(69.5, 1, 56, 100),
  'purplish white': word(89, 1, 56, 100),

  'pinkish gray': word(7.6, 1, 35, 67),
  'reddish gray': word(6.5, 1.1, 4, 36),
  'brownish gray': word(16.8, 1, 4, 36),
  'yellowish gray': word(24.1, 1.3, 35, 67),
  'olive gray': word(27.4, 1.3, 4, 36),
  'greenish gray': word(47, 0.8, 4, 67),
  'bluish gray': word(69.5, 1, 4, 67),
  'purplish gray': word(90, 1, 4, 67),

  'brownish black': word(15.5, 0.8, 0, 5),
  'greenish black': word(49, 0.7, 0, 5),
  'bluish black': word(69.5, 0.7, 0, 5),

  'off-white': word(22, 0.75, 66, 92),
  'warm white': word(22, 0.75, 66, 95),
  'cool white': word(69.5, 0.4, 66, 95),
  cream: word(23, 2, 58, 90),
  beige: word(20, 2.5, 32, 72),
  greige: word(20, 1, 26, 62),
  taupe: word(15, 1.6, 9, 36),
  'warm gray': word(18, 0.9, 4, 67),
  'cool gray': word(69.5, 0.9, 4, 67),

  pink: word(2.5, 5, 28, 75),
  'yellowish pink': word(11, 5, 28, 75),
  'purplish pink': word(94, 5, 28, 75),
  red: word(5, 9, 4, 24),
  'purplish red': word(97, 8, 4, 24),
  orange: word(15, 8, 22, 50),
  brown: word(15.5, 3.9, 2, 30),
  'reddish brown': word(9.6, 5.2, 2, 30),
  'yellowish brown': word(19.5, 4, 4, 40),
  yellow: word(24, 6.6, 34, 85),
  olive: word(28, 4, 4, 30),
  'olive green': word(34, 4, 2, 24),
  'yellow green': word(36, 5, 20, 75),
  'yellowish green': word(41, 5, 10, 60),
  green: word(45, 5, 5, 45),
  'bluish green': word(55, 5, 5, 45),
  'greenish blue': word(63, 5, 5, 45),
  blue: word(71, 6, 4, 45),
  'purplish blue': word(77.5, 6, 3, 40),
  violet: word(81, 6, 3, 40),
  purple: word(86, 6, 3, 40),
};

/** The word of the table a text means: case, spaces, hyphens and "grey" do not matter; null when it is none. */
export function hueWordOf(text: string): string | null {
  const plain = text.trim().toLowerCase().replace(/grey/g, 'gray').replace(/\s+/g, ' ');
  return (
    [plain, plain.replace(/-/g, ' '), plain.replace(/ /g, '-')].find((word) => Object.hasOwn(HUE_WORDS, word)) ?? null
  );
}
