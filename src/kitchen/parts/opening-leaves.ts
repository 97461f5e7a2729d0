import type { Solid } from '../../engine/light/types';
import { DOOR_LEAF, FRAME, NOSING, SASH } from '../../model/layout/measures';
import type { Plan, PlannedOpening } from '../plan/types';
import { type Extent, solidAt, wallSide } from './side';

type Range = readonly [number, number];

/** A field of an opening: its range along the wall and in height, m. */
export interface Field {
  readonly a: Range;
  readonly z: Range;
}

const m = (mm: number): number => mm / 1000;

/** How far leaves stand before the glass, m. */
export const LEAF_DEPTH = m(SASH.depth);

/** Bars of a leaf round its glass, m. */
export const leafBars = ({ kind }: PlannedOpening) =>
  kind === 'window'
    ? { stile: m(SASH.width), top: m(SASH.width), bottom: m(SASH.width) }
    : { stile: m(DOOR_LEAF.stile), top: m(DOOR_LEAF.stile), bottom: m(DOOR_LEAF.bottom_rail) };

/** Parts of the fixed frame, m: leaves of a door meet without a mullion and stand on a threshold. */
export const frameBars = ({ kind }: PlannedOpening) => ({
  width: m(FRAME.width),
  depth: m(FRAME.depth),
  mullion: kind === 'window' ? m(FRAME.width) : 0,
  bottom: kind === 'window' ? m(FRAME.width) : m(DOOR_LEAF.threshold),
});

/** The leaves of an opening, side by side within its fixed frame. */
export function leavesOf(opening: PlannedOpening): readonly Field[] {
  const { from, to, sill, head, leaves } = opening;
  const { width, mullion, bottom } = frameBars(opening);
  const wide = (to - from - 2 * width - (leaves - 1) * mullion) / leaves;
  return Array.from({ length: leaves }, (_, i) => {
    const start = from + width + i * (wide + mullion);
    return { a: [start, start + wide], z: [sill + bottom, head - width] };
  });
}

/** The glass of a leaf. */
export function glassOf(opening: PlannedOpening, { a, z }: Field): Field {
  const { stile, top, bottom } = leafBars(opening);
  return { a: [a[0] + stile, a[1] - stile], z: [z[0] + bottom, z[1] - top] };
}

/** The openings through the walls, from the glass to just before the wall: boxes that straddle the walls' planes. */
export const openingHoles = (plan: Plan): Solid[] =>
  plan.openings.map(({ wall, from, to, sill, head, reveal }) =>
    solidAt(wallSide(plan, wall), { a: [from, to], d: [-reveal, 0.01], z: [sill, head] }),
  );

/** What a wall's tiles leave free: the openings with the nosings of their sills. */
export const tileHoles = (plan: Plan): Solid[] => [
  ...openingHoles(plan),
  ...plan.openings
    .filter(({ kind }) => kind === 'window')
    .map((opening) => solidAt(wallSide(plan, opening.wall), nosingOf(opening))),
];

/** The nosing of a window's sill board. */
export const nosingOf = ({ from, to, sill }: PlannedOpening): Extent => ({
  a: [from - m(NOSING.ear), to + m(NOSING.ear)],
  d: [0, m(NOSING.depth)],
  z: [sill - m(NOSING.thickness), sill],
});
