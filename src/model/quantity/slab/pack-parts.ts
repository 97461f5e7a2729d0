import { packExactly } from './pack-exactly';
import { packOffcuts } from './pack-offcuts';
import { FIRST_CUTS, sortedOrders, triedOrders } from './pack-orders';
import { packStrips } from './pack-strips';
import { fits, type Lies, type Packing, type Room } from './packing';

/** Steps of the search that finds the fewest slabs for certain: some tenths of a second at most. */
const MOST_STEPS = 500_000;

/**
 * Parts on as few slabs as are found: in strips first, as counters are usually cut, then in offcuts in many orders, then, where what was
 * found may not be the fewest, by a search that knows (12 parts at most). Every part has to fit a slab. Null where it takes `under` slabs or
 * more, as far as is found.
 */
export function packParts(parts: readonly Lies[], room: Room, under: number): Packing | null {
  const least = fewestSlabs(parts, room);
  if (least >= under) return null;
  if (parts.length === 0) return [];
  let best: Packing | null = null;
  for (const packing of packings(parts, room)) {
    if (!best || packing.length < best.length) best = packing;
    if (best.length <= least) return best;
  }
  const exact = packExactly(parts, room, MOST_STEPS);
  const fewest = exact && exact.length < best!.length ? exact : best!;
  return fewest.length < under ? fewest : null;
}

/** What the parts ask for at least: by their area with saw cuts, and by how many of them share a slab with none of the others. */
function fewestSlabs(parts: readonly Lies[], room: Room): number {
  const area = parts.reduce((sum, [lie]) => sum + lie!.along * lie!.across, 0);
  const alone: Lies[] = [];
  for (const part of [...parts].sort((a, b) => size(b) - size(a))) {
    if (alone.every((other) => !shareSlab(part, other, room))) alone.push(part);
  }
  return Math.max(Math.ceil(area / (room.along * room.across) - 1e-9), alone.length);
}

const size = ([lie]: Lies): number => lie!.along * lie!.across;

const shareSlab = (a: Lies, b: Lies, room: Room): boolean =>
  a.some((one) =>
    b.some(
      (other) =>
        fits({ along: one.along + other.along, across: Math.max(one.across, other.across) }, room) ||
        fits({ along: Math.max(one.along, other.along), across: one.across + other.across }, room),
    ),
  );

function* packings(parts: readonly Lies[], room: Room): Generator<Packing> {
  for (const order of sortedOrders(parts)) yield packStrips(parts, room, order);
  for (const order of triedOrders(parts)) {
    yield packStrips(parts, room, order);
    for (const first of FIRST_CUTS) yield packOffcuts(parts, room, order, first);
  }
}
