import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import type { SurfaceId } from '../../src/engine/surface';
import { projectText } from '../../src/io/project-file';
import { applyCommand } from '../../src/model/apply-command';
import { usesOf } from '../../src/model/change-finishes';
import { checkProject } from '../../src/model/check-project';
import { EMPTY } from '../../src/model/empty-surface';
import { withoutFinishes } from '../../src/model/without-finishes';
import { demoText } from '../io/demo';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// A color that no surface can have was taken from a project file without a word, then it kept the whole project from its owner. CIELAB 95,
// 60, 0 under D65: nothing that light can be that pink (object-color solid, MacAdam 1935).

const text = demoText().replaceAll('"lab": [32, -13, -4.5]', '"lab": [95, 60, 0]');

async function opened(file: File) {
  const store = createStore(() => initialState(terrace(), 'system'));
  await openProject(store, unkept(store), file);
  const { told } = store.getState();
  return { told, project: projectOf(store.getState()) };
}

it('opens a file with a color outside the object-color solid without that finish, and says which, where, and what lay there', async () => {
  const { told, project } = await opened(new File([text], 'pink.json'));
  const line = text.split('\n').findIndex((one) => one.includes('[95, 60, 0]')) + 1;
  const gone = terrace().library[0]!;
  expect(told?.list[0]).toMatchObject({
    code: 'outside-object-color-solid',
    at: { file: 'pink.json', line, path: 'library[0].components[0].color' },
  });
  expect(told?.list[0].text).toContain(`${gone.label} (${gone.id}) was left out`);
  expect(told?.list[0].text).toMatch(/where it lay: .+ in "/);
  expect(told?.list[0].remedy).toMatch(/as it was: correct the numbers/);
  expect(project.library.map(({ id }) => id)).toEqual(
    terrace()
      .library.slice(1)
      .map(({ id }) => id),
  );
  const before = terrace().options;
  project.options.forEach((option, i) => {
    for (const [surface, placement] of Object.entries(option.scheme)) {
      const was = before[i]!.scheme[surface as SurfaceId];
      expect(placement).toEqual(was.finish === gone.id ? EMPTY : was);
    }
  });
  expect(checkProject(project)).toEqual([]);
});

it('leaves it out of a frozen copy as well, and says so once', async () => {
  const frozen = applyCommand(terrace(), {
    kind: 'freeze-revision',
    id: 'R1',
    name: 'One',
    at: '2026-05-04T16:30Z',
    note: '',
  });
  if (!frozen.ok) throw new Error(frozen.problem.text);
  const pink = projectText(frozen.value).replaceAll('"lab": [32, -13, -4.5]', '"lab": [95, 60, 0]');
  const { told, project } = await opened(new File([pink], 'pink.json'));
  expect(told?.list.filter(({ code }) => code === 'outside-object-color-solid')).toHaveLength(1);
  const gone = terrace().library[0]!.id;
  const [revision] = project.revisions!;
  expect(revision!.document.library.some(({ id }) => id === gone)).toBe(false);
  expect(checkProject(project)).toEqual([]);
});

it('names no grout any more where the grout had such a color', () => {
  const grout = terrace().library.find((one) => one.class === 'grout' && usesOf(terrace(), one.id).length > 0)!;
  const left = withoutFinishes(terrace(), new Set([grout.id]));
  expect(usesOf(left, grout.id)).toEqual([]);
  expect(checkProject(left)).toEqual([]);
});
