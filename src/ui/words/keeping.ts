import type { Problem } from '../../engine/result';
import { spoken } from './spoken';

/** Words for what is kept in the browser. */
export const KEEPING = spoken({
  full: 'The disk is full: your last changes could not be kept in this browser.',
  fullRemedy: 'Save your work as a file, then make room on the disk or remove projects you no longer need.',
  closed:
    'This browser keeps nothing for this page (a private window, or its settings): your work is gone when it is closed.',
  closedRemedy: 'Save your work as a file before you leave.',
} as const);

/** What is told where nothing could be kept or read. */
export const notKept = (isFull: boolean): Problem =>
  isFull
    ? { code: 'disk-full', text: KEEPING.full, remedy: KEEPING.fullRemedy }
    : { code: 'nothing-kept', text: KEEPING.closed, remedy: KEEPING.closedRemedy };
