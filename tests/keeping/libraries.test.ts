import fc from 'fast-check';
import { openDB } from 'idb';
import { beforeEach, describe, expect, it } from 'vitest';
import { databaseOpener, type OpenDatabase } from '../../src/app/keeping/database';
import { cutIntoParts, PART_SIZE, partNamer, partsAfter } from '../../src/app/keeping/library-parts';
import { createLibraryShelf } from '../../src/app/keeping/library-shelf';
import { openNews } from '../../src/app/keeping/news';
import type { Library } from '../../src/model/library';
import type { Finish } from '../../src/model/project';
import { demo, emptyStore, openPage } from './page';

beforeEach(emptyStore);

const finish = (id: string, label = id): Finish => ({ ...demo.library[0]!, id, label });
const many = (count: number) => Array.from({ length: count }, (_, i) => finish(`F-${i}`));
const library = (id: string, finishes: readonly Finish[] = many(3), note = ''): Library => ({
  type: 'upstand-library',
  version: 2,
  id,
  name: id.toUpperCase(),
  note,
  finishes,
});
/** One tab: it remembers what it read. */
function tab() {
  const open = databaseOpener();
  const shelf = createLibraryShelf(open, openNews(), (error) => {
    throw error;
  });
  return { open, ...shelf };
}
const written = async (open: OpenDatabase) => (await (await open()).getAllKeys('library-parts')).map(String);

describe('the shelf of libraries', () => {
  it('takes in, replaces, removes and brings back', async () => {
    const { libraries } = await openPage();
    const [a, b] = [library('a'), library('b')];
    let told = 0;
    libraries.onChange(() => told++);
    expect(await libraries.put(b, null)).toBe('kept');
    expect(await libraries.put(a, null)).toBe('kept');
    const noted = { ...b, note: 'new' };
    expect(await libraries.put(noted, b)).toBe('kept');
    expect(await libraries.list()).toEqual([a, noted]);
    expect(await libraries.remove(a)).toBe('kept');
    expect(await libraries.remove(a)).toBe('is-another');
    expect(await libraries.list()).toEqual([noted]);
    expect(await libraries.put(a, null)).toBe('kept');
    expect(await libraries.list()).toHaveLength(2);
    expect(told).toBe(5);
  });

  it('lists the others where a record is of another shape, which stays', async () => {
    const { open, ...shelf } = tab();
    const a = library('a');
    await shelf.put(a, null);
    await (await open()).put('libraries', { id: 'strange', title: 'of another program' } as never);
    expect(await tab().list()).toEqual([a]);
    expect(await (await open()).get('libraries', 'strange')).toBeDefined();
  });

  it('keeps all of a change or nothing of it', async () => {
    const { open, ...shelf } = tab();
    const large = library('a', many(2 * PART_SIZE));
    await shelf.put(large, null);
    // In the last part something that no store can hold: by then the first part was taken away already.
    const finishes = large.finishes.map((one, i) => {
      if (i === 0) return finish(one.id, 'Renamed');
      return i === 2 * PART_SIZE - 1 ? ({ ...one, label: () => 'a function' } as unknown as Finish) : one;
    });
    await expect(shelf.put({ ...large, finishes }, large)).rejects.toThrow();
    expect(await tab().list()).toEqual([large]);
    expect(await shelf.put({ ...large, note: 'new' }, large)).toBe('kept');
    expect(await tab().list()).toEqual([{ ...large, note: 'new' }]);
  });

  it('changes nothing where another tab changed it meanwhile, also where no news of that came', async () => {
    const [here, there] = [tab(), tab()];
    const first = library('a');
    await here.put(first, null);
    const mine = { ...first, note: 'mine' };
    expect(await here.put(mine, first)).toBe('kept');
    const [seen] = await there.list();
    const theirs = { ...seen!, finishes: [...seen!.finishes, finish('NEW')] };
    expect(await there.put(theirs, seen!)).toBe('kept');
    // Undo of the note, undo of the new library, and a change of what was seen before.
    expect(await here.put(first, mine)).toBe('is-another');
    expect(await here.remove(mine)).toBe('is-another');
    expect(await here.put({ ...mine, name: 'Other' }, mine)).toBe('is-another');
    expect(await here.list()).toEqual([theirs]);
    expect(await there.list()).toEqual([theirs]);
    // What was removed here and made anew elsewhere is not brought back over it.
    expect(await here.remove(theirs)).toBe('kept');
    expect(await there.put(first, null)).toBe('kept');
    expect(await here.put(theirs, null)).toBe('is-another');
  });

  it('takes back a change where another tab changed something and took that back', async () => {
    const [here, there] = [tab(), tab()];
    const [first, mine] = [library('a'), library('a', many(3), 'mine')];
    await here.put(first, null);
    await here.put(mine, first);
    const [seen] = await there.list();
    const other = { ...seen!, name: 'Other' };
    await there.put(other, seen!);
    await there.put(seen!, other);
    expect(await here.put(first, mine)).toBe('kept');
  });

  it('writes little for an edit of one of ten thousand, and reads back only that', async () => {
    const [here, there] = [tab(), tab()];
    const large = library('a', many(10_000));
    await here.put(large, null);
    const before = await written(here.open);
    expect(before).toHaveLength(10_000 / PART_SIZE);
    const [seen] = await there.list();
    const finishes = large.finishes.map((one, i) => (i === 4321 ? finish(one.id, 'Renamed') : one));
    await here.put({ ...large, finishes }, large);
    const after = await written(here.open);
    expect(after.filter((name) => !before.includes(name))).toHaveLength(1);
    expect(after).toHaveLength(before.length);
    const [now] = await there.list();
    expect(now!.finishes).toEqual(finishes);
    // All others are the very objects of before: what is known of them stays known.
    expect(now!.finishes.filter((one, i) => one !== seen!.finishes[i]).map(({ label }) => label)).toEqual(['Renamed']);
    expect((await there.list())[0]).toBe(now);
  });
});

it('opens libraries that an earlier program kept, each of which was one record', async () => {
  const old = await openDB('upstand', 1, {
    upgrade(database) {
      for (const name of ['projects', 'libraries']) database.createObjectStore(name, { keyPath: 'id' });
      for (const name of ['journals', 'checkpoints']) database.createObjectStore(name, { keyPath: 'project' });
      database.createObjectStore('steps', { keyPath: ['project', 'seq'] });
      database.createObjectStore('notes');
    },
  });
  const kept = [library('a', many(250), 'a note'), library('b', [])];
  for (const one of kept) await old.put('libraries', { ...one, version: 1 });
  await old.put('projects', { id: 'p', name: 'P', changed: 1 });
  old.close();

  const { open, list } = tab();
  expect(await list()).toEqual(kept);
  expect(await written(open)).toHaveLength(3);
  expect(await (await open()).getAll('projects')).toEqual([{ id: 'p', name: 'P', changed: 1 }]);
});

it('parts hold the finishes in their order whatever is changed, and stay where theirs did not change', () => {
  const ids = fc.uniqueArray(fc.integer({ min: 0, max: 400 }), { maxLength: 350 });
  fc.assert(
    fc.property(ids, ids, fc.infiniteStream(fc.boolean()), (first, second, renames) => {
      const newName = partNamer();
      const before = first.map((id) => finish(`F-${id}`));
      const known = new Map(before.map((one) => [one.id, one]));
      const after = second.map((id) => {
        const same = known.get(`F-${id}`);
        return same && !renames.next().value ? same : finish(`F-${id}`, 'changed');
      });
      const parts = cutIntoParts(before, newName);
      expect(parts.flatMap(({ finishes }) => finishes)).toEqual(before);
      expect(partsAfter(parts, before, newName)).toEqual(parts);
      const next = partsAfter(parts, after, newName);
      const flat = next.flatMap(({ finishes }) => finishes);
      expect(flat.every((one, i) => one === after[i])).toBe(true);
      expect(flat).toHaveLength(after.length);
      expect(new Set(next.map(({ name }) => name)).size).toBe(next.length);
      for (const part of next) {
        expect(part.finishes.length).toBeLessThanOrEqual(PART_SIZE);
        const old = parts.find(({ name }) => name === part.name);
        if (old) expect(part).toBe(old);
      }
    }),
    { numRuns: 60 },
  );
});
