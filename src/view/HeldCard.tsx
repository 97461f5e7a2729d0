import {
  ClampToEdgeWrapping,
  DataTexture,
  DoubleSide,
  GLSL3,
  HalfFloatType,
  LinearFilter,
  LinearMipmapLinearFilter,
  NoColorSpace,
  RawShaderMaterial,
  RGBAFormat,
} from 'three';
import type { Rect } from '../engine/light/types';
import { heldGeometry } from './card-geometry';
import { halvesFromFloats } from './half-floats';
import { HELD_LAYER } from './held-layer';
import { CARD_SHADERS } from './shader-sources';
import type { SharedUniforms } from './shared-uniforms';
import type { CardPaint, Mark } from './types';
import { useDisposable } from './use-disposable';

/** Before the face, m: a hand's breadth of air would change its light, nothing at all would flicker. */
const GAP_M = 0.003;
const ANISOTROPY = 8;

interface HeldCardProps {
  readonly rect: Rect;
  readonly mark: Mark;
  readonly paint: CardPaint;
  readonly shared: SharedUniforms;
}

/** A white or a finish held against the place that is read, in real size. */
export function HeldCard({ rect, mark, paint, shared }: HeldCardProps) {
  const { u, v } = mark;
  const [width, height] = paint.size_m;
  const geometry = useDisposable(
    () => heldGeometry(rect, { u, v }, [width, height], GAP_M),
    [rect, u, v, width, height],
  );
  const texture = useDisposable(() => textureOf(paint), [paint]);
  const material = useDisposable(
    () =>
      new RawShaderMaterial({
        ...CARD_SHADERS,
        glslVersion: GLSL3,
        defines: { DISPLAY: 2 },
        side: DoubleSide,
        uniforms: { ...shared, paint: { value: texture } },
      }),
    [texture, shared],
  );
  return <mesh geometry={geometry} material={material} frustumCulled={false} layers={HELD_LAYER} />;
}

function textureOf({ width, height, linear }: CardPaint): DataTexture {
  const floats = new Float32Array(4 * width * height).fill(1);
  for (let at = 0; at < width * height; at++) floats.set(linear.subarray(3 * at, 3 * at + 3), 4 * at);
  const halves = new Uint16Array(floats.length);
  halvesFromFloats(halves, floats);
  const texture = new DataTexture(halves, width, height, RGBAFormat, HalfFloatType);
  texture.colorSpace = NoColorSpace;
  texture.wrapS = ClampToEdgeWrapping;
  texture.wrapT = ClampToEdgeWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = ANISOTROPY;
  texture.needsUpdate = true;
  return texture;
}
