import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// A file of any size was read whole, which could take the page down.

it('refuses a file far larger than any project before it is read, and says what to do', async () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  const before = projectOf(store.getState());
  const file = new File(['{}'], 'film.json');
  Object.defineProperty(file, 'size', { value: 3e9 });
  await openProject(store, unkept(store), file);
  const [problem] = store.getState().told!.list;
  expect(problem).toMatchObject({ code: 'file-too-large', at: { file: 'film.json' } });
  expect(problem.text).toContain('3000 MB');
  expect(problem.remedy).toContain('20 MB');
  expect(projectOf(store.getState())).toBe(before);
});
