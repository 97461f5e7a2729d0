import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shortcutOf } from '../../src/app/shortcuts';
import { nextIndex } from '../../src/ui/drawer/next-index';

const press = (key: string, more: Partial<Parameters<typeof shortcutOf>[0]> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...more,
});

it('undoes and redoes by the usual keys, whether or not letters are on', () => {
  for (const letters of [true, false]) {
    expect(shortcutOf(press('z', { ctrlKey: true }), letters)).toBe('undo');
    expect(shortcutOf(press('Z', { ctrlKey: true, shiftKey: true }), letters)).toBe('redo');
    expect(shortcutOf(press('y', { ctrlKey: true }), letters)).toBe('redo');
    expect(shortcutOf(press('z', { metaKey: true }), letters)).toBe('undo');
  }
});

it('listens to single letters only while they are on (WCAG 2.1.4)', () => {
  expect(shortcutOf(press('o'), true)).toBe('hold-other');
  expect(shortcutOf(press('s'), true)).toBe('side-by-side');
  expect(shortcutOf(press('m'), true)).toBe('mark');
  expect(shortcutOf(press('3'), true)).toEqual({ viewpoint: 2 });
  for (const key of ['o', 's', 'm', '3']) expect(shortcutOf(press(key), false)).toBeNull();
  expect(shortcutOf(press('s', { ctrlKey: true }), true)).toBeNull();
});

it('moves within a list and never out of it', () => {
  const keys = ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown', 'Home', 'End'];
  const cases = fc.record({
    key: fc.constantFrom(...keys),
    count: fc.integer({ min: 1, max: 80 }),
    columns: fc.integer({ min: 1, max: 6 }),
  });
  fc.assert(
    fc.property(cases, fc.nat(), ({ key, count, columns }, seed) => {
      const next = nextIndex(key, seed % count, count, columns)!;
      expect(next).toBeGreaterThanOrEqual(0);
      expect(next).toBeLessThan(count);
    }),
  );
  expect(nextIndex('ArrowDown', 0, 5, 2)).toBe(2);
  expect(nextIndex('ArrowDown', 4, 5, 2)).toBe(4);
  expect(nextIndex('a', 0, 5, 2)).toBeNull();
});
