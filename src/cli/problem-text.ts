import type { Problem } from '../engine/result';

/** A problem on one line, as compilers print theirs: file, line, path unless the text names it, what, and what to do. */
export function problemText({ text, at, remedy }: Problem): string {
  const place = [at?.file, at?.line].filter((part) => part !== undefined).join(':');
  // The reader of a file starts some texts with the line; once is enough.
  const what = at?.line === undefined ? text : text.replace(new RegExp(`^Line ${at.line}: `), '');
  const path = at?.path && !what.includes(at.path) ? `${at.path}: ` : '';
  return `${place === '' ? '' : `${place}: `}${path}${what} ${remedy}`;
}
