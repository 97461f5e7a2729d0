import type { NodeGather } from './nodes';
import { solveGroup } from './solve';
import { meanLight } from './surface-light';
import type { Transport } from './transport';
import type { LightRoom } from './types';

/** Reflectances lighting designers assume before finishes are chosen: common practice, no source. */
const REFERENCE_REFLECTANCE: Readonly<Record<string, number>> = { ceiling: 0.8, wall: 0.5, floor: 0.2 };
const REFERENCE_OTHER = 0.4;

/**
 * Mean illuminance on the worktop in lx, per group at level 1, in a room of standard reflectances. It sets the exposure,
 * which so depends on the room and its lamps and not on the finishes compared.
 */
export function referenceIlluminance(room: LightRoom, transport: Transport, nodes: NodeGather): Float64Array {
  const reflectance = Float32Array.from(room.surfaces, (name) => REFERENCE_REFLECTANCE[name] ?? REFERENCE_OTHER);
  const { direct, gather } = meanLight(room, transport, nodes, room.worktop);
  return direct.map((lx, group) => {
    const radiosity = solveGroup(transport, reflectance, transport.direct[group]!, { bands: 1 });
    return lx + gather.reduce((sum, share, patch) => sum + share * radiosity[patch]!, 0);
  });
}
