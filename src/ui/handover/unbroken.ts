import { SCHEDULE } from '../words/schedule';

const NO_BREAK = '\u00a0';

/** Kept on one line: a day, a name. */
export const unbroken = (text: string): string => text.replaceAll(' ', NO_BREAK);

/** The same for every number and the unit after it: "3 × can of 2.5 L" may break anywhere but before the L. */
export const withUnits = (text: string): string =>
  text
    .replace(/(\d) (?=[^\d×(\s])/g, `$1${NO_BREAK}`)
    .replaceAll(SCHEDULE.measures.ft2[0], unbroken(SCHEDULE.measures.ft2[0]));
