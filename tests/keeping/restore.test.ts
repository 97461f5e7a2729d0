import { createHash } from 'node:crypto';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { readJournal } from '../../src/app/keeping/journal';
import { restore } from '../../src/app/keeping/restore';
import { documentOf, isUnsaved } from '../../src/app/state';
import { projectText } from '../../src/io/project-file';
import { type History, redoLabel, STEPS_KEPT, undoLabel } from '../../src/model/history';
import type { Project } from '../../src/model/project';
import { demo, emptyStore, openPage, type Page } from './page';

beforeEach(emptyStore);

const digest = (project: Project): string => createHash('sha256').update(projectText(project)).digest('hex');
/** A history by labels and digests of files, to compare with another one. */
const inWords = ({ past, present, future }: History<Project>) => ({
  past: past.map(({ label, document }) => [label, digest(document)]),
  present: digest(present),
  future: future.map(({ label, document }) => [label, digest(document)]),
});
const historyOf = (page: Page) => page.store.getState().history;

/** What the store holds. */
async function storedHistory(page: Page): Promise<History<Project>> {
  const read = restore((await readJournal(await page.open(), demo.id))!);
  if (!read.ok) throw new Error(read.problem.text);
  return read.value.history;
}

/** The tab is killed, another one opened. */
async function reopened(page: Page): Promise<Page> {
  page.kill();
  return openPage(documentOf(page.store.getState()).id);
}

describe('a project', () => {
  it('that nothing was changed of is not kept', async () => {
    const page = await openPage();
    await page.flush();
    expect(await page.projects.list()).toEqual([]);
    expect(page.store.getState().keeping.state).toBe('nothing');
  });

  it('comes back with all its steps, where it stood among them', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    page.actions.lay(['floor'], 'WD-03');
    page.actions.setLevel('ceiling', 0.5, false);
    page.actions.undo();
    page.actions.undo();
    await page.flush();
    const after = await reopened(page);
    expect(inWords(historyOf(after))).toEqual(inWords(historyOf(page)));
    after.actions.redo();
    after.actions.redo();
    expect(redoLabel(historyOf(after))).toBeNull();
    expect(undoLabel(historyOf(after))).toContain('ceiling');
    await after.flush();
    expect(inWords(historyOf(await reopened(after)))).toEqual(inWords(historyOf(after)));
  });

  it('comes back as it was after any of its changes', async () => {
    let page = await openPage();
    const changes: readonly ((actions: Page['actions']) => void)[] = [
      (actions) => actions.lay(['floor'], 'WD-01'),
      (actions) => actions.setLevel('ceiling', 0.2, false),
      (actions) => actions.setLevel('ceiling', 0.4, true),
      (actions) => actions.undo(),
      (actions) => actions.undo(),
      (actions) => actions.redo(),
      (actions) => actions.copyOption(),
      (actions) => actions.empty(['backsplash']),
      (actions) => actions.undo(),
      (actions) => actions.removeOption(),
    ];
    for (const change of changes) {
      change(page.actions);
      await page.flush();
      const after = await reopened(page);
      expect(inWords(historyOf(after))).toEqual(inWords(historyOf(page)));
      page = after;
    }
  });

  it('takes a drag as one step, the last of it', async () => {
    const page = await openPage();
    for (let i = 0; i < 20; i++) {
      page.actions.setLevel('ceiling', i / 20, i > 0);
      if (i % 3 === 0) await page.flush();
    }
    await page.flush();
    expect(await (await page.open()).count('steps')).toBe(1);
    const after = await reopened(page);
    expect(historyOf(after).past).toHaveLength(1);
    expect(inWords(historyOf(after))).toEqual(inWords(historyOf(page)));
  });

  it('keeps a bounded number of steps, and as many in the store', async () => {
    const page = await openPage();
    for (let i = 0; i < STEPS_KEPT + 30; i++) {
      page.actions.run({ kind: 'rename', what: 'project', name: `Name ${i}` });
      if (i % 40 === 0) await page.flush();
    }
    await page.flush();
    expect(await (await page.open()).count('steps')).toBe(STEPS_KEPT);
    const after = await reopened(page);
    expect(historyOf(after).past).toHaveLength(STEPS_KEPT);
    expect(historyOf(after).past.map(({ document }) => document.name)).toEqual(
      historyOf(page).past.map(({ document }) => document.name),
    );
  });

  it('is kept whole again when what was kept whole is undone and something else done', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.flush();
    page.actions.undo();
    page.actions.lay(['floor'], 'WD-03');
    await page.flush();
    expect(inWords(historyOf(await reopened(page)))).toEqual(inWords(historyOf(page)));
  });

  it('knows what of it is in a file', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    page.store.setState({ saved: documentOf(page.store.getState()) });
    await page.flush();
    page.actions.lay(['floor'], 'WD-03');
    await page.flush();
    const after = await reopened(page);
    expect(after.store.getState().saved).toBe(historyOf(after).past.at(-1)?.document);
  });

  it('keeps what belongs to it when another one comes, each with its own steps', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.projects.openDocument({ ...demo, id: 'other', name: 'Other' }, { label: 'open', isInFile: true });
    expect(page.store.getState().keeping.notice).toMatchObject({ kind: 'switched', from: { id: demo.id } });
    expect(undoLabel(historyOf(page))).toBeNull();
    await page.flush();
    expect((await page.projects.list()).map(({ id }) => id).sort()).toEqual([demo.id, 'other'].sort());
    expect(await page.projects.open(demo.id)).toBe(true);
    expect(undoLabel(historyOf(page))).toContain('loor');
  });
});

describe('a store without room', () => {
  it('holds the last whole state, while the page goes on, and all of it once there is room', async () => {
    const page = await openPage();
    page.actions.lay(['floor'], 'WD-01');
    await page.flush();
    const before = inWords(historyOf(page));

    const { put } = IDBObjectStore.prototype;
    const full = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, value) {
      // The last of the writes of a change: those before it are to go with it.
      if (this.name === 'projects') throw new DOMException('full', 'QuotaExceededError');
      return put.call(this, value);
    });
    page.actions.lay(['floor'], 'WD-03');
    page.actions.setLevel('ceiling', 0.5, false);
    await page.flush();
    full.mockRestore();
    expect(page.store.getState().keeping.state).toBe('full');
    expect(page.store.getState().keeping.notice).toEqual({ kind: 'unkept', why: 'full' });
    expect(isUnsaved(page.store.getState())).toBe(true);
    expect(inWords(await storedHistory(page))).toEqual(before);

    page.actions.setLevel('ceiling', 0.6, true);
    await page.flush();
    expect(page.store.getState()).toMatchObject({ told: null, keeping: { state: 'kept', notice: null, told: null } });
    expect(inWords(historyOf(await reopened(page)))).toEqual(inWords(historyOf(page)));
  });
});
