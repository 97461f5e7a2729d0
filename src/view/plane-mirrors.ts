import {
  type Group,
  LinearFilter,
  LinearMipmapLinearFilter,
  Matrix4,
  type Object3D,
  PerspectiveCamera,
  Plane,
  type Scene,
  type Texture,
  Vector3,
  Vector4,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { type MirrorFaces, type MirrorPlane, planesSeen } from './mirror-planes';
import { withMirrored } from './room-material';

/** Planes mirrored by a picture of their own; what else mirrors reads the room's cube. */
const PLANES = 2;
/** Pixels of a mirror's picture per pixel of the output, along an edge. */
const SHARE = 0.5;

/** Uniforms of mirror.glsl that belong to one look. */
interface PlaneUniforms {
  readonly planes: { value: Vector4[] };
  readonly planePicture0: { value: Texture | null };
  readonly planePicture1: { value: Texture | null };
  /** Left, bottom, 1 / width, 1 / height of the output: device pixels. */
  readonly planeArea: { value: Vector4 };
  /** Texels of a mirror's picture per radian, in its middle. */
  readonly planeTexels: { value: number };
}

/** What is drawn, how and where, when mirrors are looked into. */
export interface MirrorView {
  readonly renderer: WebGLRenderer;
  readonly scene: Scene;
  /** As it looks at the room. */
  readonly camera: PerspectiveCamera;
  readonly shown: Group;
  /** Of the output, device pixels. */
  readonly area: { readonly left: number; readonly bottom: number; readonly width: number; readonly height: number };
}

/**
 * The largest polished planes in sight, each with the room as it mirrors it to the eye: exact where the cube of the whole room, taken from
 * its middle, puts near things in the wrong place.
 */
export class PlaneMirrors {
  readonly uniforms: PlaneUniforms = {
    planes: { value: Array.from({ length: PLANES }, () => new Vector4()) },
    planePicture0: { value: null },
    planePicture1: { value: null },
    planeArea: { value: new Vector4() },
    planeTexels: { value: 1 },
  };
  readonly #targets: readonly WebGLRenderTarget[] = Array.from(
    { length: PLANES },
    () =>
      new WebGLRenderTarget(1, 1, {
        magFilter: LinearFilter,
        minFilter: LinearMipmapLinearFilter,
        generateMipmaps: true,
      }),
  );
  readonly #camera = new PerspectiveCamera();
  #faces: readonly MirrorFaces[] = [];
  /** From where and how large the pictures were drawn; empty where something they show has changed since. */
  #drawnFor = '';

  constructor() {
    this.#camera.matrixAutoUpdate = false;
    this.#camera.matrixWorldAutoUpdate = false;
  }

  setFaces(faces: readonly MirrorFaces[]): void {
    this.#faces = faces;
    this.expire();
  }

  /** What is mirrored has changed. */
  expire(): void {
    this.#drawnFor = '';
  }

  /** No plane mirrors by a picture of its own. */
  clear(): void {
    for (const plane of this.uniforms.planes.value) plane.set(0, 0, 0, 0);
    this.expire();
  }

  /** Draws what the planes in sight mirror, if it is not there yet. The render target may be another afterwards. */
  draw(view: MirrorView): void {
    const { left, bottom, width, height } = view.area;
    const { matrixWorld, projectionMatrix } = view.camera;
    const drawnFor = [left, bottom, width, height, ...matrixWorld.elements, ...projectionMatrix.elements].join();
    if (drawnFor === this.#drawnFor) return;
    this.clear();
    this.#drawnFor = drawnFor;
    const eye = new Vector3().setFromMatrixPosition(view.camera.matrixWorld);
    const seen = planesSeen(this.#faces, [eye.x, eye.y, eye.z], PLANES);
    if (seen.length === 0) return;
    const { area, camera } = view;
    this.uniforms.planePicture0.value = null;
    this.uniforms.planePicture1.value = null;
    seen.forEach((plane, i) => {
      const target = this.#targets[i]!;
      const [width, height] = [Math.ceil(area.width * SHARE), Math.ceil(area.height * SHARE)];
      if (target.width !== width || target.height !== height) target.setSize(width, height);
      this.#mirror(plane, camera);
      drawBare(view, this.#camera, target);
    });
    // Only now: a mirror's picture must not be read while another is drawn.
    seen.forEach(({ normal, offset }, i) => {
      this.uniforms.planes.value[i]!.set(...normal, offset);
    });
    this.uniforms.planePicture0.value = this.#targets[0]!.texture;
    this.uniforms.planePicture1.value = seen.length > 1 ? this.#targets[1]!.texture : null;
    this.uniforms.planeArea.value.set(area.left, area.bottom, 1 / area.width, 1 / area.height);
    // Clip space is 2 wide over 2 / m11 of the picture at distance 1.
    this.uniforms.planeTexels.value = 0.5 * camera.projectionMatrix.elements[5]! * area.height * SHARE;
  }

  dispose(): void {
    for (const target of this.#targets) target.dispose();
  }

  /** The camera of the room behind a mirror: it sees the room reflected, and nothing that stands behind the plane. */
  #mirror({ normal: [x, y, z], offset }: MirrorPlane, camera: PerspectiveCamera): void {
    const reflection = new Matrix4().set(
      ...([1 - 2 * x * x, -2 * x * y, -2 * x * z, 2 * x * offset] as const),
      ...([-2 * x * y, 1 - 2 * y * y, -2 * y * z, 2 * y * offset] as const),
      ...([-2 * x * z, -2 * y * z, 1 - 2 * z * z, 2 * z * offset] as const),
      ...([0, 0, 0, 1] as const),
    );
    const mirrored = this.#camera;
    mirrored.matrixWorld.multiplyMatrices(reflection, camera.matrixWorld);
    mirrored.matrixWorldInverse.multiplyMatrices(camera.matrixWorldInverse, reflection);
    mirrored.projectionMatrix.copy(camera.projectionMatrix);
    clipAt(mirrored, new Plane(new Vector3(x, y, z), -offset));
    mirrored.projectionMatrixInverse.copy(mirrored.projectionMatrix).invert();
  }
}

/** Puts the near plane of a camera where `plane` is: E. Lengyel, Oblique view frustum depth projection and clipping (2005). */
function clipAt(camera: PerspectiveCamera, plane: Plane): void {
  const { normal, constant } = plane.applyMatrix4(camera.matrixWorldInverse);
  const clip = new Vector4(normal.x, normal.y, normal.z, constant);
  const { elements } = camera.projectionMatrix;
  const corner = new Vector4(
    (Math.sign(clip.x) + elements[8]!) / elements[0]!,
    (Math.sign(clip.y) + elements[9]!) / elements[5]!,
    -1,
    (1 + elements[10]!) / elements[14]!,
  );
  clip.multiplyScalar(2 / clip.dot(corner));
  elements[2] = clip.x;
  elements[6] = clip.y;
  elements[10] = clip.z + 1;
  elements[14] = clip.w;
}

/** Draws one look alone in linear light without sheen, so that no mirror shows another. */
function drawBare({ renderer, scene, shown }: MirrorView, camera: PerspectiveCamera, target: WebGLRenderTarget): void {
  const visible = scene.children.map((child) => child.visible);
  for (const child of scene.children) child.visible = child === (shown as Object3D);
  // A reflected room turns fronts to backs. Shaders take places as they are; the renderer turns round by the sign of this.
  shown.scale.x = -1;
  renderer.setRenderTarget(target);
  withMirrored(shown, () => renderer.render(scene, camera));
  shown.scale.x = 1;
  scene.children.forEach((child, i) => {
    child.visible = visible[i]!;
  });
}
