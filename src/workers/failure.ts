import type { Problem } from '../engine/result';

/** A bug in a calculation, said so that the page can go on: the last good results stay. */
export const calculationFailed = (what: string, error: unknown): Problem => ({
  code: 'calculation-failed',
  text: `${what} could not be worked out: ${error instanceof Error ? error.message : String(error)}.`,
  remedy: 'Undo the last change and go on, or save your work and reload the page.',
});
