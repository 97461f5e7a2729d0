/** How a part may lie: its size along the slab and across, mm, a saw cut included. */
export interface Lie {
  readonly along: number;
  readonly across: number;
  readonly turned: boolean;
}

/** A part with the ways it may lie, the usual first; at least one. */
export type Lies = readonly Lie[];

/** Usable size of a slab, mm, a saw cut beyond its edges included. */
export interface Room {
  readonly along: number;
  readonly across: number;
}

/** Where a part lies on a slab, mm from the corner of its room. */
export interface Spot {
  readonly part: number;
  readonly x: number;
  readonly y: number;
  readonly lie: Lie;
}

/** Slabs with what lies on each. */
export type Packing = readonly (readonly Spot[])[];

/** Dust of floating point, mm. */
const DUST_MM = 1e-6;

/** Does a size go into another, but for dust? */
export const goesInto = (size: number, room: number): boolean => size <= room + DUST_MM;

/** Does a part lie in a room? */
export const fits = (lie: Room, room: Room): boolean =>
  goesInto(lie.along, room.along) && goesInto(lie.across, room.across);
