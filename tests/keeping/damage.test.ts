import fc from 'fast-check';
import { beforeEach, describe, expect, it } from 'vitest';
import { readJournal, type StoredProject } from '../../src/app/keeping/journal';
import { rawDocument, restore } from '../../src/app/keeping/restore';
import { documentOf } from '../../src/app/state';
import { parseProject, projectText } from '../../src/io/project-file';
import { differenceOf } from '../../src/model/difference';
import { version3 } from '../io/version-3';
import { demo, emptyStore, openPage, type Page } from './page';

beforeEach(emptyStore);

/** The demo with three steps, the last of them undone, as the store holds it once the tab is gone. */
async function stored(): Promise<{ readonly page: Page; readonly kept: StoredProject }> {
  const page = await openPage();
  for (const finish of ['WD-01', 'WD-03', 'WD-07']) page.actions.lay(['floor'], finish);
  page.actions.undo();
  await page.flush();
  page.kill();
  return { page, kept: (await readJournal(await page.open(), demo.id))! };
}

/** The project as it is in the store is replaced by another one. */
async function put(page: Page, { journal, checkpoint }: StoredProject): Promise<void> {
  const database = await page.open();
  await database.put('journals', journal);
  await database.put('checkpoints', checkpoint);
}

const withDocument = (kept: StoredProject, change: object): StoredProject => ({
  ...kept,
  checkpoint: { ...kept.checkpoint, document: { ...(kept.checkpoint.document as object), ...change } },
});

describe('a kept project that cannot be read', () => {
  it.each([
    ['of a newer program', { version: 99 }, 'newer-version'],
    ['of a newer program that counts no further', { mood: 'bright' }, 'newer-version'],
    ['of another kind', { type: 'something' }, 'not-a-project'],
    ['with parts missing', { kitchen: undefined }, 'missing-field'],
    ['under another id', { id: 'somebody-else' }, 'damaged'],
  ])('%s is told, left as it is, and the demo opens under another id', async (_, change, code) => {
    const { page, kept } = await stored();
    const broken = withDocument(kept, change);
    await put(page, broken);
    const after = await openPage(demo.id);
    const { notice } = after.store.getState().keeping;
    expect(notice).toMatchObject({ kind: 'unreadable', project: demo.id, name: demo.name });
    const problem = notice?.kind === 'unreadable' ? notice.problem : null;
    expect(problem?.code).toBe(code);
    expect(problem?.remedy).not.toBe('');
    // What is done now is kept beside it.
    after.actions.lay(['floor'], 'WD-01');
    await after.flush();
    expect(documentOf(after.store.getState()).id).toBe('terrace-copy');
    expect(await readJournal(await after.open(), demo.id)).toEqual(broken);
    expect((await after.projects.list()).map(({ id }) => id)).toContain('terrace-copy');
  });

  it('is left as it is when it is opened from the list, and the open one stays', async () => {
    const { page, kept } = await stored();
    const broken = withDocument(kept, { version: 99 });
    await put(page, broken);
    const other = await openPage(null, { ...demo, id: 'other' });
    expect(await other.projects.open(demo.id)).toBe(false);
    expect(documentOf(other.store.getState()).id).toBe('other');
    expect(other.store.getState().keeping.notice?.kind).toBe('unreadable');
    expect(await other.projects.copy(demo.id)).toBeNull();
    expect(await readJournal(await other.open(), demo.id)).toEqual(broken);
  });

  it('is a file on wish: as the program that can read it would have it', async () => {
    const { kept } = await stored();
    const file = rawDocument(withDocument(kept, { version: 99, mood: 'bright' })) as { version: number; mood: string };
    expect(file).toMatchObject({ version: 99, mood: 'bright', id: demo.id });
    const sound = parseProject(JSON.stringify(rawDocument(kept)));
    const restored = restore(kept);
    expect(sound.ok && restored.ok && projectText(sound.value) === projectText(restored.value.history.present)).toBe(
      true,
    );
  });

  it('never throws and never makes an unsound present, whatever is broken in it', async () => {
    const { kept } = await stored();
    const junk = fc.constantFrom<unknown>(null, undefined, 0, 'x', [], {}, { set: 5 }, { members: [] });
    const part = fc.constantFrom('seq', 'first', 'position', 'last', 'document', 'forward', 'back', 'none');
    fc.assert(
      fc.property(part, junk, fc.nat(2), (name, value, at) => {
        const steps = kept.steps.flatMap((step, i) => {
          if (i !== at) return [step];
          return name === 'none' ? [] : [name in step ? { ...step, [name]: value } : step];
        });
        const journal = name in kept.journal ? { ...kept.journal, [name]: value } : kept.journal;
        const checkpoint = name === 'document' ? { ...kept.checkpoint, document: value } : kept.checkpoint;
        const read = restore({ ...kept, steps, journal, checkpoint } as StoredProject);
        if (read.ok) expect(parseProject(projectText(read.value.history.present)).ok).toBe(true);
        else expect(read.problem.remedy).not.toBe('');
      }),
      { numRuns: 60 },
    );
  });
});

describe('a project kept by an older program', () => {
  it('is brought up like a file, with all its steps, and written anew', async () => {
    const old = JSON.parse(version3());
    const renamed = { ...old, name: 'Renamed' };
    const page = await openPage();
    const database = await page.open();
    await database.put('projects', { id: old.id, name: 'Renamed', changed: 1 });
    await database.put('journals', { project: old.id, first: 0, position: 1, last: 1, holder: '', filed: 0 });
    await database.put('checkpoints', { project: old.id, seq: 0, document: old });
    const [forward, back] = [differenceOf(old, renamed), differenceOf(renamed, old)];
    await database.put('steps', { project: old.id, seq: 1, label: 'rename', forward, back });

    const after = await openPage(old.id);
    const asFile = parseProject(version3());
    expect(documentOf(after.store.getState()).name).toBe('Renamed');
    after.actions.undo();
    expect(asFile.ok && projectText(documentOf(after.store.getState())) === projectText(asFile.value)).toBe(true);
    expect(after.store.getState().saved).toBe(documentOf(after.store.getState()));
    after.actions.redo();
    await after.flush();
    const kept = (await readJournal(database, old.id))!;
    expect((kept.checkpoint.document as { version: number }).version).toBe(demo.version);
    expect(kept.steps).toHaveLength(1);
  });
});
