import { busyGroups, groupKey, isBusy } from './busy-patterns';
import type { Tally } from './hold-pairs';
import type { JudgedSurface } from './input';
import { isNearMiss, nearWoods } from './near-woods';
import type { PlacedColor } from './pairs';
import type { Draw } from './plausible-draws';

/** How often all the busy patterns of a group are busy. */
export function tallyPatterns(placed: readonly PlacedColor[]): Tally<number> {
  const groups = busyGroups(placed).map((group) => ({ key: groupKey(group), group, hits: 0 }));
  return {
    count(draw) {
      for (const counted of groups) {
        const isStill = counted.group.members.every(({ judged }) =>
          isBusy(judged.finish, drawnOn(judged, placed, draw)),
        );
        if (isStill) counted.hits++;
      }
    },
    held: sharesOf(groups),
  };
}

/** How often two woods are close but unlike. */
export function tallyWoods(placed: readonly PlacedColor[]): Tally<number> {
  const pairs = nearWoods(placed).map(({ key, first, second }) => ({ key, first, second, hits: 0 }));
  return {
    count(draw) {
      for (const counted of pairs) {
        const [one, other] = [counted.first, counted.second].map((judged) => drawnOn(judged, placed, draw));
        if (isNearMiss(one!, other!)) counted.hits++;
      }
    },
    held: sharesOf(pairs),
  };
}

/** The colors of a surface as drawn, with their shares. */
const drawnOn = (judged: JudgedSurface, placed: readonly PlacedColor[], { samples }: Draw) =>
  placed.flatMap(({ surface, color }) =>
    surface === judged ? [{ lab: samples.get(color.key)!.lab, share: color.share }] : [],
  );

const sharesOf =
  (all: readonly { readonly key: string; readonly hits: number }[]) => (draws: number) => (key: string) => {
    const counted = all.find((one) => one.key === key);
    return counted ? counted.hits / draws : null;
  };
