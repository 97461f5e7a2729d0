import {
  BufferAttribute,
  BufferGeometry,
  Camera,
  GLSL3,
  Mesh,
  NearestFilter,
  RawShaderMaterial,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { COPY_SHADERS } from './shader-sources';

const SAMPLES = 4;

/**
 * A multisampled picture beside the canvas. The canvas itself has one sample per pixel, so that frames of a moving camera
 * need not pay for more; a picture at rest is drawn here and copied over.
 */
export class SharpTarget {
  readonly target = new WebGLRenderTarget(1, 1, {
    samples: SAMPLES,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
  });
  readonly #camera = new Camera();
  readonly #cover: Mesh<BufferGeometry, RawShaderMaterial>;

  constructor() {
    const triangle = new BufferGeometry();
    triangle.setAttribute('position', new BufferAttribute(new Float32Array([-1, -1, 0, 3, -1, 0, -1, 3, 0]), 3));
    const material = new RawShaderMaterial({
      ...COPY_SHADERS,
      glslVersion: GLSL3,
      depthTest: false,
      depthWrite: false,
      uniforms: { picture: { value: this.target.texture } },
    });
    this.#cover = new Mesh(triangle, material);
    this.#cover.frustumCulled = false;
  }

  resize(width: number, height: number): void {
    if (this.target.width !== width || this.target.height !== height) this.target.setSize(width, height);
  }

  copyToCanvas(renderer: WebGLRenderer): void {
    renderer.setRenderTarget(null);
    renderer.render(this.#cover, this.#camera);
  }

  dispose(): void {
    this.target.dispose();
    this.#cover.geometry.dispose();
    this.#cover.material.dispose();
  }
}
