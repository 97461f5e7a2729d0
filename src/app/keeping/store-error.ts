/**
 * Why the browser keeps nothing: `full`: the disk is; `newer`: a newer program has what is kept, and this one must not touch it; `silent`: it
 * does not answer; `closed`: it gives no store (a private window, its settings), or an error nobody knows.
 */
export type WhyUnkept = 'full' | 'newer' | 'silent' | 'closed';

/** What the browser's refusal to keep or read something comes to. */
export function whyUnkept(error: unknown): WhyUnkept {
  if (!(error instanceof Error)) return 'closed';
  // Some browsers name the error, some say it in the one it brought about.
  if (error.name === 'QuotaExceededError' || /quota/i.test(error.message)) return 'full';
  if (error.name === 'VersionError') return 'newer';
  return error.name === 'TimeoutError' ? 'silent' : 'closed';
}
