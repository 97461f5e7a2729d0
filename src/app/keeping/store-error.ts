import type { Problem } from '../../engine/result';
import { notKept } from '../../ui/words/keeping';

/** What the browser's refusal to keep or read something comes to. */
export const storeProblem = (error: unknown): Problem => notKept(isQuota(error));

/** Some browsers name the error, some say it in the one it brought about. */
export const isQuota = (error: unknown): boolean =>
  error instanceof Error && (error.name === 'QuotaExceededError' || /quota/i.test(error.message));
