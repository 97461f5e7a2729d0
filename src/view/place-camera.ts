import type { PerspectiveCamera } from 'three';
import { lensTowards } from '../engine/light/lens';
import type { Pose } from './camera-rig';
import { verticalFovDeg } from './projection';

/** Puts a camera where a pose says, with its lens shifted so that uprights stay upright. */
export function placeCamera(camera: PerspectiveCamera, pose: Pose, aspect: number): void {
  const { forward, up, shift } = lensTowards(pose.eye, pose.target);
  camera.position.set(...pose.eye);
  camera.up.set(...up);
  camera.lookAt(pose.eye[0] + forward[0], pose.eye[1] + forward[1], pose.eye[2] + forward[2]);
  const high = camera.near * Math.tan((verticalFovDeg(pose.fov_deg, aspect) * Math.PI) / 360);
  const middle = camera.near * shift;
  camera.projectionMatrix.makePerspective(
    -high * aspect,
    high * aspect,
    middle + high,
    middle - high,
    camera.near,
    camera.far,
  );
  camera.projectionMatrixInverse.copy(camera.projectionMatrix).invert();
  camera.updateMatrixWorld();
}
