import { beforeEach, describe, expect, it } from 'vitest';
import { documentOf } from '../../src/app/state';
import { projectText } from '../../src/io/project-file';
import { undoLabel } from '../../src/model/history';
import { demo, emptyStore, openPage, type Page } from './page';

// Without locks of the browser, which Node has none of: what the store itself keeps apart.

beforeEach(emptyStore);

const text = (page: Page) => projectText(documentOf(page.store.getState()));
const state = (page: Page) => page.store.getState().keeping;

async function two(): Promise<{ readonly first: Page; readonly second: Page }> {
  const first = await openPage();
  first.actions.lay(['floor'], 'WD-01');
  await first.flush();
  return { first, second: await openPage(demo.id) };
}

describe('one project in two tabs', () => {
  it('is kept by the one that opened it last; the other is told at its next change, and writes nothing', async () => {
    const { first, second } = await two();
    second.actions.lay(['floor'], 'WD-03');
    await second.flush();
    first.actions.setLevel('ceiling', 0.5, false);
    await first.flush();
    expect(state(first)).toMatchObject({ state: 'elsewhere', notice: { kind: 'elsewhere', wasHere: true } });
    expect(text(await openPage(demo.id))).toBe(text(second));
  });

  it('goes on in the first when that takes it over; what was changed there meanwhile is a step on top', async () => {
    const { first, second } = await two();
    second.actions.lay(['floor'], 'WD-03');
    await second.flush();
    first.actions.setLevel('ceiling', 0.5, false);
    await first.flush();
    const mine = text(first);
    await first.keeping.goOnHere();
    expect(state(first)).toMatchObject({ notice: null });
    expect(text(first)).toBe(mine);
    first.actions.undo();
    expect(text(first)).toBe(text(second));
    await first.flush();
    expect(state(first).state).toBe('kept');
    expect(text(await openPage(demo.id))).toBe(text(second));
  });

  it('goes on as two with a copy, with all steps in both', async () => {
    const { first, second } = await two();
    first.actions.setLevel('ceiling', 0.5, false);
    await first.flush();
    await first.keeping.goOnWithCopy();
    await first.flush();
    expect(documentOf(first.store.getState())).toMatchObject({ id: 'terrace-copy', name: `${demo.name} (copy)` });
    expect(state(first)).toMatchObject({ state: 'kept', notice: null });
    expect(undoLabel(first.store.getState().history)).toContain('ceiling');
    second.actions.undo();
    await second.flush();
    expect(state(second).state).toBe('kept');
    const again = await openPage('terrace-copy');
    expect(again.store.getState().history.past).toHaveLength(2);
  });

  it('is written whole again where the store was cleared meanwhile', async () => {
    const { second } = await two();
    const database = await second.open();
    for (const name of ['projects', 'journals', 'checkpoints', 'steps'] as const) await database.clear(name);
    second.actions.lay(['floor'], 'WD-03');
    await second.flush();
    expect(state(second).state).toBe('kept');
    const after = await openPage(demo.id);
    expect(text(after)).toBe(text(second));
    expect(after.store.getState().history.past).toHaveLength(2);
  });
});
