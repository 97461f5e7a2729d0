import { type BufferGeometry, GLSL3, RawShaderMaterial, Vector2 } from 'three';
import type { FineRect } from '../engine/light/types';
import { contourOf } from './contour';
import { outlineGeometry } from './outline-geometry';
import { OUTLINE_SHADERS } from './shader-sources';

const HALF_WIDTH_PX = 2.5;

/** The dashed line round the surfaces a finding speaks of. */
export class OutlineRibbon {
  readonly geometry: BufferGeometry;
  readonly viewportPx = new Vector2(1, 1);
  readonly material: RawShaderMaterial;

  constructor(rects: readonly FineRect[], surfaces: readonly number[]) {
    this.geometry = outlineGeometry(
      surfaces.flatMap((surface) => contourOf(rects.filter((rect) => rect.surface === surface))),
    );
    this.material = new RawShaderMaterial({
      ...OUTLINE_SHADERS,
      glslVersion: GLSL3,
      uniforms: { viewportPx: { value: this.viewportPx }, halfWidthPx: { value: HALF_WIDTH_PX } },
      depthWrite: false,
    });
  }

  setPixelRatio(ratio: number): void {
    this.material.uniforms['halfWidthPx']!.value = HALF_WIDTH_PX * ratio;
  }

  dispose(): void {
    this.geometry.dispose();
    this.material.dispose();
  }
}
