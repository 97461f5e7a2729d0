import { shelfBoards } from '../parts/shelves';
import { pointAt, type Side } from '../parts/side';
import type { Plan } from '../plan/types';
import { type FreePlace, freePlaces } from './free-places';
import { board, bowl, cup, jar, pot, type Stand, type Thing, vase } from './things';

/** Things that stand together: how much counter they take, and what they are, around a middle at the wall. */
interface Group {
  readonly width: number;
  readonly isForCooktop?: boolean;
  readonly things: (at: Stand) => readonly Thing[];
}

const shifted =
  (at: Stand, a: number, d: number): Stand =>
  (along, out, up) =>
    at(along + a, out + d, up);

/** For counters along walls, the first where most is free. */
const GROUPS: readonly Group[] = [
  { width: 0.46, things: (at) => [board(shifted(at, 0.08, 0)), ...jar(shifted(at, -0.15, 0.15))] },
  { width: 0.32, isForCooktop: true, things: (at) => [pot(shifted(at, 0, 0.24))] },
  {
    width: 0.26,
    things: (at) => [cup(shifted(at, -0.05, 0.17), -1), cup(shifted(at, 0.05, 0.22), 1)],
  },
];
const FOR_ISLAND: readonly Group[] = [
  { width: 0.5, things: (at) => [bowl(shifted(at, -0.09, 0.2)), vase(shifted(at, 0.13, 0.25))] },
];

/** On a shelf: steps along the board, and what stands there. */
const ON_SHELF: readonly (readonly ((at: Stand) => readonly Thing[])[])[] = [
  [(at) => [cup(at, 1)], (at) => [cup(at, 1)], (at) => [bowl(at)]],
  [(at) => [vase(at)], (at) => [cup(at, -1)]],
];
const SHELF_STEP = 0.2;
const SHELF_OUT = 0.139;

/** A few neutral things, for scale: on free counter, on the island, on shelves. None where the kitchen shows none or nothing is free. */
export function thingsOf(plan: Plan): readonly Thing[] {
  if (!plan.objects) return [];
  return [...onCounters(plan), ...onIsland(plan), ...onShelves(plan)];
}

function onCounters(plan: Plan): readonly Thing[] {
  const { top } = plan.counter;
  let places = freePlaces(plan);
  return [...GROUPS, ...(plan.island ? [] : FOR_ISLAND)].flatMap((group) => {
    const fits = places.filter(({ from, to }) => to - from >= group.width);
    const near = group.isForCooktop ? fits.filter(({ cooktop }) => cooktop) : fits;
    const place = longest(near.length > 0 ? near : fits);
    if (!place) return [];
    const isAtTo = group.isForCooktop ? place.cooktop === 'to' : place.cooktop === 'from';
    const middle = isAtTo ? place.to - group.width / 2 : place.from + group.width / 2;
    const rest: FreePlace = isAtTo
      ? { ...place, to: place.to - group.width }
      : { ...place, from: place.from + group.width };
    places = places.map((other) => (other === place ? rest : other));
    return group.things(standAt(place.side, middle, top));
  });
}

const longest = (places: readonly FreePlace[]): FreePlace | undefined =>
  places.reduce<FreePlace | undefined>(
    (best, place) => (best && best.to - best.from >= place.to - place.from ? best : place),
    undefined,
  );

const standAt =
  (side: Side, middle: number, top: number): Stand =>
  (along, out, up) =>
    pointAt(side, middle + along, out, top + up);

/** A third along the island, in the middle of its depth. */
function onIsland(plan: Plan): readonly Thing[] {
  if (!plan.island) return [];
  const { x0, x1, y0, y1 } = plan.island.counter;
  const middle = x0 + (x1 - x0) / 3;
  const half = 0.22;
  if (x1 - x0 < 1 || y1 - y0 < 0.5) return [];
  const at: Stand = (along, out, up) => [middle + along, (y0 + y1) / 2 + out - half, plan.counter.top + up];
  return FOR_ISLAND.flatMap(({ things }) => things(at));
}

/** From one end of each board, in steps. */
function onShelves(plan: Plan): readonly Thing[] {
  return shelfBoards(plan).flatMap(({ side, extent }, i) => {
    const row = ON_SHELF[i % ON_SHELF.length]!;
    const length = extent.a[1] - extent.a[0];
    return row.flatMap((make, k) => {
      const along = (k + 0.75) * SHELF_STEP;
      if (along + SHELF_STEP / 2 > length) return [];
      return make((a, d, up) => pointAt(side, extent.a[0] + along + a, SHELF_OUT + d, extent.z[1] + up));
    });
  });
}
