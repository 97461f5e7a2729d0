import { mulberry32 } from '../../../engine/random';
import { packExactly } from './pack-exactly';
import { type FirstCut, packOffcuts } from './pack-offcuts';
import { packStrips } from './pack-strips';
import { fits, type Lies, type Packing, type Room } from './packing';

const FIRST_CUTS: readonly FirstCut[] = ['along', 'shorter', 'longer', 'across'];
/** Orders tried beside the sorted ones; drawn with one seed, so that the same parts give the same slabs. */
const DRAWN_ORDERS = 30;
const SEED = 1;
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
  const sorted = sortedOrders(parts);
  for (const order of sorted) yield packStrips(parts, room, order);
  const random = mulberry32(SEED);
  for (let i = 0; i < sorted.length + DRAWN_ORDERS; i++) {
    const order = sorted[i] ?? drawnOrder(parts.length, random);
    yield packStrips(parts, room, order);
    for (const first of FIRST_CUTS) yield packOffcuts(parts, room, order, first);
  }
}

/** Widest, longest, largest first; where two are equal, in the order given. */
function sortedOrders(parts: readonly Lies[]): readonly (readonly number[])[] {
  const by = (value: (lie: Lies[number]) => number, then: (lie: Lies[number]) => number): readonly number[] =>
    parts
      .map((_, i) => i)
      .sort((a, b) => {
        const [one, other] = [parts[a]![0]!, parts[b]![0]!];
        return value(other) - value(one) || then(other) - then(one) || a - b;
      });
  const along = ({ along }: Lies[number]): number => along;
  const across = ({ across }: Lies[number]): number => across;
  const area = (lie: Lies[number]): number => lie.along * lie.across;
  return [by(across, along), by(along, across), by(area, along)];
}

function drawnOrder(count: number, random: () => number): readonly number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}
