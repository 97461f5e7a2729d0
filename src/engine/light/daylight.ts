import type { Outdoors } from '../daylight/types';
import { coarseDaylightInSteps } from './coarse-daylight';
import type { Transport } from './transport';
import type { LightRoom } from './types';
import { prepareWindows } from './window-light';

/**
 * The transport of a room under one state of the outdoors: form factors and lamps are those given, daylight is worked out
 * anew. Yields the share done.
 */
export function* daylightInSteps(
  room: LightRoom,
  transport: Transport,
  outdoors: Outdoors,
): Generator<number, Transport> {
  const windows = prepareWindows(room.windows, outdoors);
  const { direct, caught } = yield* coarseDaylightInSteps(room, transport, windows);
  const byDay = new Set(room.windows.flatMap(({ groups }) => Object.values(groups)));
  return {
    ...transport,
    direct: transport.direct.map((lamps, group) => (byDay.has(group) ? direct[group]! : lamps)),
    windows,
    daylightCaught: caught,
  };
}

/** The same at once. */
export function withDaylight(room: LightRoom, transport: Transport, outdoors: Outdoors): Transport {
  const steps = daylightInSteps(room, transport, outdoors);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
