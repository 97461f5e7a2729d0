import {
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { writeText } from '../../src/cli/write-text';

// `import --out X --csv X` wrote the library, then the table over it, and said that both were written. A file was emptied before it was
// written, so that a full disk left half of it.

const SAMPLE = 'tests/io/sheet/samples/finishes-canonical.csv';
const folder = mkdtempSync(join(tmpdir(), 'upstand-twice-'));

it.each(['range', 'there', 'over-a-link', 'hard-link'])('two things for one file are refused: %s', (how) => {
  const one = join(folder, `${how}.json`);
  const other = how === 'hard-link' ? join(folder, 'other.json') : one;
  if (how !== 'range' && how !== 'over-a-link') writeFileSync(one, 'before');
  if (how === 'over-a-link') {
    mkdirSync(join(folder, 'inner'));
    symlinkSync(join(folder, 'inner'), join(folder, 'link'));
  }
  if (how === 'hard-link') linkSync(one, other);
  const [out, csv] = how === 'over-a-link' ? [join(folder, 'inner', 'x'), join(folder, 'link', 'x')] : [one, other];
  const { exit, messages } = run(['import', SAMPLE, '--out', out, '--csv', csv]);
  expect([exit, messages]).toEqual([2, expect.stringContaining('Name two files')]);
  if (existsSync(one)) expect(readFileSync(one, 'utf8')).toBe('before');
});

it('a file is put in the place of another, links and rights stay, and nothing is left beside it', () => {
  const place = join(mkdtempSync(join(tmpdir(), 'upstand-beside-')), 'real.json');
  writeFileSync(place, 'before', { mode: 0o640 });
  const before = statSync(place);
  const link = join(folder, 'to-real.json');
  symlinkSync(place, link);
  expect(writeText(link, 'after').ok).toBe(true);
  expect(readFileSync(place, 'utf8')).toBe('after');
  const after = statSync(place);
  expect(after.mode).toBe(before.mode);
  // Another file in its place, so that what stood there was whole until this one was.
  expect(after.ino).not.toBe(before.ino);
  expect(readdirSync(join(place, '..'))).toEqual(['real.json']);
});

it('what is no plain file is written to as it is', () => {
  expect(writeText('/dev/null', 'text').ok).toBe(true);
  expect(statSync('/dev/null').isFile()).toBe(false);
});
