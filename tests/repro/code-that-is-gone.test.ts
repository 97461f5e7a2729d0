import { expect, it, vi } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { followLinks } from '../../src/app/open-link';
import { readFile } from '../../src/app/read-file';
import { initialState, projectOf } from '../../src/app/state';
import { optionFragment } from '../../src/io/link/option-link';
import { projectText } from '../../src/io/project-file';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// Code that is fetched when it is needed could be gone (no network, or a newer version in its place): a file that was opened then, and a
// link, did nothing and said nothing, and the link was lost.

const gone = vi.hoisted(() => ({ is: true }));
vi.mock('../../src/io/check-colors', async (original) => {
  const code = await original<typeof import('../../src/io/check-colors')>();
  return {
    get checkingColors() {
      return code.checkingColors;
    },
    // A module that cannot be fetched is a promise that rejects; so is one that throws when it is waited for.
    // biome-ignore lint/suspicious/noThenProperty: for that it has to be waited for
    get then() {
      if (gone.is) throw new TypeError('Failed to fetch dynamically imported module');
      return undefined;
    },
  };
});

const pageOf = () => createStore(() => initialState(terrace(), 'system'));

it('a file that cannot be read for it is told, with what to do', async () => {
  gone.is = true;
  const store = pageOf();
  const before = projectOf(store.getState());
  await openProject(store, unkept(store), new File([projectText(terrace())], 'mine.project.json'));
  expect(store.getState().told?.list[0]).toMatchObject({ code: 'code-not-fetched' });
  expect(store.getState().told?.list[0].remedy).toMatch(/reload the page/);
  expect(projectOf(store.getState())).toBe(before);
});

it('a link that cannot be read for it is told and stays in the address until it was read', async () => {
  const [option] = terrace().options;
  let fragment = optionFragment(terrace(), option!);
  const follow = async () => {
    const store = pageOf();
    followLinks(store, { fragment: () => fragment, dropFragment: () => (fragment = ''), onChange: () => {} });
    await vi.waitFor(() => expect(store.getState().told ?? store.getState().brought).not.toBeNull(), { timeout: 4000 });
    return store.getState();
  };
  gone.is = true;
  const refused = await follow();
  expect(refused.told?.list[0]).toMatchObject({ code: 'code-not-fetched' });
  expect(fragment).not.toBe('');
  gone.is = false;
  const read = await follow();
  expect(read.brought?.project.options[0]?.id).toBe(option!.id);
  expect(fragment).toBe('');
});

it('a mistake of ours while a file is read is told', async () => {
  const limit = { megabytes: 1, tooLarge: () => '', remedy: '' };
  const read = await readFile(new File(['{}'], 'a.json'), limit, () => {
    throw new RangeError('Maximum call stack size exceeded');
  });
  expect(!read.ok && read.problem).toMatchObject({ code: 'reading-broke', at: { file: 'a.json' } });
  expect(!read.ok && read.problem.text).toContain('Maximum call stack');
});
