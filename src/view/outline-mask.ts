import {
  type BufferGeometry,
  type Camera,
  GLSL3,
  LinearFilter,
  LinearMipmapNearestFilter,
  Mesh,
  RawShaderMaterial,
  RedFormat,
  Scene,
  Vector2,
  Vector4,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { propShape } from './prop-geometry';
import type { RoomStage } from './room-stage';
import { ScreenCover } from './screen-cover';
import { MASK_SHADERS, OUTLINE_SHADERS } from './shader-sources';

/** Part of a picture, device pixels from its lower left corner. */
export interface Area {
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

/** The dashed line round the surfaces a finding speaks of: they are drawn into a mask, whose contour is drawn on the picture. */
export class OutlineMask {
  readonly #scene = new Scene();
  readonly #propShapes: readonly BufferGeometry[];
  readonly #target = new WebGLRenderTarget(1, 1, {
    format: RedFormat,
    magFilter: LinearFilter,
    minFilter: LinearMipmapNearestFilter,
    generateMipmaps: true,
  });
  readonly #materials = [0, 1].map(
    (marked) => new RawShaderMaterial({ ...MASK_SHADERS, glslVersion: GLSL3, uniforms: { marked: { value: marked } } }),
  );
  readonly #area = new Vector4();
  readonly #place = new Vector2();
  readonly #cover = new ScreenCover({
    ...OUTLINE_SHADERS,
    uniforms: {
      mask: { value: this.#target.texture },
      area: { value: this.#area },
      place: { value: this.#place },
      pixelRatio: { value: 1 },
    },
  });

  constructor(stage: RoomStage, surfaces: readonly number[]) {
    stage.surfaces.forEach((geometry, surface) => {
      if (!geometry) return;
      const mesh = new Mesh(geometry, this.#materials[surfaces.includes(surface) ? 1 : 0]!);
      mesh.frustumCulled = false;
      this.#scene.add(mesh);
    });
    this.#propShapes = stage.room.light.props.map(propShape);
    this.#propShapes.forEach((shape, prop) => {
      const { surface } = stage.room.light.props[prop]!;
      const mesh = new Mesh(shape, this.#materials[surfaces.includes(surface) ? 1 : 0]!);
      mesh.frustumCulled = false;
      this.#scene.add(mesh);
    });
  }

  /**
   * Draws the line over an area of `output` (null: the canvas), which must be set up for that area already. The last argument says
   * where the output lies in a larger picture.
   */
  draw(
    renderer: WebGLRenderer,
    camera: Camera,
    size: { readonly width: number; readonly height: number },
    { left, width, height }: Area,
    output: WebGLRenderTarget | null,
    { left: fromLeft, bottom, pixelRatio } = { left: 0, bottom: 0, pixelRatio: renderer.getPixelRatio() },
  ): void {
    if (this.#target.width !== size.width || this.#target.height !== size.height) {
      this.#target.setSize(size.width, size.height);
    }
    this.#target.viewport.set(left, 0, width, height);
    this.#target.scissor.set(left, 0, width, height);
    this.#target.scissorTest = true;
    renderer.setRenderTarget(this.#target);
    renderer.render(this.#scene, camera);
    this.#area.set(left, 0, left + width, height);
    this.#cover.uniforms['pixelRatio']!.value = pixelRatio;
    this.#place.set(fromLeft, bottom);
    renderer.setRenderTarget(output);
    this.#cover.draw(renderer);
  }

  dispose(): void {
    this.#target.dispose();
    for (const shape of this.#propShapes) shape.dispose();
    for (const material of this.#materials) material.dispose();
    this.#cover.dispose();
  }
}
