import { expect, it } from 'vitest';
import { fileNameOf } from '../../src/app/file-name';

it('calls a file as its project is called, as far as every system allows', () => {
  const called = (name: string) => fileNameOf({ id: 'kitchen-1', name });
  expect(called('Hill house')).toBe('Hill house');
  expect(called('Küche Müller')).toBe('Küche Müller');
  expect(called('a/b\\c: "x" <y>|?*')).toBe('a b c x y');
  expect(called('..secret. ')).toBe('secret');
  expect(called('\u202egnp.exe')).toBe('gnp.exe');
  expect(called(' /// ')).toBe('kitchen-1');
  expect([...called('🏠'.repeat(80))]).toHaveLength(50);
});
