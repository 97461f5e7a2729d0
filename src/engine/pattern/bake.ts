import { brushedSheet } from './brushed';
import { chooseFrame } from './choose-frame';
import { cleftSheet } from './cleft';
import { cloudSheet } from './cloud';
import { cutSlab, uncutFrame } from './cut-slab';
import { fleckSheet } from './fleck';
import type { Frame } from './frame';
import { grainSheet } from './grain';
import { linearSheet } from './linear';
import { hashTexel } from './noise';
import { pieceField } from './piece-field';
import { hasJoint, isBoards, pieceSize } from './pieces';
import { plainSheet } from './plain';
import { drawGaps, drawSeams } from './planks';
import { poolSheet } from './pool';
import { rayFleckSheet } from './ray-fleck';
import { balanceGain, fitShare } from './shares';
import type { Sheet } from './sheet';
import { threadSheet } from './thread';
import { cutFromSheet, edgeDistance, mapPieces } from './tile';
import type { PatternSpec, PatternTexture } from './types';
import { varyLightness } from './vary-lightness';
import { veinSheet } from './veins';

/** Pieces no wider than this (wall tile) have a glaze, which gathers at their edges rather than in clouds all over, mm. */
const POOLED_PIECE_MM = 160;

/**
 * Bakes a pattern: a texture whose mean weights are the spec's shares, and whose gain averages 1 within every component, so the
 * area's average colour is exactly the mixture of its components by share. Sheets repeat without a seam; a slab is one slab with
 * the seams at its ends; pieces are laid out by the texture's `pieces`. Where the spec has a joint its share follows from the
 * pieces' sizes; the other shares keep their proportions. One to four components, as many as the texture has room for.
 * `maxSize` limits the texels along either side (default 2048; patterns that need fewer take fewer). Same spec, same bytes.
 */
export function bakePattern(spec: PatternSpec, options?: { maxSize?: number }): PatternTexture {
  if (spec.shares.length < 1 || spec.shares.length > 4) throw new RangeError('A pattern has one to four components.');
  const frame = chooseFrame(spec, options?.maxSize ?? 2048);
  const size = frame.width * frame.height;
  const joint = hasJoint(spec);
  const ownShares = spec.shares.slice(1, joint ? -1 : undefined);
  const grid = frame.pieces;
  const map = grid ? mapPieces(frame, grid) : null;

  const distance = grid ? edgeDistance(frame, grid) : null;

  const { sheet, cut } = sheetFor(spec, frame, distance, ownShares);
  if (grid && map && !cut) cutFromSheet([...sheet.presence, sheet.gain], frame, grid, map, spec.seed);
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
  varyLightness(sheet.gain, spec, frame, map, distance);
  if (map && distance && isBoards(spec)) drawGaps(sheet.gain, map, distance);
  if (spec.slab && !grid) drawSeams(sheet.gain, frame);
  balanceGain(sheet.gain, weights);
  return {
    ...pack(frame, weights, sheet.gain, spec.seed),
    ...(spec.slab && !grid && spec.slab.match === 'bookmatch' ? { wrap: 'mirror' } : {}),
    ...(spec.turn_deg ? { turn_deg: spec.turn_deg } : {}),
    ...(grid ? { pieces: pieceField(spec, grid) } : {}),
  };
}

/** The sheet of a pattern; `cut` when it is drawn piece by piece already. */
function sheetFor(
  spec: PatternSpec,
  frame: Frame,
  distance: Float32Array | null,
  shares: readonly number[],
): { sheet: Sheet; cut: boolean } {
  if (!spec.slab || frame.pieces) return drawSheet(spec, frame, distance, shares);
  const { sheet, cut } = drawSheet(spec, uncutFrame(frame), null, shares);
  return { sheet: cutSlab(sheet, frame), cut };
}

function drawSheet(
  spec: PatternSpec,
  frame: Frame,
  distance: Float32Array | null,
  shares: readonly number[],
): { sheet: Sheet; cut: boolean } {
  const { pattern, seed } = spec;
  const own = shares.length;
  switch (pattern.kind) {
    case 'veined':
      return { sheet: veinSheet(frame, pattern.spacing_mm, pattern.direction_deg, shares, seed), cut: false };
    case 'linear':
      return { sheet: linearSheet(frame, pattern.size_mm, pattern.direction_deg, own, seed), cut: false };
    case 'fleck':
      return { sheet: fleckSheet(frame, pattern.size_mm, shares, seed), cut: false };
    case 'grain':
      if (pattern.figure === 'ray-fleck') return { sheet: rayFleckSheet(frame, shares, seed), cut: false };
      return {
        sheet: grainSheet(frame, pattern.figure ?? 'rings', own, seed),
        cut: frame.pieces?.shape === 'rectangle',
      };
    case 'cleft':
      return { sheet: cleftSheet(frame, pattern.size_mm, own, seed), cut: false };
    case 'cloud': {
      const gathers = pattern.gathers ?? (isSmallPiece(spec) ? 'edges' : 'anywhere');
      if (gathers === 'edges' && frame.pieces && distance) {
        return { sheet: poolSheet(frame, frame.pieces, distance, pattern.size_mm, own, seed), cut: true };
      }
      return { sheet: cloudSheet(frame, pattern.size_mm, own, seed), cut: false };
    }
    case 'thread':
      return { sheet: threadSheet(frame, pattern.size_mm, own, seed), cut: false };
    case 'brushed':
      return { sheet: brushedSheet(frame, own, seed), cut: false };
    case 'plain':
      return { sheet: plainSheet(frame, own, spec.variation, isSmallPiece(spec), seed), cut: false };
  }
}

function isSmallPiece(spec: PatternSpec): boolean {
  const size = pieceSize(spec);
  return size !== null && Math.min(size[0], size[1]) <= POOLED_PIECE_MM;
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
