import { expect, it } from 'vitest';
import { parseLibrary } from '../../src/io/library-file';
import { parseProject, projectText } from '../../src/io/project-file';
import { terrace } from '../ui/terrace';

// Of a file in which everything was wrong every problem was made, millions of them, until memory was full; then fifty were shown.

it('a long list of what is no finish is refused by its first', () => {
  const head = '{"type":"upstand-library","version":1,"id":"a","name":"","note":"","finishes":[\n';
  const read = parseLibrary(`${head}${'0,'.repeat(4_000_000)}0]}`);
  expect(!read.ok && read.problem).toMatchObject({ code: 'wrong-field', at: { path: 'finishes[0]', line: 2 } });
  expect(!read.ok && read.more).toBeUndefined();
});

it('of very many unknown fields the first are told, and how many more there are', () => {
  const fields = Array.from({ length: 1234 }, (_, i) => `"x${i}": 0,`).join('\n');
  const read = parseProject(projectText(terrace()).replace('{', `{${fields}`));
  const unknown = read.ok ? read.notices!.filter(({ code }) => code === 'unknown-field') : [];
  expect(unknown).toHaveLength(51);
  expect(unknown[0]!.text).toContain('x0 is no field of a project');
  expect(unknown.at(-1)!.text).toContain('1184 more');
});
