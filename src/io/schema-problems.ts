import * as v from 'valibot';
import { type Problem, type Result, success } from '../engine/result';
import { childPath } from './json-lines';
import { failureOf, MOST_PROBLEMS } from './place-problem';

/** Of a document with more values than this only the first problem is told: every one of its values may be one. */
const MOST_VALUES = 100_000;

/** What a document holds by its schema, or what is wrong with it, of very much the first; `placed` says where a problem sits. */
export function fitSchema<S extends v.GenericSchema>(
  schema: S,
  value: unknown,
  placed: (problem: Problem) => Problem,
): Result<v.InferOutput<S>> {
  const first = v.safeParse(schema, value, { abortEarly: true });
  if (first.success) return success(first.output);
  const all = hasMore(value, MOST_VALUES) ? first : v.safeParse(schema, value);
  const issues: readonly v.BaseIssue<unknown>[] = all.issues ?? first.issues;
  return failureOf(issues.slice(0, MOST_PROBLEMS).map((issue) => placed(schemaProblem(issue))));
}

/** Whether there are more values in a document than a number. */
function hasMore(value: unknown, most: number): boolean {
  const left: unknown[] = [value];
  for (let count = 1; left.length > 0; count++) {
    if (count + left.length > most + 1) return true;
    const one = left.pop();
    if (typeof one !== 'object' || one === null) continue;
    for (const below of Object.values(one)) left.push(below);
  }
  return false;
}

/** A schema's complaint as a problem with the path of the field in words of the file. */
function schemaProblem(issue: v.BaseIssue<unknown>): Problem {
  const path = pathOf(issue);
  const what = path === '' ? 'The document' : path;
  if (issue.received === 'undefined') {
    return { code: 'missing-field', text: `${what} is missing.`, at: { path }, remedy: 'Add it.' };
  }
  const remedy = issue.expected === 'never' ? 'Leave it out.' : remedyFor(issue.expected ?? 'something else');
  return { code: 'wrong-field', text: `${what} is ${shortened(inWords(issue.received))}.`, at: { path }, remedy };
}

/** Says what a schema did not know and left out: fields that stand in `given` but not in `kept`; of very many the first. */
export function unknownFieldNotices(given: unknown, kept: unknown, noun: string): Problem[] {
  const paths = unknownFields(given, kept);
  const notices = paths
    .slice(0, MOST_PROBLEMS)
    .map((path) => unknownField(path, `${path} is no field of a ${noun}; it was left out.`));
  const more = paths.length - notices.length;
  if (more > 0) notices.push(unknownField('', `So were ${more} more fields that are none of a ${noun}.`));
  return notices;
}

const unknownField = (path: string, text: string): Problem => ({
  code: 'unknown-field',
  text,
  at: { path },
  remedy: 'Check the spelling if it matters to you.',
});

function unknownFields(given: unknown, kept: unknown, path = ''): readonly string[] {
  if (Array.isArray(given) && Array.isArray(kept)) {
    return given.flatMap((item, i) => unknownFields(item, kept[i], childPath(path, i)));
  }
  if (!isRecord(given) || !isRecord(kept)) return [];
  return Object.entries(given).flatMap(([name, value]) =>
    Object.hasOwn(kept, name) ? unknownFields(value, kept[name], childPath(path, name)) : [childPath(path, name)],
  );
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const pathOf = (issue: v.BaseIssue<unknown>): string =>
  (issue.path ?? []).reduce((path, { key }) => childPath(path, typeof key === 'number' ? key : String(key)), '');

const KINDS: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  Array: 'a list',
  Object: 'an object in { }',
};

const inWords = (kind: string): string => KINDS[kind] ?? kind.replaceAll(' | ', ' or ').replace(/^\((.*)\)$/, '$1');

/** A long choice reads better as a list. */
function remedyFor(expected: string): string {
  const choices = expected.replace(/^\((.*)\)$/, '$1').split(' | ');
  const isList = choices.length > 3 && choices.every((choice) => choice.startsWith('"'));
  return isList ? `Write one of: ${choices.join(', ')}.` : `It has to be ${inWords(expected)}.`;
}

const shortened = (received: string): string => (received.length > 60 ? `${received.slice(0, 57)}...` : received);
