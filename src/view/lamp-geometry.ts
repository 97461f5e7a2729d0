import type { BufferGeometry } from 'three';
import type { LampFace } from '../engine/light/types';
import { type Face, faceGeometry, faceOfRect } from './face-geometry';

/** Corners of a round opening, as many as its shade has. */
const SIDES = 40;

/** Lamp faces, with what `shaders/lamp.vert` knows of each. Null when there are none. */
export const lampGeometry = (lamps: readonly LampFace[]): BufferGeometry | null =>
  faceGeometry(lamps.map(seenFace), {
    lamp: (face) => face,
    narrowing: (face) => narrowingOf(lamps[face]!),
    openingX: (face) => middleOf(lamps[face]!, 0),
    openingY: (face) => middleOf(lamps[face]!, 1),
    openingRadius: (face) => lamps[face]!.opening?.radius_m ?? 0,
  });

const middleOf = ({ rect: { origin, u, v } }: LampFace, axis: 0 | 1): number => origin[axis] + (u[axis] + v[axis]) / 2;

/** The face itself, or the opening of the shade, which looks down. */
function seenFace(lamp: LampFace): Face {
  const face = faceOfRect(lamp.rect);
  if (!lamp.opening) return face;
  const { radius_m } = lamp.opening;
  const corners = Array.from({ length: SIDES }, (_, i) => {
    const turn = (-2 * Math.PI * i) / SIDES;
    return [
      middleOf(lamp, 0) + radius_m * Math.cos(turn),
      middleOf(lamp, 1) + radius_m * Math.sin(turn),
      lamp.rect.origin[2],
    ] as const;
  });
  return { ...face, corners };
}

/** Luminance falls with this power of the cosine as one moves aside; 0 for what looks the same from all sides. */
const narrowingOf = ({ beam }: LampFace): number => (beam?.kind === 'cosine-power' ? beam.exponent - 1 : 0);
