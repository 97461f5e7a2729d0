import { expect, it } from 'vitest';
import { followShortlist } from '../../src/app/shortlist-follower';
import type { Shortlist } from '../../src/engine/judge/shortlist/types';

type Told = Shortlist & { readonly pending: number };
const list = { held_against: [{}], pending: 0 } as unknown as Told;
const alone = { held_against: [], pending: 0 } as unknown as Told;

/** Follows with answers given one after the other; `null` where nothing can be told. */
function following(answers: readonly (Told | null)[]) {
  const asked: (string | null)[] = [];
  const taken: (readonly [boolean, boolean])[] = [];
  let change = () => {};
  let isWanted = true;
  const done = followShortlist({
    read: async (setting, isWhole) => {
      asked.push(setting === null && isWhole ? 'whole' : setting);
      return answers[asked.length - 1] ?? null;
    },
    settings: ['day', 'evening'],
    changed: () =>
      new Promise((resolve) => {
        change = resolve;
      }),
    isWanted: () => isWanted,
    take: (found, hasMore) => taken.push([found !== null, hasMore]),
  });
  const settle = () => new Promise((resolve) => setTimeout(resolve, 0));
  return {
    asked,
    taken,
    done,
    settle,
    change: async () => {
      change();
      await settle();
    },
    leave: () => {
      isWanted = false;
    },
  };
}

it('asks as samples, then setting by setting', async () => {
  const { asked, taken, done } = following([list, list, list]);
  await done;
  expect(asked).toEqual([null, 'day', 'evening']);
  expect(taken).toEqual([
    [true, true],
    [true, true],
    [true, false],
  ]);
});

it('asks for the rest where only some are there at once, and for settings after that', async () => {
  const { asked, taken, done } = following([{ ...list, pending: 9000 }, list, list, list]);
  await done;
  expect(asked).toEqual([null, 'whole', 'day', 'evening']);
  expect(taken.map(([found]) => found)).toEqual([true, true, true, true]);

  const nothing = following([{ ...alone, pending: 9000 }, alone]);
  await nothing.done;
  expect(nothing.asked).toEqual([null, 'whole']);
});

it('asks no setting where nothing is held', async () => {
  const { asked, taken, done } = following([alone]);
  await done;
  expect([asked, taken]).toEqual([[null], [[true, false]]]);
});

it('asks once what cannot be told, and again only once something changed', async () => {
  const { asked, taken, settle, change, done } = following([null, null, list, null, list, list]);
  await settle();
  await settle();
  expect([asked, taken]).toEqual([[null], [[false, false]]]);
  await change();
  expect(asked).toEqual([null, null]);
  await change();
  expect(asked).toEqual([null, null, null, 'day']);
  await change();
  await done;
  expect(asked).toEqual([null, null, null, 'day', 'day', 'evening']);
});

it('asks nothing more once it is not wanted', async () => {
  const { asked, settle, change, leave, done } = following([null, list]);
  await settle();
  leave();
  await change();
  await done;
  expect(asked).toEqual([null]);
});

it('does not miss what changes while it reads', async () => {
  let change = () => {};
  let reads = 0;
  await followShortlist({
    read: async () => {
      if (++reads > 1) return alone;
      change();
      return null;
    },
    settings: [],
    changed: () =>
      new Promise((resolve) => {
        change = resolve;
      }),
    isWanted: () => true,
    take: () => {},
  });
  expect(reads).toBe(2);
});
