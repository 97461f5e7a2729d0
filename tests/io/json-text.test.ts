import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layOutJson } from '../../src/io/json-layout';
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

it.each([
  ['{\n  "a": 1,\n  "b": oops\n}', 3, 'where a value should be'],
  ['{\n  "a": 1\n  "b": 2\n}', 3, 'where a comma or } should be'],
  ['[1,\n2,\n]', 3, 'where a value should be'],
  ['{"a": 1,\n"a": 2}', 2, 'twice'],
  ['{"a": "open\n}', 1, 'not closed'],
  ['', 1, 'empty'],
  ['{}\n{}', 2, 'after the end'],
  ['[1e999]', 1, 'too large'],
  ['\n{"a":', 2, 'the file ends'],
  [`${'['.repeat(1000)}`, 1, 'nesting'],
])('names the line of %j', (text, line, words) => {
  const read = locateJson(text, 'a.json');
  expect(read).toMatchObject({ ok: false, problem: { code: 'not-json', at: { file: 'a.json', line } } });
  expect(!read.ok && read.problem.text).toContain(words);
});

it('remembers the line of every value, and takes odd names as plain data', () => {
  const read = locateJson('{\n "a": [\n  1,\n  {"b": 2}\n ],\n "__proto__": 3\n}');
  expect(read.ok && Object.fromEntries(read.value.lines)).toEqual(
    Object.fromEntries([
      ['', 1],
      ['a', 2],
      ['a[0]', 3],
      ['a[1]', 4],
      ['a[1].b', 4],
      ['__proto__', 6],
    ]),
  );
  expect(read.ok && Object.getPrototypeOf(read.value.value)).toBe(Object.prototype);
});
