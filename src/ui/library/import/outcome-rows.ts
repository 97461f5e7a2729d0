import type { ImportOutcome, KeptRow, RefusedRow } from '../../../io/sheet/types';

/** Rows that made a finish and rows that did not, in the order of the file. */
export const rowsOfOutcome = ({ kept, refused }: ImportOutcome): readonly (KeptRow | RefusedRow)[] =>
  [...kept, ...refused].sort((a, b) => a.row - b.row);

/** Refused only because something was not said yet: the answer to a question makes a finish of it. */
export const isWaiting = ({ problem }: RefusedRow): boolean => WAITING.includes(problem.code);

const WAITING: readonly string[] = ['class-missing', 'class-unknown', 'conditions-missing'];

/** How many finishes have something to look at. */
export const noticedOf = ({ kept }: ImportOutcome): number => kept.filter(({ notices }) => notices.length > 0).length;
