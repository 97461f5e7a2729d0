import type { PatternTexture } from '../../engine/pattern/types';

/** What a swatch is painted with: component colors in linear sRGB, the pattern (null: the average alone) and the gloss. */
export interface SwatchPaint {
  readonly colors: readonly (readonly [number, number, number])[];
  readonly texture: PatternTexture | null;
  readonly glossGu: number;
}

/** All samples are painted at this one scale: 1 CSS pixel is 2.5 mm, so a 200 mm tile is 80 pixels wide. */
export const SAMPLE_MM_PER_PX = 2.5;
