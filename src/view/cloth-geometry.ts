import type { BufferGeometry } from 'three';
import type { BlindCloth } from '../engine/light/types';
import { faceGeometry, faceOfRect } from './face-geometry';

/** Cloths of roller blinds let down all the way, with what `shaders/cloth.vert` needs to roll them up. Null when there are none. */
export const clothGeometry = (blinds: readonly BlindCloth[]): BufferGeometry | null =>
  faceGeometry(
    blinds.map(({ rect }) => faceOfRect(rect)),
    {
      cloth: (face) => face,
      top: (face) => Math.max(...heightsOf(blinds[face]!)),
      whole: (face) => Math.max(...heightsOf(blinds[face]!)) - Math.min(...heightsOf(blinds[face]!)),
      rolled: (face) => blinds[face]!.rolled_m,
    },
  );

const heightsOf = ({ rect: { origin, u, v } }: BlindCloth): readonly [number, number] => [
  origin[2],
  origin[2] + u[2] + v[2],
];
