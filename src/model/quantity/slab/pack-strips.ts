import { fits, goesInto, type Lies, type Packing, type Room, type Spot } from './packing';

interface Strip {
  readonly y: number;
  readonly across: number;
  used: number;
}

interface StripSlab {
  readonly strips: Strip[];
  readonly spots: Spot[];
  used: number;
}

/**
 * Lays parts in strips along the slab, each into the first strip that has room, else into a new one, else on a new slab: how counters are
 * usually cut. Every part has to fit a slab.
 */
export function packStrips(parts: readonly Lies[], room: Room, order: readonly number[]): Packing {
  const slabs: StripSlab[] = [];
  for (const part of order) {
    const lies = parts[part]!.filter((lie) => fits(lie, room));
    if (slabs.some((slab) => intoStrip(slab, part, lies, room) || intoNewStrip(slab, part, lies, room))) continue;
    const slab: StripSlab = { strips: [], spots: [], used: 0 };
    slabs.push(slab);
    intoNewStrip(slab, part, lies, room);
  }
  return slabs.map(({ spots }) => spots);
}

function intoStrip(slab: StripSlab, part: number, lies: Lies, room: Room): boolean {
  for (const strip of slab.strips) {
    const lie = lies.find(
      ({ along, across }) => goesInto(across, strip.across) && goesInto(strip.used + along, room.along),
    );
    if (!lie) continue;
    slab.spots.push({ part, x: strip.used, y: strip.y, lie });
    strip.used += lie.along;
    return true;
  }
  return false;
}

function intoNewStrip(slab: StripSlab, part: number, lies: Lies, room: Room): boolean {
  const lie = lies.find(({ across }) => goesInto(slab.used + across, room.across));
  if (!lie) return false;
  slab.strips.push({ y: slab.used, across: lie.across, used: lie.along });
  slab.spots.push({ part, x: 0, y: slab.used, lie });
  slab.used += lie.across;
  return true;
}
