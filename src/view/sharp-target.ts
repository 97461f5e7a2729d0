import { NearestFilter, type WebGLRenderer, WebGLRenderTarget } from 'three';
import { ScreenCover } from './screen-cover';
import { COPY_SHADERS } from './shader-sources';

/** Samples per pixel of a picture at rest. */
export const SHARP_SAMPLES = 4;

/**
 * A multisampled picture beside the canvas. The canvas itself has one sample per pixel, so that frames of a moving camera
 * need not pay for more; a picture at rest is drawn here and copied over.
 */
export class SharpTarget {
  readonly target = new WebGLRenderTarget(1, 1, {
    samples: SHARP_SAMPLES,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
  });
  readonly #cover = new ScreenCover({ ...COPY_SHADERS, uniforms: { picture: { value: this.target.texture } } });

  resize(width: number, height: number): void {
    if (this.target.width !== width || this.target.height !== height) this.target.setSize(width, height);
  }

  copyToCanvas(renderer: WebGLRenderer): void {
    renderer.setRenderTarget(null);
    this.#cover.draw(renderer);
  }

  dispose(): void {
    this.target.dispose();
    this.#cover.dispose();
  }
}
