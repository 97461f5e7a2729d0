import type { FixtureKind } from '../fixture';
import type { Kitchen, Opening, TallKind } from '../kitchen';
import type { LayoutId } from './layout-drafts';

/**
 * What a kitchen made to fit has no longer as it was. Openings are numbered as in the kitchen before, from 1. `smaller` and `moved`
 * parts are there still; `fewer` lamps and those `spread` anew, too.
 */
export type Loss =
  | {
      readonly part: 'opening';
      readonly id: string;
      readonly kind: Opening['kind'];
      readonly number: number;
      readonly fate: 'left-out' | 'smaller' | 'moved';
    }
  | { readonly part: 'tall'; readonly id: LosableTall; readonly fate: 'left-out' }
  | {
      readonly part: 'lamps';
      readonly id: string;
      readonly kind: FixtureKind;
      readonly fate: 'left-out' | 'fewer' | 'spread';
    }
  | { readonly part: 'door'; readonly id: 'door'; readonly fate: 'smaller' | 'moved' }
  | { readonly part: 'single'; readonly id: SinglePart; readonly fate: 'left-out' }
  /** Runs, island, sink and cooktop stand where a layout puts them; `other`: another one, as its own has no place in the room. */
  | { readonly part: 'layout'; readonly id: 'layout'; readonly fate: 'anew'; readonly other: LayoutId | null };

/** Parts of which a kitchen has one or none. */
export type SinglePart = 'dishwasher' | 'oven' | 'built-in-hood' | 'island' | 'seats' | 'open-side';
/** An oven may be below the cooktop as well: where it is, is no loss. */
export type LosableTall = Exclude<TallKind, 'oven'>;

/** A kitchen made to fit, and what it lost on the way. */
export interface Refitted {
  readonly kitchen: Kitchen;
  readonly losses: readonly Loss[];
}

/** Lengths that differ by less are the same, mm. */
const SAME = 0.5;

const differ = (a: number, b: number): boolean => Math.abs(a - b) > SAME;

/** What of a kitchen another one has no longer, or not as it was. Only what somebody may have set: fillers and modules follow. */
export function lossesOf(before: Kitchen, after: Kitchen): readonly Loss[] {
  return [
    ...openingLosses(before, after),
    ...doorLosses(before, after),
    ...tallLosses(before, after),
    ...SINGLES.filter(([, has]) => has(before) && !has(after)).map(
      ([id]): Loss => ({ part: 'single', id, fate: 'left-out' }),
    ),
    ...lampLosses(before, after),
  ];
}

function openingLosses(before: Kitchen, after: Kitchen): readonly Loss[] {
  return before.openings.flatMap((one, i): readonly Loss[] => {
    const now = after.openings.find(({ id }) => id === one.id);
    const loss = { part: 'opening', id: one.id, kind: one.kind, number: i + 1 } as const;
    if (!now) return [{ ...loss, fate: 'left-out' }];
    if (one.width - now.width > SAME || one.height - now.height > SAME) return [{ ...loss, fate: 'smaller' }];
    const isElsewhere = one.wall !== now.wall || differ(one.center, now.center) || differ(one.sill, now.sill);
    return isElsewhere ? [{ ...loss, fate: 'moved' }] : [];
  });
}

function doorLosses({ door }: Kitchen, { door: now }: Kitchen): readonly Loss[] {
  if (door.width - now.width > SAME || door.height - now.height > SAME) {
    return [{ part: 'door', id: 'door', fate: 'smaller' }];
  }
  return differ(door.from_right, now.from_right) ? [{ part: 'door', id: 'door', fate: 'moved' }] : [];
}

/** One loss a kind, however many of it there were. */
function tallLosses(before: Kitchen, after: Kitchen): readonly Loss[] {
  const count = (kitchen: Kitchen, kind: TallKind): number => tallsOf(kitchen).filter((one) => one === kind).length;
  return (['larder', 'fridge'] as const)
    .filter((kind) => count(before, kind) > count(after, kind))
    .map((id): Loss => ({ part: 'tall', id, fate: 'left-out' }));
}

const tallsOf = ({ runs }: Kitchen): readonly TallKind[] =>
  runs.flatMap(({ tall_from, tall_to }) => [...tall_from, ...tall_to]);

const SINGLES: readonly (readonly [SinglePart, (kitchen: Kitchen) => boolean])[] = [
  ['dishwasher', ({ dishwasher }) => dishwasher !== 'none'],
  ['oven', (kitchen) => kitchen.cooktop.oven_below || tallsOf(kitchen).includes('oven')],
  ['built-in-hood', ({ cooktop }) => cooktop.hood === 'built-in'],
  ['island', ({ island }) => island !== null],
  ['seats', ({ island }) => (island?.stools ?? 0) > 0],
  ['open-side', ({ open_side }) => open_side !== null],
];

function lampLosses(before: Kitchen, after: Kitchen): readonly Loss[] {
  return before.fixtures.flatMap((one): readonly Loss[] => {
    const now = after.fixtures.find(({ id }) => id === one.id);
    const loss = { part: 'lamps', id: one.id, kind: one.kind } as const;
    if (now?.kind !== one.kind) return [{ ...loss, fate: 'left-out' }];
    if ('count' in one && 'count' in now && now.count < one.count) return [{ ...loss, fate: 'fewer' }];
    return 'at' in one && one.at && !('at' in now && now.at) ? [{ ...loss, fate: 'spread' }] : [];
  });
}

/** Losses of two changes, one after the other: each part once, with what became of it last; without what `now` has again. */
export function withLosses(before: readonly Loss[], more: readonly Loss[], now: Kitchen): readonly Loss[] {
  const key = ({ part, id }: Loss): string => `${part} ${id}`;
  const anew = new Set(more.map(key));
  return [...before.filter((one) => !anew.has(key(one)) && !isBack(one, now)), ...more];
}

/** Whether a part that was left out is there once more. */
function isBack(loss: Loss, now: Kitchen): boolean {
  if (loss.fate !== 'left-out') return false;
  switch (loss.part) {
    case 'tall':
      return tallsOf(now).includes(loss.id);
    case 'single':
      return SINGLES.some(([id, has]) => id === loss.id && has(now));
    case 'opening':
      return now.openings.some(({ id }) => id === loss.id);
    case 'lamps':
      return now.fixtures.some(({ id, kind }) => id === loss.id && kind === loss.kind);
  }
}
