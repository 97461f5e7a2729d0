import type { Finish } from '../model/project';

/** A list of finishes on its way to a worker. Null: the list of before; a number: the finish at that place of it. */
export type CarriedFinishes = null | readonly (number | Finish)[];

/** Sends of a list only what the worker does not have yet: finishes are immutable, so the same object is the same finish. */
export function createFinishPacker(): (finishes: readonly Finish[]) => CarriedFinishes {
  let last: readonly Finish[] | null = null;
  let places = new Map<Finish, number>();
  return (finishes) => {
    if (finishes === last) return null;
    const carried = finishes.map((finish) => places.get(finish) ?? finish);
    last = finishes;
    places = new Map(finishes.map((finish, place) => [finish, place]));
    return carried;
  };
}

/** The other end: the same finish is the same object, the same list the same array. */
export function createFinishUnpacker(): (carried: CarriedFinishes) => readonly Finish[] {
  let last: readonly Finish[] = [];
  return (carried) => {
    if (carried === null) return last;
    const before = last;
    last = carried.map((one) => (typeof one === 'number' ? before[one]! : one));
    return last;
  };
}
