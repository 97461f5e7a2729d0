import { withDaylight } from '../../engine/light/daylight';
import { referenceRadiosity } from '../../engine/light/exposure';
import type { NodeGather } from '../../engine/light/nodes';
import { meanLight, samplesOf } from '../../engine/light/surface-light';
import type { Transport } from '../../engine/light/transport';
import type { LightRoom, SurfaceLight } from '../../engine/light/types';
import type { Room } from '../types';
import type { DaylightState } from './daylight-of';

/**
 * Direct sun on a place of the worktop counts at most this many times the other direct light there. Eyes adapt to the places they
 * look at, not to lumens: a patch of sun on a fifth of the counter, thirty times as bright as the rest, does not make the rest look
 * blue (our judgment).
 */
const SUN_AT_MOST = 4;

interface RoomLightParts {
  readonly room: Room;
  readonly transport: Transport;
  readonly nodes: NodeGather;
}

/**
 * The light of the worktop that eyes adapt to: means of direct light, the sun as above, and of what a room of standard gray
 * reflectances adds (`radiosity`, from `referenceRadiosity`), lx per group at level 1. It depends on no finish. With direct
 * light alone, sun on the ground outside, which reaches a worktop by way of the ceiling, would count for nothing.
 */
export function worktopLight(
  { room, transport, nodes }: RoomLightParts,
  radiosity: readonly Float32Array[],
): Float64Array {
  const light = meanLight(room.light, transport, nodes, room.light.worktop);
  const { gather } = light;
  return adaptingDirect(room.light, light).map(
    (lx, group) => lx + gather.reduce((sum, share, patch) => sum + share * radiosity[group]![patch]!, 0),
  );
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
/** Skies kept for each room: one for every setting a project may have, and more. */
const MOST_KEPT = 24;

/** `worktopLight` under any outdoors; worked out once for each room and sky. */
export function worktopLightUnder(parts: RoomLightParts, state: DaylightState | null): Float64Array {
  const { room, transport } = parts;
  const key = state?.key ?? '';
  let found = known.get(room);
  if (!found) {
    found = new Map();
    known.set(room, found);
  }
  const before = found.get(key);
  if (before) return before;
  const under = state ? withDaylight(room.light, transport, state.outdoors) : transport;
  const light = worktopLight({ ...parts, transport: under }, referenceRadiosity(room.light, under));
  if (found.size >= MOST_KEPT) found.delete(found.keys().next().value!);
  found.set(key, light);
  return light;
}
