import { openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { databaseOpener } from '../../src/app/keeping/database';
import { readStart } from '../../src/app/keeping/start-keeping';
import { documentOf } from '../../src/app/state';
import { demo, emptyStore, openPage } from './page';

// Two versions of the program in one browser: what the newer one keeps is neither lost nor overwritten by the older one, which says so.

beforeEach(() => {
  emptyStore();
  localStorage.clear();
});

const items = new Map<string, string>();
globalThis.localStorage = {
  getItem: (key: string) => items.get(key) ?? null,
  setItem: (key: string, value: string) => void items.set(key, value),
  clear: () => items.clear(),
} as Storage;
globalThis.sessionStorage = globalThis.localStorage;

/** The store as a newer program leaves it: with a table of its own. */
async function upgrade(): Promise<void> {
  const newer = await openDB('upstand', 1000, {
    upgrade: (database) => void database.createObjectStore('moods', { keyPath: 'id' }),
  });
  await newer.put('moods', { id: 'bright' });
  newer.close();
}

async function everything(): Promise<Record<string, unknown[]>> {
  const database = await openDB('upstand');
  const tables = await Promise.all(
    [...database.objectStoreNames].map(async (name) => [name, await database.getAll(name)] as const),
  );
  const { version } = database;
  database.close();
  return { version: [version], ...Object.fromEntries(tables) };
}

describe('a page of an older version', () => {
  it('makes way for a newer one in another tab, keeps nothing from then on and says why, once', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.flush();
    await upgrade();
    const before = await everything();
    expect(before).toMatchObject({ version: [1000], moods: [{ id: 'bright' }], projects: [{ id: demo.id }] });

    page.actions.lay(['floor'], 'WD-03');
    await page.flush();
    const { keeping } = page.store.getState();
    expect(keeping).toMatchObject({ state: 'newer', notice: { kind: 'unkept', why: 'newer' } });
    expect(await everything()).toEqual(before);
    expect(documentOf(page.store.getState()).options.at(-1)!.scheme.floor.finish).toBe('WD-03');

    page.store.setState({ keeping: { ...keeping, notice: null } });
    page.actions.lay(['floor'], 'WD-07');
    await page.flush();
    await page.projects.list();
    await page.libraries.list();
    expect(page.store.getState().keeping.notice).toBeNull();
    // What is asked for is answered, again and again.
    await page.projects.copy(demo.id);
    expect(page.store.getState().keeping.notice).toEqual({ kind: 'unkept', why: 'newer' });
    expect(await everything()).toEqual(before);
  });

  it('that is opened when the newer one has written already starts with the demo, and says why', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.flush();
    page.kill();
    await upgrade();
    const before = await everything();
    localStorage.setItem('upstand-open', demo.id);
    const start = await readStart(databaseOpener(), () => demo);
    expect(start).toMatchObject({ shown: null, notice: null, error: { name: 'VersionError' } });
    const later = await openPage();
    later.actions.lay(['floor'], 'WD-03');
    await later.flush();
    expect(later.store.getState().keeping.notice).toEqual({ kind: 'unkept', why: 'newer' });
    expect(await everything()).toEqual(before);
  });
});
