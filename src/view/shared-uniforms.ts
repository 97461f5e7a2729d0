import { type DataTexture, Vector3 } from 'three';
import type { Vec3 } from '../engine/light/types';

/** Uniforms that all materials of the picture share by reference: set once, seen everywhere. */
export interface SharedUniforms {
  readonly daylightAtlas: { value: DataTexture };
  readonly lampsAtlas: { value: DataTexture };
  /** See VIEW_MODE_NUMBERS. */
  readonly viewMode: { value: number };
  readonly marksClipped: { value: number };
  /** Where the output lies in the whole picture, and one CSS pixel of it; device pixels. */
  readonly hatchPlace: { value: Vector3 };
  readonly mirrorCenter: { value: Vector3 };
  readonly roomMin: { value: Vector3 };
  readonly roomMax: { value: Vector3 };
}

export function createSharedUniforms(
  [daylight, lamps]: readonly [DataTexture, DataTexture],
  roomSize: Vec3,
): SharedUniforms {
  const size = new Vector3(...roomSize);
  return {
    daylightAtlas: { value: daylight },
    lampsAtlas: { value: lamps },
    viewMode: { value: 0 },
    marksClipped: { value: 0 },
    hatchPlace: { value: new Vector3(0, 0, 1) },
    mirrorCenter: { value: size.clone().multiplyScalar(0.5) },
    roomMin: { value: new Vector3() },
    roomMax: { value: size },
  };
}
