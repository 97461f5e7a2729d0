import type { NodeGather } from '../../engine/light/nodes';
import { meanLight, samplesOf } from '../../engine/light/surface-light';
import type { Transport } from '../../engine/light/transport';
import type { LightRoom, SurfaceLight } from '../../engine/light/types';
import { prepareWindows } from '../../engine/light/window-light';
import type { Room } from '../types';
import type { DaylightState } from './daylight-of';

/**
 * Sun on a place of the worktop counts at most this many times the other light there. Eyes adapt to the places they look at, not to
 * lumens: a patch of sun on a fifth of the counter, thirty times as bright as the rest, does not make the rest look blue (our
 * judgement).
 */
const SUN_AT_MOST = 4;

interface RoomLightParts {
  readonly room: Room;
  readonly transport: Transport;
  readonly nodes: NodeGather;
}

/** The direct light of the worktop that eyes adapt to: area means, lx per group at level 1, the sun as above. */
export function worktopDirect({ room, transport, nodes }: RoomLightParts): Float64Array {
  return adaptingDirect(room.light, meanLight(room.light, transport, nodes, room.light.worktop));
}

function adaptingDirect(room: LightRoom, { rects, direct, directAt }: SurfaceLight): Float64Array {
  const suns = [...new Set(room.windows.map(({ groups }) => groups.sun))];
  if (suns.every((sun) => direct[sun] === 0)) return direct;
  const groups = room.groups.length;
  const means = new Float64Array(groups);
  let area = 0;
  let at = 0;
  for (const r of rects) {
    const rect = room.fine[r]!;
    const { nu, nv } = samplesOf(rect);
    const rectArea = Math.hypot(...rect.u) * Math.hypot(...rect.v);
    area += rectArea;
    for (let point = 0; point < nu * nv; point++, at += groups) {
      let other = 0;
      for (let g = 0; g < groups; g++) if (!suns.includes(g)) other += directAt[at + g]!;
      for (let g = 0; g < groups; g++) {
        const lx = directAt[at + g]!;
        means[g]! += (rectArea / (nu * nv)) * (suns.includes(g) ? Math.min(lx, SUN_AT_MOST * other) : lx);
      }
    }
  }
  return means.map((sum) => sum / area);
}

const known = new WeakMap<Room, Map<string, Float64Array>>();

/** `worktopDirect` under any outdoors; worked out once for each room and moment. */
export function worktopDirectUnder(
  { room, transport, nodes }: RoomLightParts,
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
    direct = worktopDirect({ room, transport: { ...transport, windows }, nodes });
    found.set(key, direct);
  }
  return direct;
}
