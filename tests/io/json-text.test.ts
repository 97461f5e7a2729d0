import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOutJson } from '../../src/io/json-layout';
import { childPath, lineOf } from '../../src/io/json-lines';
import { locateJson } from '../../src/io/json-text';

it('reads what the platform reads, and writes what the platform reads back', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 6 }), fc.constantFrom(0, 1, 2), (text, indent) => {
      const value = JSON.parse(text);
      const spaced = JSON.stringify(value, null, indent);
      const read = locateJson(spaced);
      expect(read.ok && read.value.value).toEqual(value);
      expect(JSON.parse(layOutJson(value))).toEqual(value);
    }),
  );
});

it('refuses what the platform refuses', () => {
  fc.assert(
    fc.property(
      fc.json({ maxDepth: 3 }),
      fc.nat(),
      fc.constantFrom('', '}', '"', ',', 'x', '\n', '[', '0'),
      (text, where, put) => {
        // A valid text with one character replaced: often, not always, broken. That names stand once and numbers are finite are our own rules.
        const at = where % text.length;
        const broken = text.slice(0, at) + put + text.slice(at + 1);
        let parses = true;
        try {
          JSON.parse(broken);
        } catch {
          parses = false;
        }
        const read = locateJson(broken);
        if (!parses) expect(read.ok).toBe(false);
        else if (!read.ok) expect(read.problem.text).toMatch(/twice|too large/);
      },
    ),
  );
});

it.each<[string, number, string, string?]>([
  ['{\n  "a": 1,\n  "b": oops\n}', 3, 'where a value should be'],
  ['{\n  "a": 1\n  "b": 2\n}', 3, 'where a comma or } should be'],
  ['[1,\n2,\n]', 3, 'where a value should be'],
  ['{"a": 1,\n"a": 2}', 2, 'twice'],
  ['{"a": "open\n}', 1, 'not closed'],
  ['', 1, 'empty', 'file-empty'],
  ['{}\n{}', 2, 'after the end'],
  ['[1e999]', 1, 'too large'],
  ['\n{"a":', 2, 'the file ends', 'file-cut-off'],
  ['{"a": tr', 1, 'where a value should be', 'file-cut-off'],
  ['{"a": "op\\', 1, 'not closed', 'file-cut-off'],
  [`${'['.repeat(1000)}`, 1, 'nesting'],
  ['{\n"a\\qb": 1}', 2, 'not closed'],
  [`{"a": 1,\n"${'k'.repeat(201)}": 1}`, 2, 'more than 200 characters'],
])('names the line of %j', (text, line, words, code = 'not-json') => {
  const read = locateJson(text, 'a.json');
  expect(read).toMatchObject({ ok: false, problem: { code, at: { file: 'a.json', line } } });
  expect(!read.ok && read.problem.text).toContain(words);
});

it('remembers the line of every value, and takes odd names as plain data', () => {
  const text = '{\n "a": [\n  1,\n  {"b": 2}\n ],\n "__proto__": 3,\n "c.d": {\n  "e": [\n   0]}\n}';
  const read = locateJson(text);
  if (!read.ok) throw new Error(read.problem.text);
  const { lines, value } = read.value;
  for (const [path, line] of [
    ['', 1],
    ['a', 2],
    ['a[0]', 3],
    ['a[1]', 4],
    ['a[1].b', 4],
    ['__proto__', 6],
    ['c.d', 7],
    ['c.d.e', 8],
    ['c.d.e[0]', 9],
    // What is missing: the line of what it is missing from.
    ['a[7]', 2],
    ['a[1].z.y', 4],
    ['z', 1],
    ['toString', 1],
    ['a.length', 2],
    ['a[x]', 2],
    ['a[0', 2],
  ] as const) {
    expect(lineOf(lines, path), path).toBe(line);
  }
  expect(Object.getPrototypeOf(value)).toBe(Object.prototype);
});

it('finds the line of every value of any text', () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 4 }), (made) => {
      // Names with the signs of a path in them may say two things at once.
      const text = JSON.stringify(made, (_, one) => (isRecord(one) ? plainNames(one) : one), 1);
      const read = locateJson(text);
      if (!read.ok) throw new Error(read.problem.text);
      // Every value stands on a line of its own, but for what closes.
      const starts = text.split('\n').flatMap((line, i) => (/^ *[\]}],?$/.test(line) ? [] : [i + 1]));
      expect(pathsOf(read.value.value).map((path) => lineOf(read.value.lines, path))).toEqual(starts);
    }),
  );
});

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const plainNames = (record: Record<string, unknown>) =>
  Object.fromEntries(Object.values(record).map((value, i) => [`name ${i}`, value]));

/** The path of every value, in the order of the text. */
function pathsOf(value: unknown, path = ''): readonly string[] {
  const below: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? value.map((item, i) => [i, item] as const)
    : isRecord(value)
      ? Object.entries(value)
      : [];
  return [path, ...below.flatMap(([key, one]) => pathsOf(one, childPath(path, key)))];
}
