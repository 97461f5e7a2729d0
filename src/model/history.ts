/** One step between two documents: what was done, and the document on the far side of it. */
interface Step<T> {
  readonly label: string;
  readonly document: T;
}

/**
 * What was, what is, and what was undone; the latest step is last in both lists. Documents are immutable and share what
 * did not change, so keeping whole ones is cheap. View changes do not belong here.
 */
export interface History<T> {
  readonly past: readonly Step<T>[];
  readonly present: T;
  readonly future: readonly Step<T>[];
}

/** Steps kept; older ones can no longer be undone. */
export const STEPS_KEPT = 200;

export const startHistory = <T>(document: T): History<T> => ({ past: [], present: document, future: [] });

/**
 * Moves on to `document` and forgets what was undone. With `continues`, the change belongs to the step before it
 * (a drag is one step), if that has the same label and nothing was undone since. A document that is the very same changes
 * nothing.
 */
export function record<T>(history: History<T>, document: T, label: string, continues = false): History<T> {
  if (document === history.present) return history;
  const belongs = continues && history.future.length === 0 && history.past.at(-1)?.label === label;
  const past = belongs ? history.past : [...history.past, { label, document: history.present }].slice(-STEPS_KEPT);
  return { past, present: document, future: [] };
}

/** Back by one step; the same history when there is none. */
export function undo<T>(history: History<T>): History<T> {
  const step = history.past.at(-1);
  if (!step) return history;
  return {
    past: history.past.slice(0, -1),
    present: step.document,
    future: [...history.future, { label: step.label, document: history.present }],
  };
}

/** Forward again by one step; the same history when nothing was undone. */
export function redo<T>(history: History<T>): History<T> {
  const step = history.future.at(-1);
  if (!step) return history;
  return {
    past: [...history.past, { label: step.label, document: history.present }],
    present: step.document,
    future: history.future.slice(0, -1),
  };
}

/** What undo would take back, in words, or null. */
export const undoLabel = <T>(history: History<T>): string | null => history.past.at(-1)?.label ?? null;

/** What redo would bring back, in words, or null. */
export const redoLabel = <T>(history: History<T>): string | null => history.future.at(-1)?.label ?? null;
