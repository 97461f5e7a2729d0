import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import { demoText } from '../io/demo';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// A color that no surface can have was taken from a project file without a word. CIELAB 95, 60, 0 under D65: nothing that
// light can be that pink (object-color solid, MacAdam 1935).

it('refuses a file with a color outside the object-color solid, says where, and keeps the document', async () => {
  const store = createStore(() => initialState(terrace(), 'system'));
  const before = projectOf(store.getState());
  const text = demoText().replaceAll('"lab": [32, -13, -4.5]', '"lab": [95, 60, 0]');
  const line = text.split('\n').findIndex((one) => one.includes('[95, 60, 0]')) + 1;
  await openProject(store, unkept(store), new File([text], 'pink.json'));
  const { told } = store.getState();
  expect(told?.kind).toBe('problem');
  expect(told?.list[0]).toMatchObject({
    code: 'outside-object-color-solid',
    at: { file: 'pink.json', line, path: 'library[0].components[0].color' },
  });
  expect(told?.list[0].remedy).toMatch(/Check the numbers/);
  expect(projectOf(store.getState())).toBe(before);
});
