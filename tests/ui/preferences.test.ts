import fc from 'fast-check';
import { expect, it } from 'vitest';
import { usualWords } from '../../src/app/manner';
import { changedPreferences, readPreferences } from '../../src/app/preferences';

const USUAL = { theme: 'system', letterKeys: true, sheen: true, words: null, lengthUnit: null };

it('reads what was kept, entry by entry, and carries the theme over that was kept alone', () => {
  const kept = { theme: 'dark', letterKeys: false, sheen: false, words: 'uk', lengthUnit: 'in' } as const;
  expect(readPreferences(JSON.stringify(kept))).toEqual(kept);
  expect(readPreferences(null, 'dark')).toEqual({ ...USUAL, theme: 'dark' });
  expect(readPreferences('{"theme":"light"}', 'dark')).toEqual({ ...USUAL, theme: 'light' });
  expect(readPreferences('{"theme":"pink","words":"uk","lengthUnit":"ell","sheen":1}')).toEqual({
    ...USUAL,
    words: 'uk',
  });
});

it('keeps what was changed here, and leaves what another tab or a newer program keeps', () => {
  const before = readPreferences(null);
  const other = JSON.stringify({ ...before, words: 'uk', lengthUnit: 'in', later: [1] });
  const kept = changedPreferences(other, null, { ...before, theme: 'dark' }, before);
  expect(JSON.parse(kept)).toEqual({ ...before, theme: 'dark', words: 'uk', lengthUnit: 'in', later: [1] });
  expect(JSON.parse(changedPreferences(null, 'dark', { ...before, words: 'uk' }, before))).toEqual({
    theme: 'dark',
    words: 'uk',
  });
  expect(JSON.parse(changedPreferences('[3]', null, { ...before, sheen: false }, before))).toEqual({ sheen: false });
});

it('takes no harm from anything that may be kept', () => {
  const text = fc.oneof(fc.string(), fc.json());
  fc.assert(
    fc.property(text, text, (kept, theme) => {
      expect(Object.keys(readPreferences(kept, theme))).toEqual(Object.keys(USUAL));
    }),
  );
});

it.each([
  ['en-US', 'eu', 'us'],
  ['en', 'uk', 'us'],
  ['en-GB', 'us', 'uk'],
  ['en-AU', 'us', 'uk'],
  ['de', 'eu', 'uk'],
  ['fr-CA', 'us', 'us'],
] as const)('words for %s in a kitchen of %s: %s', (language, region, words) =>
  expect(usualWords(language, region)).toBe(words),
);
