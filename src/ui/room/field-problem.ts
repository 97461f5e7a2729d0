import type { Problem } from '../../engine/result';
import { retold } from '../words/spoken';

/** What is wrong with a value and what to do, in the words of its field instead of the path in the document. */
export function problemAtField({ text, at, remedy }: Problem, label: string): string {
  const path = at?.path ?? '';
  const isNamed = path !== '' && text.startsWith(path);
  const rest = isNamed ? text.slice(path.length) : text;
  const words = rest.startsWith(': ') ? rest.slice(2) : isNamed ? `${label}${rest}` : rest;
  return `${retold(words)} ${retold(remedy)}`;
}
