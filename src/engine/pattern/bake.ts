import { cleftSheet } from './cleft';
import { cloudSheet } from './cloud';
import { fleckSheet } from './fleck';
import { type Frame, texelCount } from './frame';
import { grainSheet, veneerLeaves } from './grain';
import { fractalNoise, hashTexel } from './noise';
import { hasJoint, layPieces, type PieceRows, pieceSize } from './pieces';
import { plainSheet } from './plain';
import { drawGaps } from './planks';
import { poolSheet } from './pool';
import { rayFleckSheet } from './ray-fleck';
import { balanceGain, fitShare } from './shares';
import type { Sheet } from './sheet';
import { threadSheet } from './thread';
import { cutFromSheet, edgeDistance, mapPieces, type PieceMap } from './tile';
import type { PatternSpec, PatternTexture } from './types';
import { gainSigma, spreadOverPieces } from './variation';
import { veinSheet } from './veins';

/** Pieces no wider than this (wall tile) have glaze that gathers at their edges rather than clouds all over, mm. */
const POOLED_PIECE_MM = 160;

/**
 * Bakes a pattern: a texture that repeats without a seam, whose mean weights are the spec's shares, and whose gain
 * averages 1 within every component, so the area's average colour is exactly the mixture of its components by share.
 * Where the spec has a joint its share follows from the pieces' sizes; the other shares keep their proportions.
 * `maxSize` limits the texels along either side (default 2048; patterns that need fewer take fewer). Same spec, same bytes.
 */
export function bakePattern(spec: PatternSpec, options?: { maxSize?: number }): PatternTexture {
  const frame = frameFor(spec, options?.maxSize ?? 2048);
  const size = frame.width * frame.height;
  const joint = hasJoint(spec);
  const ownShares = spec.shares.slice(1, joint ? -1 : undefined);
  const rows = frame.pieces;
  const map = rows ? mapPieces(frame, rows) : null;

  const { sheet, cut } = sheetFor(spec, frame, ownShares);
  if (rows && map && !cut) cutFromSheet([...sheet.presence, sheet.gain], frame, rows, map, spec.seed);
  const room = joint && map ? map.cover.slice() : new Float32Array(size).fill(1);
  let drawn = 0;
  for (let i = 0; i < size; i++) drawn += room[i]!;
  const ownTotal = joint ? 1 - spec.shares.at(-1)! : 1;
  // From the last component, which lies on top, to the first; each takes its share of what is left.
  for (let k = ownShares.length - 1; k >= 0; k--) {
    const presence = sheet.presence[k]!;
    fitShare(presence, sheet.edge, room, (ownShares[k]! / ownTotal) * (drawn / size));
    for (let i = 0; i < size; i++) {
      presence[i]! *= room[i]!;
      room[i]! -= presence[i]!;
    }
  }
  const weights = [...sheet.presence];
  if (joint && map) {
    const cover = map.cover;
    const share = new Float32Array(size);
    for (let i = 0; i < size; i++) share[i] = 1 - cover[i]!;
    weights.push(share);
  }
  varyLightness(sheet.gain, spec, frame, map);
  if (rows && map && !joint && spec.layout === 'planks') drawGaps(sheet.gain, frame, rows, map);
  balanceGain(sheet.gain, weights);
  return pack(frame, weights, sheet.gain, spec.seed);
}

/** The sheet of a pattern; `cut` when it is drawn piece by piece already. */
function sheetFor(spec: PatternSpec, frame: Frame, shares: readonly number[]): { sheet: Sheet; cut: boolean } {
  const { pattern, seed } = spec;
  const own = shares.length;
  switch (pattern.kind) {
    case 'veined':
      return { sheet: veinSheet(frame, pattern.spacing_mm, pattern.direction_deg, shares, seed), cut: false };
    case 'fleck':
      return { sheet: fleckSheet(frame, pattern.size_mm, shares, seed), cut: false };
    case 'grain':
      if (pattern.figure === 'ray-fleck') return { sheet: rayFleckSheet(frame, shares, seed), cut: false };
      return { sheet: grainSheet(frame, own, seed), cut: true };
    case 'cleft':
      return { sheet: cleftSheet(frame, pattern.size_mm, own, seed), cut: false };
    case 'cloud': {
      const gathers = pattern.gathers ?? (isSmallPiece(spec) ? 'edges' : 'anywhere');
      if (gathers === 'edges' && frame.pieces) {
        return { sheet: poolSheet(frame, frame.pieces, pattern.size_mm, own, seed), cut: true };
      }
      return { sheet: cloudSheet(frame, pattern.size_mm, own, seed), cut: false };
    }
    case 'thread':
      return { sheet: threadSheet(frame, pattern.size_mm, own, seed), cut: false };
    case 'plain':
      return { sheet: plainSheet(frame, own, seed), cut: false };
  }
}

function isSmallPiece(spec: PatternSpec): boolean {
  const size = pieceSize(spec);
  return size !== null && Math.min(size[0], size[1]) <= POOLED_PIECE_MM;
}

/** Size of the texture: fine enough for the pattern's details and joints, large enough that no repeat meets the eye. */
function frameFor(spec: PatternSpec, maxSize: number): Frame {
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
    const t = pattern.kind === 'fleck' ? Math.min(1.25, Math.max(0.6, pattern.size_mm / 6)) : pattern.size_mm / 4.5;
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

/** Lightness from piece to piece by variation class; a continuous sheet drifts by as much over half a metre or so. */
function varyLightness(gain: Float32Array, spec: PatternSpec, frame: Frame, map: PieceMap | null): void {
  const { width, height } = frame;
  const sigma = gainSigma(spec.variation);
  const rows: PieceRows | null =
    frame.pieces ?? (spec.pattern.kind === 'grain' && spec.pattern.figure !== 'ray-fleck' ? veneerLeaves(frame) : null);
  if (!rows) {
    const cells = (length: number): number => Math.max(2, length / 500);
    const drift = fractalNoise(width, height, cells(frame.width_mm), cells(frame.height_mm), 3, spec.seed + 17);
    for (let i = 0; i < gain.length; i++) gain[i]! *= Math.max(0.3, 1 + sigma * drift[i]!);
    return;
  }
  const z = spreadOverPieces(rows.columns * rows.rows, spec.seed ^ 0x7a1e);
  const pieces = map ?? mapPieces(frame, rows);
  const tiled = frame.pieces !== null && spec.layout !== 'planks';
  const distance = tiled ? edgeDistance(frame, rows) : null;
  for (let i = 0; i < gain.length; i++) {
    const tone = Math.max(0.3, 1 + sigma * z[pieces.piece[i]!]!);
    // A joint is not fired with its tile: it takes no part in the tile's tone.
    const cover = tiled ? pieces.cover[i]! : 1;
    // Glaze and body turn over the edge within a millimetre or two.
    const edge = distance ? 1 - 0.035 * Math.exp(-distance[i]! / 1.6) : 1;
    gain[i] = 1 - cover + cover * gain[i]! * tone * edge;
  }
}

/** Bytes of the texture. The gain is dithered, so that a class too fine for 1/128 steps still has its right mean. */
function pack(frame: Frame, weights: readonly Float32Array[], gain: Float32Array, seed: number): PatternTexture {
  const { width, height } = frame;
  const data = new Uint8Array(width * height * 4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      let left = 255;
      for (let k = 0; k < weights.length; k++) {
        const w = Math.max(0, Math.min(left, Math.round(255 * weights[k]![i]!)));
        left -= w;
        data[i * 4 + k] = w;
      }
      data[i * 4 + 3] = Math.max(0, Math.min(255, Math.floor(128 * gain[i]! + hashTexel(x, y, seed))));
    }
  }
  return { width, height, width_m: frame.width_mm / 1000, height_m: frame.height_mm / 1000, data };
}
