import { SURFACES, type SurfaceId } from '../engine/surface';
import type { Kitchen } from '../model/kitchen';
import type { Room } from './types';

/** Surfaces there may be, while the room is not built yet: those of an island only where there is one. The same list each time. */
export const likelySurfaces = (kitchen: Pick<Kitchen, 'island'>): readonly SurfaceId[] =>
  kitchen.island ? SURFACES : WITHOUT_ISLAND;

const WITHOUT_ISLAND = SURFACES.filter((surface) => !surface.startsWith('island-'));

const known = new WeakMap<Room, readonly SurfaceId[]>();

/**
 * The surfaces a room shows, in its order: a scheme names every surface there may be, but a kitchen without an island has no
 * counter on it. The same list each time it is asked for the same room.
 */
export function presentSurfaces(room: Room): readonly SurfaceId[] {
  const before = known.get(room);
  if (before) return before;
  const there = new Set([...room.light.fine, ...room.light.props].map(({ surface }) => surface));
  const present = room.surfaces.filter((_, index) => there.has(index));
  known.set(room, present);
  return present;
}
