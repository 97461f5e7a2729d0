import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Database, OpenDatabase } from '../../src/app/keeping/database';
import { keptShowroom, showroomAtStart, showroomOfNote } from '../../src/app/showroom/kept-showroom';
import { projectText } from '../../src/io/project-file';
import { terrace } from '../ui/terrace';

const NOTE = {
  name: 'Corner shop',
  range: { project: true, libraries: ['range'] },
  option: 'our-floor',
  minutes: 3,
  fillsScreen: false,
  typesIn: false,
  start: projectText(terrace()),
};
const SOON = { most_ms: 200, pause_ms: 1 };

const marks = new Map<string, string>();
beforeEach(() => {
  marks.clear();
  marks.set('upstand-showroom', 'on');
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => marks.get(key) ?? null,
    removeItem: (key: string) => marks.delete(key),
  });
});
afterEach(() => vi.unstubAllGlobals());

const store = (get: () => Promise<unknown>): OpenDatabase => {
  const database = { get } as unknown as Database;
  return async () => database;
};
const isOn = () => marks.has('upstand-showroom');

it('reads a note as it was kept, and one of before the option was chosen', () => {
  expect(showroomOfNote(NOTE)).toMatchObject({ name: 'Corner shop', option: 'our-floor', start: { id: terrace().id } });
  const { option: _, ...older } = NOTE;
  expect(showroomOfNote(older)).toMatchObject({ option: '' });
});

it.each([
  ['nothing of it', {}],
  ['no range', { ...NOTE, range: undefined }],
  ['libraries that are no list', { ...NOTE, range: { project: true, libraries: 'range' } }],
  ['no time', { ...NOTE, minutes: Number.NaN }],
  ['a project that is none', { ...NOTE, start: '{}' }],
  ['a text', 'showroom'],
])('takes %s for no showroom, and stays on without beginning', async (_, note) => {
  expect(showroomOfNote(note)).toBeNull();
  expect(await keptShowroom(store(async () => note))).toBeNull();
  expect(
    await showroomAtStart(
      store(async () => note),
      SOON,
    ),
  ).toBe('unreadable');
  expect(isOn()).toBe(true);
});

it('is off only where the browser really has nothing of it any more', async () => {
  expect(
    await showroomAtStart(
      store(async () => undefined),
      SOON,
    ),
  ).toBe('lost');
  expect(isOn()).toBe(false);
  expect(
    await showroomAtStart(
      store(async () => NOTE),
      SOON,
    ),
  ).toBeNull();
});

it('asks a store again that fails once, and stays on where it goes on failing', async () => {
  let count = 0;
  const failingOnce = store(async () => {
    if (++count === 1) throw new DOMException('gone', 'UnknownError');
    return NOTE;
  });
  expect(await showroomAtStart(failingOnce, SOON)).toMatchObject({ name: 'Corner shop' });
  const failing = store(() => Promise.reject(new DOMException('gone', 'UnknownError')));
  expect(await showroomAtStart(failing, SOON)).toBe('unanswered');
  expect(isOn()).toBe(true);
});

it('does not wait for ever for a store that does not answer', async () => {
  expect(await showroomAtStart(() => new Promise(() => undefined), { most_ms: 20, pause_ms: 1 })).toBe('unanswered');
  expect(isOn()).toBe(true);
});
