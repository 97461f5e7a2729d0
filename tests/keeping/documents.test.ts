import { beforeEach, describe, expect, it } from 'vitest';
import { documentOf } from '../../src/app/state';
import { projectText } from '../../src/io/project-file';
import { undoLabel } from '../../src/model/history';
import { demo, emptyStore, openPage, type Page } from './page';

beforeEach(emptyStore);

const other = { ...demo, id: 'other', name: 'Other' };
const fromFile = { label: 'open file', isInFile: true };
const here = (page: Page) => documentOf(page.store.getState());
const told = (page: Page) => page.store.getState().told?.list.map(({ code }) => code) ?? [];
const kept = async (page: Page) => (await page.projects.list()).map(({ id, name }) => `${id}: ${name}`).sort();
const lay = (page: Page, finish: string) => page.actions.lay(['floor'], finish);

describe('a document that comes in', () => {
  it('is a project of its own where its id is not kept', async () => {
    const page = await openPage();
    await page.projects.openDocument(other, fromFile);
    await page.flush();
    // The demo is nobody's own.
    expect(await kept(page)).toEqual(['other: Other']);
    expect(page.store.getState().keeping).toMatchObject({ state: 'kept', notice: { kind: 'switched', from: null } });
    expect(page.store.getState().saved).toBe(here(page));
  });

  it('is the kept project with all its steps where it is the same', async () => {
    const page = await openPage();
    await page.projects.openDocument(other, fromFile);
    lay(page, 'WD-01');
    const text = projectText(here(page));
    await page.projects.openDemo();
    await page.projects.openDocument(JSON.parse(JSON.stringify(other)), fromFile);
    // Without the change it differs from what is kept, which is in no file: it stands beside it.
    expect(told(page)).toEqual(['kept-beside']);
    expect(here(page)).toMatchObject({ id: 'other-copy', name: 'Other (copy)' });

    await page.projects.open('other');
    expect(projectText(here(page))).toBe(text);
    const same = here(page);
    await page.projects.openDemo();
    await page.projects.openDocument(JSON.parse(JSON.stringify(same)), fromFile);
    expect(told(page)).toEqual(['same-project']);
    expect(undoLabel(page.store.getState().history)).toContain('loor');
    expect(await kept(page)).toHaveLength(2);
  });

  it('is the next step of the kept project where that is in a file as it is', async () => {
    const page = await openPage();
    await page.projects.openDocument(other, fromFile);
    await page.projects.openDemo();
    await page.projects.openDocument({ ...other, note: 'worked on elsewhere' }, fromFile);
    expect(told(page)).toEqual(['went-on']);
    expect(here(page)).toMatchObject({ id: 'other', note: 'worked on elsewhere' });
    page.actions.undo();
    expect(here(page).note).toBe(other.note);
    await page.flush();
    expect(await kept(page)).toHaveLength(1);
  });

  it('overwrites nothing of the open project either', async () => {
    const page = await openPage();
    lay(page, 'WD-01');
    await page.projects.openDocument({ ...demo, note: 'older' }, fromFile);
    expect(told(page)).toEqual(['kept-beside']);
    await page.flush();
    expect(await kept(page)).toEqual([`terrace-copy: ${demo.name} (copy)`, `terrace: ${demo.name}`]);
    await page.projects.open(demo.id);
    expect(undoLabel(page.store.getState().history)).toContain('loor');
  });

  it('of one and the same file, opened again and again, makes no copies', async () => {
    const page = await openPage();
    for (let i = 0; i < 3; i++) await page.projects.openDocument({ ...other }, fromFile);
    expect(await kept(page)).toEqual(['other: Other']);
  });
});

describe('the shelf of projects', () => {
  it('copies, removes and brings back, with all steps', async () => {
    const page = await openPage();
    lay(page, 'WD-01');
    const copy = await page.projects.copy(demo.id);
    expect(await kept(page)).toEqual([`terrace-copy: ${demo.name} (copy)`, `terrace: ${demo.name}`]);
    expect(await page.projects.copy(copy!)).toBe('terrace-copy-2');
    expect(await page.projects.remove(copy!)).toBe(true);
    expect(await kept(page)).toHaveLength(2);
    expect(page.projects.removed().map(({ id }) => id)).toEqual([copy]);
    await page.projects.bringBack(copy!);
    expect(page.projects.removed()).toEqual([]);
    expect(await kept(page)).toHaveLength(3);
    expect(here(page).id).toBe(demo.id);
  });

  it('opens another where the open one is removed, the demo as it begins where there is none, and goes back', async () => {
    const page = await openPage();
    lay(page, 'WD-01');
    await page.flush();
    const text = projectText(here(page));
    await page.projects.remove(demo.id);
    expect(here(page)).toEqual({ ...demo, id: 'terrace-copy' });
    await page.flush();
    expect(await kept(page)).toEqual([]);
    lay(page, 'WD-03');
    await page.projects.bringBack(demo.id);
    expect(projectText(here(page))).toBe(text);
    expect(undoLabel(page.store.getState().history)).toContain('loor');

    await page.projects.openDocument(other, fromFile);
    await page.projects.remove('other');
    expect(here(page).id).toBe('terrace-copy');
    const { notice } = page.store.getState().keeping;
    expect(notice).toEqual({ kind: 'removed', id: 'other', name: 'Other', to: demo.name });
    page.actions.undo();
    expect(page.store.getState().keeping.notice).toBeNull();
  });

  it('keeps no demo that nobody changed: not where the last project is removed and brought back either', async () => {
    const page = await openPage(null, other);
    lay(page, 'WD-01');
    await page.flush();
    await page.projects.remove('other');
    expect(here(page)).toEqual(demo);
    expect(page.store.getState().keeping).toMatchObject({
      state: 'nothing',
      document: null,
      notice: { kind: 'removed', id: 'other', to: null },
    });
    expect(await kept(page)).toEqual([]);
    await page.projects.bringBack('other');
    expect(here(page).id).toBe('other');
    expect(await kept(page)).toEqual(['other: Other']);
    expect(page.store.getState().keeping.notice).toMatchObject({ kind: 'switched', from: null });
  });

  it('opens the demo as it always begins, beside the one that was made one’s own', async () => {
    const page = await openPage();
    lay(page, 'WD-01');
    await page.flush();
    await page.projects.openDemo();
    expect(here(page)).toEqual({ ...demo, id: 'terrace-copy' });
    await page.flush();
    expect(await kept(page)).toEqual([`terrace: ${demo.name}`]);
    lay(page, 'WD-03');
    await page.flush();
    expect(await kept(page)).toHaveLength(2);
  });

  it('tells who listens of what came and went', async () => {
    const page = await openPage();
    let told = 0;
    const stop = page.projects.onChange(() => told++);
    await page.projects.copy(demo.id);
    expect(told).toBe(1);
    stop();
    await page.projects.copy(demo.id);
    expect(told).toBe(1);
  });
});
