import { type ReadyBeam, readyBeam } from '../photometry/relative-intensity';
import { type FaceSamples, faceSamples } from './face-samples';
import type { LampFace, LightRoom, Rect } from './types';

/** A lamp face ready to light points. Sample points lie a little in front of the face. */
export interface Emitter extends FaceSamples {
  readonly group: number;
  readonly rect: Rect;
  /** lm/m2 at level 1 that leave the face into the room. */
  readonly exitance: number;
  readonly area: number;
  /** How a lamp spreads what leaves its face; null for the same luminance to all sides. */
  readonly beam: ReadyBeam | null;
}

/** Shadow rays where a face is partly hidden. */
const LAMP_SAMPLES = 64;

/** The lamps of a room, in its order. */
export const prepareEmitters = (room: Pick<LightRoom, 'lamps'>): Emitter[] => room.lamps.map(lampEmitter);

export function lampEmitter(lamp: LampFace): Emitter {
  const { rect, group } = lamp;
  const beam = readyBeam(lamp.beam);
  const lumens = lamp.lumens * (beam ? beam.frontShare : 1);
  const area = Math.hypot(...rect.u) * Math.hypot(...rect.v);
  return { group, rect, exitance: lumens / area, area, beam, ...faceSamples(rect, LAMP_SAMPLES) };
}
