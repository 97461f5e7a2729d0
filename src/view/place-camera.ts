import type { PerspectiveCamera } from 'three';
import { lensTowards } from '../engine/light/lens';
import type { Pose } from './camera-rig';
import { verticalFovDeg } from './projection';

/** A part of the picture: edges as shares of its width from the left and of its height from the bottom. */
export interface Crop {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const WHOLE: Crop = { left: 0, right: 1, bottom: 0, top: 1 };

/** Puts a camera where a pose says, with its lens shifted so that uprights stay upright. */
export function placeCamera(camera: PerspectiveCamera, pose: Pose, aspect: number, crop: Crop = WHOLE): void {
  const { forward, up, shift } = lensTowards(pose.eye, pose.target);
  camera.position.set(...pose.eye);
  camera.up.set(...up);
  camera.lookAt(pose.eye[0] + forward[0], pose.eye[1] + forward[1], pose.eye[2] + forward[2]);
  const high = camera.near * Math.tan((verticalFovDeg(pose.fov_deg, aspect) * Math.PI) / 360);
  const middle = camera.near * shift;
  const across = (share: number): number => (share - (1 - share)) * high * aspect;
  const upright = (share: number): number => (1 - share) * (middle - high) + share * (middle + high);
  camera.projectionMatrix.makePerspective(
    across(crop.left),
    across(crop.right),
    upright(crop.top),
    upright(crop.bottom),
    camera.near,
    camera.far,
  );
  camera.projectionMatrixInverse.copy(camera.projectionMatrix).invert();
  camera.updateMatrixWorld();
}
