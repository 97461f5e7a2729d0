import { mulberry32 } from '../random';
import type { PatternSpec } from './types';

/**
 * Pieces in rows: row r lies between t = r and r + 1 modules, its pieces follow one another along s, shifted by the row's
 * offset. A module is a piece and one joint, the joint half on either side.
 */
export interface PieceRows {
  readonly columns: number;
  readonly rows: number;
  /** Piece and joint, along s and along t, mm. */
  readonly module_mm: readonly [number, number];
  /** What separates the pieces, mm: a grouted joint, or for boards the gap. */
  readonly joint_mm: number;
  /** Shift of each row along s, mm. */
  readonly offset_mm: Float64Array;
}

/** Common practice, no source: end joints of boards in neighbouring rows lie at least this far apart (short boards: 2/9 of their length), mm. */
const MIN_STAGGER_MM = 300;

/** Gap drawn between boards laid without a grouted joint, mm. */
const BOARD_GAP_MM = 0.8;

/** Whether the last component of the spec is the joint's. */
export function hasJoint(spec: PatternSpec): boolean {
  return spec.layout !== 'plain' && (spec.joint_mm ?? 0) > 0 && pieceSize(spec) !== null;
}

/** Of pieces longer than this two in a row are enough before the pattern repeats, mm. */
const LARGE_PIECE_MM = 1000;

/** Size of a piece along s and along t, mm, or null for a continuous sheet. Boards lie with their length along s. */
export function pieceSize(spec: PatternSpec): readonly [number, number] | null {
  if (spec.layout === 'plain') return null;
  const size =
    spec.layout === 'planks' && spec.pattern.kind === 'grain'
      ? (spec.pattern.board_mm ?? spec.piece_mm)
      : spec.piece_mm;
  if (!size) return null;
  if (spec.layout !== 'planks') return size;
  return [Math.max(size[0], size[1]), Math.min(size[0], size[1])];
}

/** The rows of pieces of a layout, as many as give about `target_mm` along s and t; null for a continuous sheet. */
export function layPieces(spec: PatternSpec, target_mm: readonly [number, number]): PieceRows | null {
  const size = pieceSize(spec);
  if (!size) return null;
  const joint = hasJoint(spec) ? spec.joint_mm! : 0;
  const module: readonly [number, number] = [size[0] + joint, size[1] + joint];
  const planks = spec.layout === 'planks';
  const columns = Math.max(planks || module[0] > LARGE_PIECE_MM ? 2 : 4, Math.round(target_mm[0] / module[0]));
  const rows = Math.max(module[1] > LARGE_PIECE_MM ? 2 : 4, 2 * Math.round(target_mm[1] / module[1] / 2));
  const offset = new Float64Array(rows);
  if (spec.layout === 'running-bond') for (let r = 1; r < rows; r += 2) offset[r] = module[0] / 2;
  if (planks) staggerRows(offset, module[0], spec.seed);
  return {
    columns,
    rows,
    module_mm: module,
    joint_mm: planks && joint === 0 ? BOARD_GAP_MM : joint,
    offset_mm: offset,
  };
}

/** Seeded offsets so that neighbouring rows, the last and the first too, keep their end joints apart. */
function staggerRows(offset: Float64Array, length_mm: number, seed: number): void {
  const random = mulberry32(seed ^ 0x51a66e12);
  const apart = Math.min(MIN_STAGGER_MM, length_mm / 4.5);
  const distance = (a: number, b: number): number => {
    const d = Math.abs(a - b) % length_mm;
    return Math.min(d, length_mm - d);
  };
  const rows = offset.length;
  for (let r = 0; r < rows; r++) {
    const before = r > 0 ? offset[r - 1]! : null;
    const after = r === rows - 1 ? offset[0]! : null;
    const twoBack = r > 1 ? offset[r - 2]! : null;
    let best = -1;
    // The best of some throws: clear of both neighbours, and if possible of the row after next (no visible staircase).
    for (let i = 0; i < 120; i++) {
      const candidate = random() * length_mm;
      const clear = Math.min(
        before === null ? length_mm : distance(candidate, before),
        after === null ? length_mm : distance(candidate, after),
      );
      const further = twoBack === null ? length_mm : distance(candidate, twoBack);
      const score = (clear >= apart ? 1e9 : clear) + Math.min(further, apart / 2) + random() * apart * 0.3;
      if (score > best) {
        best = score;
        offset[r] = candidate;
      }
    }
  }
}
