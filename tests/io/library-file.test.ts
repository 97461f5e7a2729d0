import { expect, it } from 'vitest';
import { libraryText, parseLibrary } from '../../src/io/library-file';
import type { Library } from '../../src/model/library';
import { demoProject, demoText } from './demo';

const LIBRARY: Library = {
  type: 'upstand-library',
  version: 2,
  id: 'range',
  name: 'Range',
  note: '',
  finishes: demoProject().library.slice(0, 2),
};

/** The text of the library with something else in it. */
const changed = (change: (library: Record<string, unknown>) => void): string => {
  const copy = JSON.parse(libraryText(LIBRARY)) as Record<string, unknown>;
  change(copy);
  return JSON.stringify(copy, null, 1);
};

it('gives a library back as it was written', () => {
  expect(parseLibrary(libraryText(LIBRARY), 'range.json')).toEqual({ ok: true, value: LIBRARY });
});

it('takes a library of version 1, which had neither prices nor thicknesses, and keeps them where there are some', () => {
  const old = changed((library) => Object.assign(library, { version: 1 }));
  expect(parseLibrary(old, 'range.json')).toEqual({ ok: true, value: LIBRARY });
  const [first, second] = LIBRARY.finishes;
  const price = { amount: 49.9, currency: 'EUR', per: 'm2' } as const;
  const priced = { ...LIBRARY, finishes: [{ ...first!, thickness_mm: 12, supply: { price } }, second!] };
  expect(parseLibrary(libraryText(priced), 'range.json')).toEqual({ ok: true, value: priced });
});

it('takes the library of a project', () => {
  const read = parseLibrary(demoText(), 'demo.json');
  expect(read).toMatchObject({
    ok: true,
    value: { type: 'upstand-library', version: 2, id: 'terrace', finishes: demoProject().library },
  });
});

it('leaves out fields it does not know, scales shares that miss 1 by rounding, and says both', () => {
  const read = parseLibrary(
    changed((library) => {
      const [first] = library['finishes'] as { components: { share: number }[] }[];
      first!.components[0]!.share = 0.999;
      library['shelf'] = 3;
    }),
    'range.json',
  );
  expect(read).toMatchObject({
    ok: true,
    value: LIBRARY,
    notices: [{ code: 'unknown-field' }, { code: 'shares-scaled' }],
  });
});

it.each([
  ['no JSON', () => '{"type":', /json|end/i, undefined],
  ['another kind of file', () => '{"type": "upstand-look"}', /no library/, 'not-a-library'],
  ['a newer version', () => changed((library) => Object.assign(library, { version: 3 })), /version 3/, 'newer-version'],
  ['a missing field', () => changed((library) => delete library['name']), /name is missing/, 'missing-field'],
  [
    'an id that stands twice',
    () => changed((library) => Object.assign(library, { finishes: [LIBRARY.finishes[0], LIBRARY.finishes[0]] })),
    /stands already/,
    'duplicate-id',
  ],
  [
    'a finish that is none',
    () => changed((library) => Object.assign(library, { finishes: [{ ...LIBRARY.finishes[0], gloss_gu: -1 }] })),
    /gloss_gu is -1/,
    'out-of-range',
  ],
])('refuses %s, with its line', (_, text, words, code) => {
  const read = parseLibrary(text(), 'range.json');
  if (read.ok) throw new Error('was read');
  expect(read.problem.text).toMatch(words);
  if (code) expect(read.problem.code).toBe(code);
  expect(read.problem.at).toMatchObject({ file: 'range.json', line: expect.any(Number) });
});
