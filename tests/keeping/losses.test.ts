import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { createActions } from '../../src/app/actions';
import { databaseOpener } from '../../src/app/keeping/database';
import { readJournal } from '../../src/app/keeping/journal';
import { restore } from '../../src/app/keeping/restore';
import { readStart, startKeeping } from '../../src/app/keeping/start-keeping';
import { documentOf, initialState } from '../../src/app/state';
import { projectText } from '../../src/io/project-file';
import { withLocks } from './locks';
import { demo, emptyStore, openPage, type Page } from './page';

// What one had kept before is there afterwards, whatever comes in its place, and what one does is not lost on the way.

beforeEach(emptyStore);

const fromFile = { label: 'open file', isInFile: true };
const B = { ...demo, id: 'b', name: 'B' };
const here = (page: Page) => documentOf(page.store.getState());

/** The document that is kept under an id, as a file, and how many steps of it. */
async function kept(page: Pick<Page, 'open'>, id: string) {
  const stored = await readJournal(await page.open(), id);
  const restored = stored && restore(stored);
  return restored?.ok ? { text: projectText(restored.value.history.present), steps: stored!.steps.length } : null;
}

async function work(page: Page): Promise<void> {
  for (const finish of ['WD-03', 'WD-07', 'WD-01']) page.actions.lay(['floor'], finish);
  await page.flush();
}

describe('a project that is kept', () => {
  it('is not overwritten by an older file of it, opened while the open project cannot be kept', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.flush();
    await page.projects.openDocument(B, fromFile);
    await work(page);
    const before = await kept(page, 'b');
    await page.projects.open(demo.id);
    const other = await openPage(demo.id);
    other.actions.lay(['floor'], 'WD-07');
    await other.flush();
    page.actions.lay(['floor'], 'WD-03');
    await page.flush();
    expect(page.store.getState().keeping.state).toBe('elsewhere');

    await page.projects.openDocument({ ...B, note: 'as it was' }, fromFile);
    await page.flush();
    await page.flush();
    expect(await kept(page, 'b')).toEqual(before);
    expect(here(page)).toMatchObject({ id: 'b-copy', note: 'as it was' });
    expect(page.store.getState().told?.list.map(({ code }) => code)).toEqual(['kept-beside']);
    expect(page.store.getState().keeping.state).toBe('kept');
  });
});

describe('a store that answers late', () => {
  const memory = new Map<string, string>();
  const storage = {
    getItem: (key: string) => memory.get(key) ?? null,
    setItem: (key: string, value: string) => void memory.set(key, value),
  };
  beforeEach(() => {
    memory.clear();
    memory.set('upstand-open', demo.id);
    Object.assign(globalThis, { sessionStorage: storage, localStorage: storage });
  });
  afterEach(() => {
    Reflect.deleteProperty(globalThis, 'sessionStorage');
    Reflect.deleteProperty(globalThis, 'localStorage');
  });

  async function late() {
    const first = await openPage();
    await work(first);
    const before = await kept(first, demo.id);
    first.kill();
    const quick = databaseOpener();
    let answer = () => {};
    const answered = new Promise<void>((resolve) => {
      answer = resolve;
    });
    const open = async () => {
      await answered;
      return quick();
    };
    const start = await readStart(open, () => demo, 50);
    expect(start.shown).toBeNull();
    const store = createStore(() => initialState(demo, 'system'));
    const shelf = startKeeping(store, open, start, demo);
    const there = async () => {
      answer();
      await start.late;
      await shelf.projects.list();
    };
    return { before, store, shelf, there, page: { open: quick } };
  }

  it('gives what was kept after all, where nothing was done meanwhile', async () => {
    const { before, store, there } = await late();
    await there();
    expect(projectText(documentOf(store.getState()))).toBe(before!.text);
    expect(store.getState().history.past).toHaveLength(3);
  });

  it('does not lose it where something was', async () => {
    const { before, store, there, page } = await late();
    createActions(store).setLevel('ceiling', 0.5, false);
    await there();
    await expect.poll(() => store.getState().keeping.state).toBe('kept');
    expect(await kept(page, demo.id)).toEqual(before);
    expect(documentOf(store.getState()).id).toBe(`${demo.id}-copy`);
  });
});

describe('with locks of the browser', () => {
  let locks: ReturnType<typeof withLocks>;
  beforeEach(() => {
    locks = withLocks();
  });
  afterEach(() => locks.remove());

  it('going back and forth between two projects by undo and redo, both go on being kept', async () => {
    const first = await openPage();
    first.actions.lay(['floor'], 'WD-01');
    await first.flush();
    const second = await openPage(demo.id);
    second.actions.lay(['floor'], 'WD-03');
    await second.flush();
    expect(second.store.getState().keeping.state).toBe('elsewhere');
    await second.projects.openDocument(B, fromFile);
    await second.flush();
    expect(second.store.getState().keeping.state).toBe('kept');
    second.actions.undo();
    await second.flush();
    expect(second.store.getState().keeping.state).toBe('elsewhere');
    second.actions.redo();
    await second.flush();
    second.actions.lay(['floor'], 'WD-07');
    await second.flush();
    expect(second.store.getState().keeping.state).toBe('kept');
    expect((await kept(second, 'b'))?.text).toBe(projectText(here(second)));
    first.kill();
    second.kill();
    await expect.poll(() => locks.held()).toEqual([]);
  });

  it('a change made while the project is taken over from another tab is there afterwards', async () => {
    const first = await openPage();
    first.actions.lay(['floor'], 'WD-01');
    await first.flush();
    const second = await openPage(demo.id);
    const going = second.keeping.goOnHere();
    second.actions.lay(['floor'], 'WD-07');
    const text = projectText(here(second));
    await going;
    await second.flush();
    expect(projectText(here(second))).toBe(text);
    expect((await kept(second, demo.id))?.text).toBe(text);
    expect(first.store.getState().keeping).toMatchObject({ state: 'elsewhere', notice: { wasHere: true } });
    first.kill();
    second.kill();
  });

  it('a project that cannot be read is not taken from the tab that has it', async () => {
    const first = await openPage();
    first.actions.lay(['floor'], 'WD-01');
    await first.flush();
    const second = await openPage(demo.id);
    const database = await second.open();
    const checkpoint = (await database.get('checkpoints', demo.id))!;
    await database.put('checkpoints', { ...checkpoint, document: { version: 99 } });
    await second.keeping.goOnHere();
    expect(second.store.getState().keeping.notice?.kind).toBe('unreadable');
    expect(first.store.getState().keeping.state).toBe('kept');
    first.kill();
    second.kill();
  });
});

describe('where the browser refuses', () => {
  const refusing = (method: 'put' | 'delete') =>
    vi.spyOn(IDBObjectStore.prototype, method).mockImplementationOnce(() => {
      throw new DOMException('no', 'QuotaExceededError');
    });
  afterEach(() => {
    vi.restoreAllMocks();
  });

  it('a project that could not be removed is kept on', async () => {
    const page = await openPage();
    await work(page);
    refusing('delete');
    expect(await page.projects.remove(demo.id)).toBe(false);
    page.actions.lay(['floor'], 'WD-05');
    await page.flush();
    expect((await kept(page, demo.id))?.text).toBe(projectText(here(page)));
    expect(page.store.getState().keeping.state).toBe('kept');
  });

  it('a project that could not be brought back waits on', async () => {
    const page = await openPage();
    await work(page);
    const before = await kept(page, demo.id);
    await page.projects.remove(demo.id);
    refusing('put');
    expect(await page.projects.bringBack(demo.id)).toBe(false);
    expect(page.projects.removed()).toHaveLength(1);
    expect(await page.projects.bringBack(demo.id)).toBe(true);
    expect(await kept(page, demo.id)).toEqual(before);
  });
});

it('a project is brought back beside one that has come under its id', async () => {
  const page = await openPage();
  await page.projects.openDocument(B, fromFile);
  await work(page);
  const text = projectText(here(page));
  await page.projects.remove('b');
  await page.projects.openDocument({ ...B, note: 'another' }, fromFile);
  await page.flush();
  expect(await page.projects.bringBack('b')).toBe(true);
  expect((await kept(page, 'b'))?.text).toContain('another');
  expect((await kept(page, 'b-copy'))?.text).toBe(text.replace('"id": "b"', '"id": "b-copy"'));
});

it('two tabs that keep a copy at the same time get one each', async () => {
  const page = await openPage();
  await work(page);
  const other = await openPage(null, { ...demo, id: 'other' });
  const copies = await Promise.all([page.projects.copy(demo.id), other.projects.copy(demo.id)]);
  expect(new Set(copies).size).toBe(2);
  expect(copies).not.toContain(null);
});
