import type { SurfaceId } from '../engine/surface';
import type { Room } from './types';

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
