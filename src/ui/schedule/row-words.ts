import type { RowProblem, ScheduleRow, SupersededRow } from '../../kitchen/schedule/types';
import { capital } from '../words/numbers';
import { retold } from '../words/spoken';

type Named = Pick<ScheduleRow | SupersededRow, 'surfaces' | 'element'>;

/** What no surface shows is in the words of whoever wrote it down, and they stay as they are. */
const isOwnWords = ({ surfaces }: Pick<Named, 'surfaces'>): boolean => surfaces.length === 0;

/** What a row is of: "Base cabinets", "Primer, 5 L can". */
export const elementText = (row: Named): string => (isOwnWords(row) ? row.element : retold(row.element));

/** The same in the middle of a line: "base cabinets", "Primer, 5 L can". */
export const elementInLine = (row: Named): string =>
  isOwnWords(row) ? row.element : retold(row.element).toLowerCase();

/** Where it is; empty where nothing is said. */
export const locationText = (row: Pick<ScheduleRow, 'surfaces' | 'location'>): string =>
  isOwnWords(row) ? row.location : capital(retold(row.location));

/** Problems that repeat what somebody wrote: a lot, a name. */
const QUOTING: ReadonlySet<RowProblem['code']> = new Set(['delivery-differs', 'changed-since-approved']);

/** A problem as the page speaks. */
export const problemText = ({ code, text }: RowProblem): string => (QUOTING.has(code) ? text : retold(text));
