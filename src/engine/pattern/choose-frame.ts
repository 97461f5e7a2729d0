import { type Frame, texelCount } from './frame';
import { hasJoint, layPieces, pieceSize } from './pieces';
import type { PatternSpec } from './types';

/** Size of the texture: fine enough for the pattern's details and joints, large enough that no repeat meets the eye. */
export function chooseFrame(spec: PatternSpec, maxSize: number): Frame {
  const { pattern } = spec;
  const piece = pieceSize(spec);
  let texel: [number, number] = [2.35, 2.35];
  let period: [number, number] = [2400, 2400];
  if (pattern.kind === 'plain') {
    texel = piece ? [2.35, 2.35] : [9.5, 9.5];
  } else if (pattern.kind === 'veined') {
    texel = piece ? [2, 2] : [1.2, 1.2];
    period = piece ? [2400, 2400] : [2400, 1200];
  } else if (pattern.kind === 'fleck' || pattern.kind === 'thread') {
    const t = pattern.kind === 'fleck' ? Math.min(1.25, Math.max(0.75, pattern.size_mm / 6)) : pattern.size_mm / 4.5;
    texel = [t, t];
    period = [1024 * t, 1024 * t];
  } else if (pattern.kind === 'grain') {
    const fine = pattern.figure === 'ray-fleck';
    texel = fine ? [1.17, 0.8] : piece ? [3.5, 1.3] : [4.7, 1.17];
    period = piece ? [4000, 1400] : fine ? [1200, 820] : [2400, 1200];
  }
  if (!piece) return sheetFrame(texel, period, maxSize);
  if (spec.layout !== 'planks') {
    const joint = hasJoint(spec) ? spec.joint_mm! : 3;
    const sharp = Math.min(2.35, Math.max(0.6, joint / 1.3));
    texel = [Math.min(texel[0], sharp), Math.min(texel[1], sharp)];
    period = [1024 * texel[0], 1024 * texel[1]];
  }
  const pieces = layPieces(spec, period)!;
  const s = pieces.columns * pieces.module_mm[0];
  const t = pieces.rows * pieces.module_mm[1];
  return {
    width: texelCount(s, texel[0], maxSize),
    height: texelCount(t, texel[1], maxSize),
    width_mm: s,
    height_mm: t,
    pieces,
  };
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
