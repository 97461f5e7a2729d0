import {
  BufferAttribute,
  BufferGeometry,
  Camera,
  GLSL3,
  type IUniform,
  Mesh,
  RawShaderMaterial,
  type ShaderMaterialParameters,
  type WebGLRenderer,
} from 'three';

/** One triangle that covers the whole output, to run a fragment shader on every pixel of it. */
export class ScreenCover {
  readonly #camera = new Camera();
  readonly #mesh: Mesh<BufferGeometry, RawShaderMaterial>;

  constructor(parameters: Pick<ShaderMaterialParameters, 'vertexShader' | 'fragmentShader' | 'uniforms'>) {
    const triangle = new BufferGeometry();
    triangle.setAttribute('position', new BufferAttribute(new Float32Array([-1, -1, 0, 3, -1, 0, -1, 3, 0]), 3));
    const material = new RawShaderMaterial({ ...parameters, glslVersion: GLSL3, depthTest: false, depthWrite: false });
    this.#mesh = new Mesh(triangle, material);
    this.#mesh.frustumCulled = false;
  }

  get uniforms(): Record<string, IUniform> {
    return this.#mesh.material.uniforms;
  }

  /** Runs over the present output and keeps what it does not overwrite. */
  draw(renderer: WebGLRenderer): void {
    const { autoClear } = renderer;
    renderer.autoClear = false;
    renderer.render(this.#mesh, this.#camera);
    renderer.autoClear = autoClear;
  }

  dispose(): void {
    this.#mesh.geometry.dispose();
    this.#mesh.material.dispose();
  }
}
