/*
 * Sizes on paper, mm. Capitals and digits of these letters are 2.2 mm high, the least that is read with ease at arm's length; lines are 0.25 mm
 * and wider (common practice after ISO 128 and ISO 3098; not taken from either).
 */

/** Size of the letters: capitals are about 0.72 of it. */
export const LETTER = 3.1;
export const CAPITAL = 0.72 * LETTER;
/** Widths of a digit and of bold letters with digits, in sizes of the letters: a little more than those of the faces in drawing.css. */
const DIGIT = 0.58;
const BOLD = 0.68;

/** A box round a tag. */
export const TAG_HEIGHT = 4.4;
const TAG_PAD = 0.9;

/** How thick walls are on the plan: it does not say what they are made of. */
export const WALL = 1.2;

export const digitsWide = (text: string): number => text.length * DIGIT * LETTER;
export const tagWide = (tag: string): number => tag.length * BOLD * LETTER + 2 * TAG_PAD;
