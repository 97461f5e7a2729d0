import { expect, it } from 'vitest';
import { usableColors } from '../../src/app/files';
import { checkColors } from '../../src/io/check-colors';
import { projectText } from '../../src/io/project-file';
import type { CopiedLook } from '../../src/model/look';
import { terrace } from '../ui/terrace';

// A project with such a look opened without a word, and its look could never be carried over.
it('a look in a project with a color that no surface can have is told, with its place, and left out where one goes on', async () => {
  const color = { kind: 'lab', lab: [97, 0, 140], illuminant: 'D65', observer_deg: 2 } as const;
  const look: CopiedLook = {
    id: 'look-1',
    name: 'Theirs',
    source: 'picture',
    surfaces: [{ surface: 'wall', colors: [{ role: 'base', share: 1, color, provenance: 'photo' }] }],
  };
  const project = { ...terrace(), library: [], looks: [look] };
  const checked = checkColors(project, projectText(project), 'mine.project.json');
  expect(!checked.ok && checked.problem).toMatchObject({
    code: 'outside-object-color-solid',
    at: { path: 'looks[0].surfaces[0].colors[0].color', file: 'mine.project.json', line: expect.any(Number) },
  });
  const usable = await usableColors(project, projectText(project), 'mine.project.json');
  expect(usable.ok && usable.value.looks).toEqual([]);
  expect(usable.ok && usable.notices![0]!.text).toContain('The look "Theirs" was left out');
});
