import { expect, it } from 'vitest';
import { readWish } from '../../src/cli/wish-option';
import type { Wish } from '../../src/engine/judge/shortlist/wish';
import { shortlistSamples } from '../../src/kitchen/study/shortlist-samples';
import { type FinishFilters, filterCount, NO_FILTERS, wishesOf } from '../../src/ui/drawer/finish-filters';
import { orderOf, sectionsOf, wordsOf } from '../../src/ui/drawer/shortlist-order';
import { withEarlier, withWish, withWishesOf } from '../../src/ui/drawer/wish-list';
import { shortlistNow } from '../../src/workers/shortlist-desk';
import { terrace } from './terrace';

const written = (words: string): Wish => {
  const wish = readWish(words);
  if (!wish.ok) throw new Error(wish.problem.text);
  return wish.value;
};

it.each<[Partial<FinishFilters>, readonly string[]]>([
  [{}, []],
  [{ search: 'birch' }, []],
  [{ lrvFrom: 'much', lrvTo: '' }, []],
  [{ kind: 'stone', lrvFrom: '60', lrvTo: '80,5' }, ['class:stone', 'lrv:60-80.5']],
  [{ sheen: 'satin', price: '$$' }, ['sheen:satin', 'price:$$']],
  [{ sheen: 'low-sheen', available: 'In stock' }, ['sheen:low-sheen', 'available:In stock']],
  [{ lrvTo: '40' }, ['lrv:0-40']],
])('ranks by the filters %o as the command line does by its words', (set, words) => {
  const filters = { ...NO_FILTERS, ...set };
  expect(wishesOf(filters)).toEqual(words.map(written));
  expect(filterCount(filters)).toBe(words.length);
});

it('keeps one wish of a kind, in its place, and moves it up', () => {
  const [quiet, lively] = [written('pattern:quiet'), written('pattern:lively')];
  const [floor, wall] = [written('no-lighter-than:floor'), written('no-lighter-than:wall')];
  const wishes = [quiet, floor, wall].reduce(withWish, []);
  expect(wishes).toEqual([quiet, floor, wall]);
  expect(withWish(wishes, lively)).toEqual([lively, floor, wall]);
  expect(withEarlier(wishes, 2)).toEqual([quiet, wall, floor]);
  expect(withEarlier(wishes, 0)).toEqual(wishes);
  expect(withWishesOf(wishes, { ...NO_FILTERS, kind: 'wood' })).toEqual([...wishes, written('class:wood')]);
});

it('gives page and command the same list, and says in each line what is met', () => {
  const project = terrace();
  const wishes = ['pattern:quiet', 'price:$', 'no-darker-than:counter', 'available:in stock'].map(written);
  const asked = { option: 'our-floor', surface: 'backsplash', wishes, known: null, isWhole: true } as const;
  const told = (wanted: Parameters<typeof shortlistNow>[1]) => {
    const steps = shortlistNow({ project, library: project.library, job: null }, wanted);
    let step = steps.next();
    while (!step.done) step = steps.next();
    return { ...step.value!, outline: step.value!.outline! };
  };
  const onPage = told(asked);
  const byCommand = shortlistSamples(project, asked.option, asked.surface, { wishes });
  if (!byCommand.ok) throw new Error(byCommand.problem.text);
  const { accepted, rejected, project: _, option: __, ...head } = byCommand.value;
  expect(onPage.rows).toEqual([...accepted, ...rejected]);
  expect(onPage.outline).toEqual({
    ...head,
    accepted: accepted.map(({ finish }) => finish),
    groups: accepted.map(({ group }) => group),
    rejected: rejected.map(({ finish }) => finish),
    codes: rejected.map(({ code }) => code),
  });
  expect(told({ ...asked, known: onPage.list })).toMatchObject({ list: onPage.list, outline: null, rows: [] });
  const without = told({ ...asked, wishes: [] });
  expect(onPage.outline.accepted).not.toEqual(without.outline.accepted);
  expect([...onPage.outline.accepted].sort()).toEqual([...without.outline.accepted].sort());
  expect(onPage.outline.rejected).toEqual(without.outline.rejected);

  for (const { finish, reasons, wishes: met } of accepted) {
    const row = wordsOf(onPage.rows.find((one) => one.finish === finish)!);
    expect(row.wishes).toMatch(/^Meets (all|none of|\d of) 4 wishes/);
    expect(reasons).toContain(row.wishes);
    expect(row.reason).not.toBe(row.wishes);
    expect(met.map(({ is_met }) => is_met)).toHaveLength(4);
  }
  for (const row of without.rows) expect(wordsOf(row).wishes).toBeUndefined();
  const order = orderOf(onPage.outline);
  const sections = sectionsOf(order, order, new Map(project.library.map((finish) => [finish.id, finish])));
  const ids = sections.flatMap(({ finishes }) => finishes.map(({ id }) => id));
  expect(ids).toEqual(onPage.rows.map(({ finish }) => finish));
});
