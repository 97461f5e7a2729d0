import type { PieceGrid } from './pieces';

/** The texture being baked: its size in texels and mm, and the pieces it shows (null for a continuous sheet). */
export interface Frame {
  readonly width: number;
  readonly height: number;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly pieces: PieceGrid | null;
}

/** Size of one texel along s and t, mm. */
export function texelSize(frame: Frame): readonly [number, number] {
  return [frame.width_mm / frame.width, frame.height_mm / frame.height];
}

/** Texels for a length at about `texel_mm` each: the nearest power of two (mip levels then halve exactly), 64 to `maxSize`. */
export function texelCount(length_mm: number, texel_mm: number, maxSize: number): number {
  const count = 2 ** Math.round(Math.log2(length_mm / texel_mm));
  return Math.max(64, Math.min(2 ** Math.floor(Math.log2(maxSize)), count));
}
