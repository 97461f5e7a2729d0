import { type Frame, texelCount, texelSize } from './frame';
import { hasJoint, isBoards, layPieces, pieceSize } from './pieces';
import type { PatternSpec } from './types';

/** Texels and period a pattern wants where nothing else decides, mm along s and t. */
interface Wish {
  readonly texel: readonly [number, number];
  readonly period: readonly [number, number];
}

/** Texels across a joint: fewer, and joints and the edges beside them look out of focus from near. */
const JOINT_TEXELS = 2;

/** Texels of a texture of pieces: more would take too long to bake. */
const MOST_PIECE_TEXELS = 2 ** 20;

/** Size of the texture: fine enough for the pattern's details and joints, large enough that no repeat meets the eye. */
export function chooseFrame(spec: PatternSpec, maxSize: number): Frame {
  const piece = pieceSize(spec);
  let { texel, period } = wishFor(spec, piece !== null);
  if (!piece) {
    if (spec.slab)
      return sheetFrame([spec.slab.size_mm[0] / 2048, spec.slab.size_mm[1] / 1024], spec.slab.size_mm, maxSize);
    return sheetFrame(texel, period, maxSize);
  }
  if (!isBoards(spec)) {
    const joint = hasJoint(spec) ? spec.joint_mm! : 3;
    const sharp = Math.min(2.35, Math.max(0.6, joint / JOINT_TEXELS));
    texel = [Math.min(texel[0], sharp), Math.min(texel[1], sharp)];
    period = [1024 * texel[0], 1024 * texel[1]];
  }
  const pieces = layPieces(spec, period)!;
  const laid = sheetFrame(texel, [pieces.columns * pieces.module_mm[0], pieces.rows * pieces.module_mm[1]], maxSize);
  return { ...withinTexels(laid), pieces };
}

/** Halves the side with the finer texels until there are no more than may be. */
function withinTexels(frame: Frame): Frame {
  if (frame.width * frame.height <= MOST_PIECE_TEXELS) return frame;
  const [ds, dt] = texelSize(frame);
  return withinTexels(ds < dt ? { ...frame, width: frame.width / 2 } : { ...frame, height: frame.height / 2 });
}

function wishFor({ pattern, variation }: PatternSpec, inPieces: boolean): Wish {
  switch (pattern.kind) {
    case 'plain':
      if (inPieces) return { texel: [2.35, 2.35], period: [2400, 2400] };
      return variation === 'V0'
        ? { texel: [9.5, 9.5], period: [2400, 2400] }
        : { texel: [1.6, 1.6], period: [1640, 1640] };
    case 'veined':
    case 'linear':
      return inPieces ? { texel: [2, 2], period: [2400, 2400] } : { texel: [1.2, 1.2], period: [2400, 1200] };
    case 'fleck':
    case 'thread': {
      const t = pattern.kind === 'fleck' ? Math.min(1.25, Math.max(0.75, pattern.size_mm / 6)) : pattern.size_mm / 3.6;
      return { texel: [t, t], period: [1024 * t, 1024 * t] };
    }
    case 'grain':
      if (pattern.figure === 'ray-fleck') return { texel: [1.17, 0.8], period: [1200, 820] };
      return inPieces ? { texel: [3.5, 1], period: [4000, 1000] } : { texel: [2.35, 1.17], period: [2400, 1200] };
    case 'brushed':
      return { texel: [4, 0.5], period: [2000, 512] };
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
