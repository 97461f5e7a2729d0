import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import { locateJson } from '../../src/io/json-text';
import { projectText } from '../../src/io/project-file';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// A text of some million characters ran out of the stack of the expression that read it, and the page said nothing.

it.each([
  ['a text', (long: string) => `{"a":"${long}"}`, 'x'.repeat(18e6)],
  ['escapes', (long: string) => `{"a":"${long}"}`, '\\n'.repeat(6e6)],
  ['digits', (long: string) => `{"a":0.${long}}`, '1'.repeat(18e6)],
  ['blanks', (long: string) => `{"a":${long}1}`, ' '.repeat(18e6)],
])('JSON with very many of %s in a row is read', (_, around, long) => {
  expect(locateJson(around(long)).ok).toBe(true);
});

it('a project with such a note opens', async () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  const project = { ...terrace(), note: 'n'.repeat(16e6) };
  await openProject(store, unkept(store), new File([projectText(project)], 'mine.project.json'));
  expect(store.getState().told).toBeNull();
  expect(projectOf(store.getState()).note).toHaveLength(16e6);
});
