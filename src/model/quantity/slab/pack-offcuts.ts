import { fits, type Lie, type Lies, type Packing, type Room, type Spot } from './packing';

/** What is left of a slab, free to be cut. */
export interface Offcut extends Room {
  readonly slab: number;
  readonly x: number;
  readonly y: number;
}

/** Which way what is left beside a part is cut first: so that the larger or the smaller offcut runs through. */
export type FirstCut = 'along' | 'across' | 'shorter' | 'longer';

/**
 * Lays parts into offcuts, each into the one that it leaves least of, of the first slab it goes on; every cut goes through its offcut from
 * edge to edge. Every part has to fit a slab. `begun`: slabs with something on them and what is left of these.
 */
export function packOffcuts(
  parts: readonly Lies[],
  room: Room,
  order: readonly number[],
  first: FirstCut,
  begun: { readonly slabs: Packing; readonly offcuts: readonly Offcut[] } = { slabs: [], offcuts: [] },
): Packing {
  const slabs: Spot[][] = begun.slabs.map((spots) => [...spots]);
  let offcuts: readonly Offcut[] = begun.offcuts;
  for (const part of order) {
    let best = bestPlace(offcuts, parts[part]!);
    if (!best) {
      const slab: Offcut = { ...room, slab: slabs.length, x: 0, y: 0 };
      slabs.push([]);
      offcuts = [...offcuts, slab];
      best = bestPlace([slab], parts[part]!)!;
    }
    const { offcut, lie } = best;
    slabs[offcut.slab]!.push({ part, x: offcut.x, y: offcut.y, lie });
    offcuts = [...offcuts.filter((other) => other !== offcut), ...leftOf(offcut, lie, first)];
  }
  return slabs;
}

function bestPlace(offcuts: readonly Offcut[], lies: Lies): { readonly offcut: Offcut; readonly lie: Lie } | null {
  let best: { offcut: Offcut; lie: Lie; left: number } | null = null;
  for (const offcut of offcuts) {
    for (const lie of lies) {
      if (!fits(lie, offcut)) continue;
      const left = Math.min(offcut.along - lie.along, offcut.across - lie.across);
      if (!best || offcut.slab < best.offcut.slab || (offcut.slab === best.offcut.slab && left < best.left)) {
        best = { offcut, lie, left };
      }
    }
  }
  return best;
}

function leftOf(offcut: Offcut, lie: Lie, first: FirstCut): readonly Offcut[] {
  const along = offcut.along - lie.along;
  const across = offcut.across - lie.across;
  const isAlong = first === 'along' || (first === 'shorter' ? along < across : first === 'longer' && along >= across);
  const beside: Offcut = {
    ...offcut,
    x: offcut.x + lie.along,
    along,
    across: isAlong ? lie.across : offcut.across,
  };
  const above: Offcut = {
    ...offcut,
    y: offcut.y + lie.across,
    along: isAlong ? offcut.along : lie.along,
    across,
  };
  return [beside, above].filter(({ along, across }) => along > 0 && across > 0);
}
