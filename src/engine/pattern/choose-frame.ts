import { type Frame, texelCount } from './frame';
import { hasJoint, isBoards, layPieces, pieceSize } from './pieces';
import type { FinishPattern, PatternSpec } from './types';

/** Texels and period a pattern wants where nothing else decides, mm along s and t. */
interface Wish {
  readonly texel: readonly [number, number];
  readonly period: readonly [number, number];
}

/** Size of the texture: fine enough for the pattern's details and joints, large enough that no repeat meets the eye. */
export function chooseFrame(spec: PatternSpec, maxSize: number): Frame {
  const piece = pieceSize(spec);
  let { texel, period } = wishFor(spec.pattern, piece !== null);
  if (!piece) {
    if (spec.slab)
      return sheetFrame([spec.slab.size_mm[0] / 2048, spec.slab.size_mm[1] / 1024], spec.slab.size_mm, maxSize);
    return sheetFrame(texel, period, maxSize);
  }
  if (!isBoards(spec)) {
    const joint = hasJoint(spec) ? spec.joint_mm! : 3;
    const sharp = Math.min(2.35, Math.max(0.6, joint / 1.3));
    texel = [Math.min(texel[0], sharp), Math.min(texel[1], sharp)];
    period = [1024 * texel[0], 1024 * texel[1]];
  }
  const pieces = layPieces(spec, period)!;
  return {
    ...sheetFrame(texel, [pieces.columns * pieces.module_mm[0], pieces.rows * pieces.module_mm[1]], maxSize),
    pieces,
  };
}

function wishFor(pattern: FinishPattern, inPieces: boolean): Wish {
  switch (pattern.kind) {
    case 'plain':
      return { texel: inPieces ? [2.35, 2.35] : [9.5, 9.5], period: [2400, 2400] };
    case 'veined':
    case 'linear':
      return inPieces ? { texel: [2, 2], period: [2400, 2400] } : { texel: [1.2, 1.2], period: [2400, 1200] };
    case 'fleck':
    case 'thread': {
      const t = pattern.kind === 'fleck' ? Math.min(1.25, Math.max(0.75, pattern.size_mm / 6)) : pattern.size_mm / 4.5;
      return { texel: [t, t], period: [1024 * t, 1024 * t] };
    }
    case 'grain':
      if (pattern.figure === 'ray-fleck') return { texel: [1.17, 0.8], period: [1200, 820] };
      return inPieces ? { texel: [3.5, 1.3], period: [4000, 1400] } : { texel: [4.7, 1.17], period: [2400, 1200] };
    case 'brushed':
      return { texel: [4, 0.8], period: [2000, 800] };
    default:
      return { texel: [2.35, 2.35], period: [2400, 2400] };
  }
}

function sheetFrame(texel: readonly [number, number], period: readonly [number, number], maxSize: number): Frame {
  return {
    width: texelCount(period[0], texel[0], maxSize),
    height: texelCount(period[1], texel[1], maxSize),
    width_mm: period[0],
    height_mm: period[1],
    pieces: null,
  };
}
