import { spoken } from './spoken';

/** Words for how far a color may be off. */
export const OFF_BY = spoken({
  /** Behind a finish in a list. */
  short: (number: string) => `about ± ${number}`,
  /** Its field. */
  label: 'Its color may be off by',
  labelAll: 'All colors may be off by',
  hint: 'as usual',
  wrong: 'Give a number from 0 to 30.',
  ask: 'What this number means',
  meaning:
    'How far the true color may lie from this one, as a rule: 1 can just be seen side by side, 5 is plainly another color. Leave it empty for what is usual for how the color is known. (ΔE00: CIEDE2000 units, root mean square.)',
  certainty: (words: string, number: string, word: string) =>
    `${words}: the true color may be off by about ${number}, ${word}.`,
} as const);

/** As exact as an uncertainty is: half units below 3, whole ones above, one digit below half a unit. */
export function offBy(de00: number): string {
  if (de00 < 0.5) return String(Number(de00.toPrecision(1)));
  return String(de00 < 3 ? Math.round(de00 * 2) / 2 : Math.round(de00));
}
