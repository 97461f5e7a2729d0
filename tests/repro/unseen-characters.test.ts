import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import { parseLibrary } from '../../src/io/library-file';
import { parseProject, projectText } from '../../src/io/project-file';
import type { Project } from '../../src/model/project';
import { terrace } from '../ui/terrace';
import { smallProject } from '../workers/small-project';

// Texts of project files, links and libraries reached the page and the terminal with control characters and with characters that turn the
// order of what follows, so that a file could color the terminal or show another name than it has.

const ESCAPE = '\u001b[31m';
const TURNED = '\u202egnp.exe';
// As control characters in JSON have to be written.
const hostile = (project: Project): string =>
  projectText({
    ...project,
    name: `Terrace${ESCAPE}`,
    library: project.library.map((one) => ({ ...one, label: `${one.label}${TURNED}` })),
  });

it('are taken out of a project, which says so', () => {
  const read = parseProject(hostile(terrace()), 'mine.json');
  if (!read.ok) throw new Error(read.problem.text);
  expect(read.value.name).toBe('Terrace[31m');
  expect(read.value.library[0]!.label).toBe(`${terrace().library[0]!.label}gnp.exe`);
  const told = read.notices!.filter(({ code }) => code === 'unseen-characters');
  expect(told[0]).toMatchObject({ at: { file: 'mine.json', path: 'name', line: expect.any(Number) } });
  expect(told.length).toBe(Math.min(51, 1 + terrace().library.length));
});

it('are taken out of a library, and line breaks of a note stay', () => {
  const library = {
    type: 'upstand-library',
    version: 2,
    id: 'l',
    name: 'L',
    note: 'one\ntwo\u0007\u200d',
    finishes: [{ ...terrace().library[0]!, label: `A${TURNED}` }],
  };
  const read = parseLibrary(JSON.stringify(library));
  expect(read.ok && [read.value.note, read.value.finishes[0]!.label]).toEqual(['one\ntwo\u200d', 'Agnp.exe']);
});

it('never reach the terminal, not even from the name of a field or a file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'upstand-unseen-'));
  const file = join(folder, 'mine.json');
  const text = hostile(smallProject);
  writeFileSync(file, text.replace('{', `{"${JSON.stringify(`odd${ESCAPE}`).slice(1, -1)}": 1,`));
  for (const argv of [
    ['assess', file],
    ['assess', file, '--json'],
    ['assess', `${file}${ESCAPE}\u009b`],
    [`odd${ESCAPE}${TURNED}`],
  ]) {
    const { out, messages } = run(argv);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are looked for
    expect(out + messages).not.toMatch(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
  }
  expect(run([`odd${ESCAPE}`]).messages).toContain('odd\\u001b[31m');
});
