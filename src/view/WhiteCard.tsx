import { DoubleSide, GLSL3, RawShaderMaterial } from 'three';
import type { Rect } from '../engine/light/types';
import { cardGeometry } from './card-geometry';
import { HELD_LAYER } from './held-layer';
import { FLAT_SHADERS } from './shader-sources';
import type { SharedUniforms } from './shared-uniforms';
import type { Mark } from './types';
import { useDisposable } from './use-disposable';

/** The rim that tells a white card from a white wall. */
const RIM = [0.33, 0.33, 0.33] as const;
const INNER_SHARE = 0.92;

interface WhiteCardProps {
  readonly rect: Rect;
  readonly mark: Mark;
  /** What a perfect white looks like there, 8 bit sRGB. */
  readonly color: readonly [number, number, number];
  readonly shared: SharedUniforms;
}

/** The comparison white, held at the place that is read. */
export function WhiteCard({ rect, mark, color, shared }: WhiteCardProps) {
  const { u, v } = mark;
  const rim = useDisposable(() => cardGeometry(rect, { u, v }, 1, 0.002), [rect, u, v]);
  const card = useDisposable(() => cardGeometry(rect, { u, v }, INNER_SHARE, 0.003), [rect, u, v]);
  const rimMaterial = useDisposable(() => flatMaterial(RIM, shared), [shared]);
  const [r, g, b] = color;
  const material = useDisposable(() => flatMaterial([r / 255, g / 255, b / 255], shared), [r, g, b, shared]);
  return (
    <>
      <mesh geometry={rim} material={rimMaterial} frustumCulled={false} layers={HELD_LAYER} />
      <mesh geometry={card} material={material} frustumCulled={false} layers={HELD_LAYER} />
    </>
  );
}

const flatMaterial = (color: readonly [number, number, number], { viewMode }: SharedUniforms): RawShaderMaterial =>
  new RawShaderMaterial({
    ...FLAT_SHADERS,
    glslVersion: GLSL3,
    side: DoubleSide,
    uniforms: { color: { value: [...color] }, viewMode },
  });
