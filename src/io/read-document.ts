import { type Problem, type Result, success } from '../engine/result';
import { childPath } from './json-lines';
import { type JsonValue, locateJson } from './json-text';
import { MOST_PROBLEMS, placeProblem } from './place-problem';

/** Control characters but for tabs and line breaks, and what turns the order of a text (bidi controls, UAX 9). */
const UNSEEN = /(?![\t\n\r])[\p{Cc}\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/gu;
const HAS_UNSEEN = new RegExp(UNSEEN.source, 'u');

/**
 * Reads a document from its JSON; `placed` gives a problem file and line. Texts lose characters that cannot be seen and could make a page or a terminal show something else than
 * they say; this is told.
 */
export function readDocument<T>(
  text: string,
  file: string | undefined,
  read: (value: JsonValue, placed: (problem: Problem) => Problem) => Result<T>,
): Result<T> {
  const located = locateJson(text, file);
  if (!located.ok) return located;
  const placed = (problem: Problem): Problem => placeProblem(problem, located.value.lines, file);
  const paths: string[] = [];
  const value = cleaned(located.value.value, '', paths);
  const notices = paths.slice(0, MOST_PROBLEMS).map((path) => unseenNotice(path, `${path}: characters`));
  const more = paths.length - notices.length;
  if (more > 0) notices.push(unseenNotice('', `In ${more} more texts characters`));
  const result = read(value, placed);
  return result.ok ? success(result.value, [...notices.map(placed), ...(result.notices ?? [])]) : result;
}

/** The value itself where nothing is taken out. */
function cleaned(value: JsonValue, path: string, paths: string[]): JsonValue {
  if (typeof value === 'string') {
    if (!HAS_UNSEEN.test(value)) return value;
    paths.push(path);
    return value.replace(UNSEEN, '');
  }
  if (typeof value !== 'object' || value === null) return value;
  const before = paths.length;
  if (Array.isArray(value)) {
    const items = value.map((item: JsonValue, i) => cleaned(item, childPath(path, i), paths));
    return paths.length > before ? items : value;
  }
  const members = Object.entries(value).map(
    ([name, one]) => [name, cleaned(one, childPath(path, name), paths)] as const,
  );
  return paths.length > before ? Object.fromEntries(members) : value;
}

const unseenNotice = (path: string, what: string): Problem => ({
  code: 'unseen-characters',
  text: `${what} that cannot be seen, or that turn the order of a text, were taken out.`,
  at: { path },
  remedy: 'Nothing to do, unless the text reads wrong now.',
});
