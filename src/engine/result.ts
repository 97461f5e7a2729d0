/** Where a problem sits: a file and line, a JSON path, a surface. All parts optional. */
export interface Place {
  readonly file?: string;
  readonly line?: number;
  readonly path?: string;
}

/** A problem as a value: what (code, text), where (at), and what to do about it (remedy). */
export interface Problem<Code extends string = string> {
  readonly code: Code;
  readonly text: string;
  readonly at?: Place;
  readonly remedy: string;
}

/** Everything that parses or may fail on input returns this; exceptions are for bugs. */
export type Result<T, P extends Problem = Problem> =
  | { readonly ok: true; readonly value: T; readonly notices?: readonly Problem[] }
  | { readonly ok: false; readonly problem: P; readonly more?: readonly P[] };

export const success = <T>(value: T, notices?: readonly Problem[]): Result<T, never> =>
  notices?.length ? { ok: true, value, notices } : { ok: true, value };

export const failure = <P extends Problem>(problem: P, more?: readonly P[]): Result<never, P> =>
  more?.length ? { ok: false, problem, more } : { ok: false, problem };
