import type { SlabMatch } from '../../../engine/pattern/types';
import { type Offcut, packOffcuts } from './pack-offcuts';
import { FIRST_CUTS, triedOrders } from './pack-orders';
import { goesInto, type Lies, type Packing, type Room, type Spot } from './packing';

/** Parts that go on in each other over seams, in their order. */
export type Chain = readonly number[];

interface Begun {
  readonly slabs: Spot[][];
  readonly offcuts: Offcut[];
}

/**
 * Parts on slabs that follow each other in the block, so that what goes on over a seam is cut from the next slab at the same height: mirrored, the
 * next part begins in the mirror of where the one before ends (bookmatch), or with the slab (slip). The slabs come in the order of the block.
 * Chains lie lowest, from edge to edge; all else goes into what they leave. As few slabs as are found; null where a chain cannot be cut so.
 */
export function packMatched(
  parts: readonly Lies[],
  chains: readonly Chain[],
  match: SlabMatch,
  kerf_mm: number,
  room: Room,
): Packing | null {
  const chained = new Set(chains.flat());
  const rest = parts.map((_, part) => part).filter((part) => !chained.has(part));
  let best: Packing | null = null;
  for (const order of orders(chains)) {
    const begun = layChains(parts, order, match, kerf_mm, room);
    if (!begun) return null;
    for (const sorted of triedOrders(rest.map((part) => parts[part]!))) {
      for (const first of FIRST_CUTS) {
        const packing = packOffcuts(
          parts,
          room,
          sorted.map((i) => rest[i]!),
          first,
          begun,
        );
        if (!best || packing.length < best.length) best = packing;
        if (best.length <= begun.slabs.length) break;
      }
    }
  }
  return best;
}

/** All orders of a few chains; of many the given one. */
const MOST_ORDERED = 3;

const orders = (chains: readonly Chain[]): readonly (readonly Chain[])[] =>
  chains.length > MOST_ORDERED ? [chains] : permutations(chains);

const permutations = <T>(list: readonly T[]): readonly (readonly T[])[] =>
  list.length < 2
    ? [list]
    : list.flatMap((one, i) => permutations([...list.slice(0, i), ...list.slice(i + 1)]).map((rest) => [one, ...rest]));

/** Each chain on the first slabs in a row that have room for it at one height, else on more slabs. */
function layChains(
  parts: readonly Lies[],
  chains: readonly Chain[],
  match: SlabMatch,
  kerf_mm: number,
  room: Room,
): Begun | null {
  const slabs: Spot[][] = [];
  const offcuts: Offcut[] = [];
  const used: number[] = [];
  for (const chain of chains) {
    // Whatever may be turned has no veins that could meet.
    const lies = chain.map((part) => parts[part]!.find(({ turned }) => !turned));
    if (!lies.every((lie) => lie !== undefined)) return null;
    const starts = startsOf(
      lies.map(({ along }) => along - kerf_mm),
      match,
      room.along - kerf_mm,
    );
    if (!starts) return null;
    const { across } = lies[0]!;
    const heightAt = (slab: number): number => Math.max(...chain.map((_, k) => used[slab + k] ?? 0));
    let slab = 0;
    while (!goesInto(heightAt(slab) + across, room.across)) slab++;
    const y = heightAt(slab);
    for (const [k, part] of chain.entries()) {
      const at = slab + k;
      while (slabs.length <= at) {
        slabs.push([]);
        used.push(0);
      }
      const [x, lie] = [starts[k]!, lies[k]!];
      slabs[at]!.push({ part, x, y, lie });
      const end = x + lie.along;
      offcuts.push({ slab: at, x: 0, y, along: x, across }, { slab: at, x: end, y, along: room.along - end, across });
      offcuts.push({ slab: at, x: 0, y: used[at]!, along: room.along, across: y - used[at]! });
      used[at] = y + across;
    }
  }
  const tops = used.map((y, slab) => ({ slab, x: 0, y, along: room.along, across: room.across - y }));
  return { slabs, offcuts: [...offcuts, ...tops].filter(({ along, across }) => along > 0 && across > 0) };
}

/** Where the parts of a chain begin on their slabs, mm; null where they cannot all lie on them. `usable` is the length of a slab. */
function startsOf(lengths: readonly number[], match: SlabMatch, usable: number): readonly number[] | null {
  if (match === 'slip') return lengths.map((length, k) => (k === 0 ? usable - length : 0));
  // Each start is the first one, t, or its mirror, with something added: sign * t + more.
  const from: { readonly sign: 1 | -1; readonly more: number }[] = [{ sign: 1, more: 0 }];
  let [least, most] = [0, usable - lengths[0]!];
  for (let k = 1; k < lengths.length; k++) {
    const { sign, more } = from[k - 1]!;
    const next = { sign: -sign as 1 | -1, more: usable - more - lengths[k - 1]! };
    from.push(next);
    const room = usable - lengths[k]!;
    const [low, high] = next.sign > 0 ? [-next.more, room - next.more] : [next.more - room, next.more];
    [least, most] = [Math.max(least, low), Math.min(most, high)];
  }
  if (most < least - DUST_MM) return null;
  return from.map(({ sign, more }) => Math.max(0, sign * most + more));
}

/** Dust of floating point, mm. */
const DUST_MM = 1e-6;
