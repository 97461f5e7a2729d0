import {
  type CubeTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  type Object3D,
  PerspectiveCamera,
  type Scene,
  UnsignedByteType,
  Vector3,
  WebGLCubeRenderTarget,
  type WebGLRenderer,
} from 'three';
import { withMirrored } from './room-material';
import type { SharedUniforms } from './shared-uniforms';

const FACE_PX = 128;

/** Direction and up of the six faces in the order and handedness of OpenGL ES 3.0, table 3.20. */
const FACES: readonly (readonly [Vector3, Vector3])[] = [
  [new Vector3(1, 0, 0), new Vector3(0, -1, 0)],
  [new Vector3(-1, 0, 0), new Vector3(0, -1, 0)],
  [new Vector3(0, 1, 0), new Vector3(0, 0, 1)],
  [new Vector3(0, -1, 0), new Vector3(0, 0, -1)],
  [new Vector3(0, 0, 1), new Vector3(0, -1, 0)],
  [new Vector3(0, 0, -1), new Vector3(0, -1, 0)],
];

/** A picture of the room all around its centre, in linear light, for polished faces to mirror. */
export function createMirrorCube(): WebGLCubeRenderTarget {
  return new WebGLCubeRenderTarget(FACE_PX, {
    // Bytes hold square roots (see display.glsl): far cheaper to sample in software than half floats, and enough for sheen.
    type: UnsignedByteType,
    minFilter: LinearMipmapLinearFilter,
    magFilter: LinearFilter,
    generateMipmaps: true,
  });
}

/**
 * Draws the room into the cube: what is in `shown` but for what is held there, without sheen, so that no mirror shows
 * another mirror. `mirror` is the uniform through which they read the cube: nothing may read it while it is drawn.
 */
export function captureRoom(
  renderer: WebGLRenderer,
  scene: Scene,
  shown: Object3D,
  cube: WebGLCubeRenderTarget,
  mirror: { value: CubeTexture | null },
  shared: SharedUniforms,
): void {
  const camera = new PerspectiveCamera(90, 1, 0.02, 100);
  camera.position.copy(shared.mirrorCenter.value);
  const visible = scene.children.map((child) => child.visible);
  for (const child of scene.children) child.visible = child === shown;
  mirror.value = null;
  withMirrored(shown, () => {
    FACES.forEach(([direction, up], face) => {
      camera.up.copy(up);
      camera.lookAt(camera.position.clone().add(direction));
      camera.updateMatrixWorld();
      cube.texture.generateMipmaps = face === FACES.length - 1;
      renderer.setRenderTarget(cube, face);
      renderer.render(scene, camera);
    });
  });
  renderer.setRenderTarget(null);
  mirror.value = cube.texture;
  scene.children.forEach((child, i) => {
    child.visible = visible[i]!;
  });
}
