import type * as v from 'valibot';
import type { Problem } from '../engine/result';
import { childPath } from './json-text';

/** A schema's complaint as a problem with the path of the field in words of the file. */
export function schemaProblem(issue: v.BaseIssue<unknown>): Problem {
  const path = pathOf(issue);
  const what = path === '' ? 'The document' : path;
  const missing = issue.received === 'undefined';
  const text = missing ? `${what} is missing.` : `${what} is ${shortened(issue.received)}.`;
  return {
    code: missing ? 'missing-field' : 'wrong-field',
    text,
    at: { path },
    remedy: missing ? `Add it; it has to be ${wanted(issue)}.` : `It has to be ${wanted(issue)}.`,
  };
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
  boolean: 'true or false',
};

function wanted(issue: v.BaseIssue<unknown>): string {
  const expected = issue.expected ?? 'something else';
  if (issue.type === 'tuple' || issue.type === 'array') return 'a list of numbers of the right length';
  return KINDS[expected] ?? expected.replaceAll(' | ', ' or ').replace(/^\((.*)\)$/, '$1');
}

const shortened = (received: string): string => (received.length > 60 ? `${received.slice(0, 57)}...` : received);
