import { meanLight } from '../../engine/light/surface-light';
import { prepareWindows } from '../../engine/light/window-light';
import type { Room } from '../types';
import type { DaylightState } from './daylight-of';
import type { RoomBasis } from './room-study';

const known = new WeakMap<Room, Map<string, Float64Array>>();

/** Mean direct light on the worktop under any outdoors, lx per group at level 1; worked out once for each room and moment. */
export function worktopDirectUnder(
  { room, transport, nodes }: Pick<RoomBasis, 'room' | 'transport' | 'nodes'>,
  state: DaylightState | null,
): Float64Array {
  const key = state?.key ?? '';
  let found = known.get(room);
  if (!found) {
    found = new Map();
    known.set(room, found);
  }
  let direct = found.get(key);
  if (!direct) {
    const windows = state ? prepareWindows(room.light.windows, state.outdoors) : [];
    direct = meanLight(room.light, { ...transport, windows }, nodes, room.light.worktop).direct;
    found.set(key, direct);
  }
  return direct;
}
