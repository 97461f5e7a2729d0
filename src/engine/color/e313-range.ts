/** Where a colour stands in the Munsell system; hue round a circle of 100 (10 = 10R, 20 = 10YR ...). */
export interface MunsellPlace {
  readonly hue100: number;
  readonly value: number;
  readonly chroma: number;
}

/** Below this chroma the printed notation is neutral and its hue means nothing. */
const NEUTRAL_CHROMA = 0.05;

/** Whether yellowness may be used: Munsell hue about 2.5Y to 2.5GY (ASTM E313-20, 5.2), or no hue at all. */
export const yellownessHolds = ({ hue100, chroma }: MunsellPlace): boolean =>
  chroma < NEUTRAL_CHROMA || (hue100 >= 22.5 && hue100 <= 32.5);

/** What keeps a colour from being a white in the sense of ASTM E313. */
export type NotWhite = 'too-dark' | 'too-colorful';

/**
 * Limits of a white after ASTM E313-20, 5.2; empty if it is one: value above 8.3, chroma at most 0.5 for blue hues, 0.8 for
 * yellow ones, 0.3 for all others. Blue and yellow are read as the families B and Y.
 */
export function notWhiteE313({ hue100, value, chroma }: MunsellPlace): NotWhite[] {
  const why: NotWhite[] = [];
  if (value <= 8.3) why.push('too-dark');
  if (chroma > whiteChromaMax(hue100)) why.push('too-colorful');
  return why;
}

function whiteChromaMax(hue100: number): number {
  if (hue100 > 60 && hue100 <= 70) return 0.5;
  return hue100 > 20 && hue100 <= 30 ? 0.8 : 0.3;
}
