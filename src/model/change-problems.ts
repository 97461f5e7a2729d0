import { failure, type Problem, type Result } from '../engine/result';

/** A list with one member replaced by another. */
export const replace = <T>(list: readonly T[], before: T, after: T): readonly T[] =>
  list.map((one) => (one === before ? after : one));

/** A command that cannot be done. */
export const bad = (code: string, path: string, text: string): Problem => ({
  code,
  text,
  at: { path },
  remedy: 'Nothing was changed. Choose something else.',
});

/** A command that names what is not there. */
export const unknown = (what: string, id: string, known: readonly { readonly id: string }[]): Result<never> =>
  failure({
    code: `unknown-${what}`,
    text: `There is no ${what} "${id}".`,
    at: { path: what },
    remedy: `Name one of: ${known.map((one) => one.id).join(', ')}.`,
  });
