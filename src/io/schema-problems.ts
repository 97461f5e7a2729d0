import type * as v from 'valibot';
import type { Problem } from '../engine/result';
import { childPath } from './json-text';

/** A schema's complaint as a problem with the path of the field in words of the file. */
export function schemaProblem(issue: v.BaseIssue<unknown>): Problem {
  const path = pathOf(issue);
  const what = path === '' ? 'The document' : path;
  if (issue.received === 'undefined') {
    return { code: 'missing-field', text: `${what} is missing.`, at: { path }, remedy: 'Add it.' };
  }
  const remedy = issue.expected === 'never' ? 'Leave it out.' : remedyFor(issue.expected ?? 'something else');
  return { code: 'wrong-field', text: `${what} is ${shortened(inWords(issue.received))}.`, at: { path }, remedy };
}

/** Paths of fields that stand in `given` but not in `kept`: what a schema did not know and left out. */
export function unknownFields(given: unknown, kept: unknown, path = ''): readonly string[] {
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
