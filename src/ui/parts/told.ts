import type { Problem } from '../../engine/result';

/** What the page has to say: something went wrong, or something was done that one should know of. */
export interface Told {
  /** `refused`: something new could not be taken, and the work at hand has nothing to do with it. */
  readonly kind: 'problem' | 'refused' | 'notice';
  readonly list: readonly [first: Problem, ...more: Problem[]];
}

/** A problem, with all others found at the same time. */
export const problemTold = (problem: Problem, more: readonly Problem[] = []): Told => ({
  kind: 'problem',
  list: [problem, ...more],
});

/** What was refused and why. */
export const refusalTold = (problem: Problem, more: readonly Problem[] = []): Told => ({
  kind: 'refused',
  list: [problem, ...more],
});

/** What was mended or left out; null when there is nothing to say. */
export function noticeTold(notices: readonly Problem[] = []): Told | null {
  const [first, ...more] = notices;
  return first ? { kind: 'notice', list: [first, ...more] } : null;
}
