import { expect, it } from 'vitest';
import { purposeOfJson, purposeOfName } from '../../src/io/file-of';
import { libraryText } from '../../src/io/library-file';
import { lookText } from '../../src/io/look-file';
import { demoProject, demoText } from './demo';

it('tells by its name what a file is for, whatever the case, and asks JSON itself', () => {
  expect(purposeOfName('My range.CSV')).toBe('finishes');
  expect(purposeOfName('fan.deck.cxf')).toBe('finishes');
  expect(purposeOfName('spot.IES')).toBe('beam');
  expect(purposeOfName('photo.jpeg')).toBe('picture');
  expect(purposeOfName('terrace.project.json')).toBe('json');
  for (const other of ['a.exe', 'a', '', '.', 'csv', 'a.csv.exe', 'a.constructor', 'a.__proto__']) {
    expect(purposeOfName(other), other).toBeNull();
  }
});

it('tells JSON by what it says it is; all else is opened as a project, which says what is wrong', () => {
  const { library } = demoProject();
  const look = { id: 'seen', name: 'Seen', source: 'picture', surfaces: [] } as const;
  expect(purposeOfJson(demoText())).toBe('project');
  expect(purposeOfJson(lookText(look))).toBe('look');
  expect(
    purposeOfJson(
      libraryText({ type: 'upstand-library', version: 2, id: 'own', name: 'Own', note: '', finishes: library }),
    ),
  ).toBe('finishes');
  for (const other of ['{', '[]', 'null', '{"type": "toString"}', '{"type": "recipe"}']) {
    expect(purposeOfJson(other), other).toBe('project');
  }
});
