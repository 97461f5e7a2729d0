import { linearSrgbFromXyzD65 } from '../../engine/color/display';
import { xyzD65FromLabD65 } from '../../engine/color/lab';
import type { SwatchPaint } from './swatch-paint';

/** Linear sRGB of a CIELAB color (D65), as swatches take it. */
export function swatchColor([l, a, b]: readonly [number, number, number]): readonly [number, number, number] {
  const { r, g, b: blue } = linearSrgbFromXyzD65(xyzD65FromLabD65({ l, a, b }));
  return [r, g, blue];
}

/** A flat swatch of one CIELAB color (D65). */
export const flatPaint = (lab: readonly [number, number, number], glossGu = 0): SwatchPaint => ({
  colors: [swatchColor(lab)],
  texture: null,
  glossGu,
});
