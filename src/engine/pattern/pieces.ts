import type { Layout, PatternSpec } from './types';

/**
 * The different pieces a texture holds, side by side: rectangles in a plain grid, or hexagons (flat sides upright) in rows
 * shifted by half a module. A module is a piece and one joint, the joint half on either side.
 */
export interface PieceGrid {
  readonly shape: 'rectangle' | 'hexagon';
  readonly columns: number;
  readonly rows: number;
  /** Piece and joint, along s and from row to row along t, mm. */
  readonly module_mm: readonly [number, number];
  /** What separates the pieces, mm: a grouted joint, or for boards the gap. */
  readonly joint_mm: number;
}

/** Gap drawn between boards laid without a grouted joint, mm. */
const BOARD_GAP_MM = 0.8;

/** Fewer different pieces than these are soon found again in a field; of pieces this wide a room has few. */
const LEAST_PIECES = 16;
const LEAST_WIDE_PIECES = 12;
const WIDE_PIECE_MM = 500;

/** Of pieces longer than this two stand in a row, mm: three would be a texture of great length. */
const LONG_PIECE_MM = 1500;

/** Distance from row to row of hexagons, in parts of their width from flat to flat. */
export const HEXAGON_ROW = Math.sqrt(3) / 2;

/** Are pieces laid with the grain along them, a gap between, and no grout? */
export const isBoards = ({ pattern, layout, joint_mm }: PatternSpec): boolean =>
  layout !== 'plain' && pattern.kind === 'grain' && !joint_mm;

/** Whether the last component of the spec is the joint's. */
export function hasJoint(spec: PatternSpec): boolean {
  return spec.layout !== 'plain' && (spec.joint_mm ?? 0) > 0 && pieceSize(spec) !== null;
}

/**
 * Size of a piece along its length and across, mm; of a hexagon twice its width from flat to flat. Null for a continuous sheet.
 */
export function pieceSize(spec: PatternSpec): readonly [number, number] | null {
  if (spec.layout === 'plain') return null;
  const boards = spec.layout === 'planks' || spec.layout === 'herringbone';
  const size = boards && spec.pattern.kind === 'grain' ? (spec.pattern.board_mm ?? spec.piece_mm) : spec.piece_mm;
  return size ? laidSize(size, spec.layout) : null;
}

/** A piece as it lies in a layout before any turn: its length along s. Hexagons are measured from flat to flat. */
export function laidSize([a, b]: readonly [number, number], layout: Layout): readonly [number, number] {
  const [long, short] = a >= b ? [a, b] : [b, a];
  return layout === 'hexagon' ? [short, short] : [long, short];
}

/** The pieces of a layout, as many as give about `target_mm` along s and t; null for a continuous sheet. */
export function layPieces(spec: PatternSpec, target_mm: readonly [number, number]): PieceGrid | null {
  const size = pieceSize(spec);
  if (!size) return null;
  const joint = hasJoint(spec) ? spec.joint_mm! : isBoards(spec) ? BOARD_GAP_MM : 0;
  // Boards are counted with their gap: it is so narrow that it changes no size.
  const added = hasJoint(spec) ? joint : 0;
  const hexagon = spec.layout === 'hexagon';
  const module: readonly [number, number] = hexagon
    ? [size[0] + added, (size[0] + added) * HEXAGON_ROW]
    : [size[0] + added, size[1] + added];
  const columns = Math.max(size[0] > LONG_PIECE_MM ? 2 : 3, Math.round(target_mm[0] / module[0]));
  // An even number, so that rows of hexagons close.
  const least = Math.min(...size) >= WIDE_PIECE_MM ? LEAST_WIDE_PIECES : LEAST_PIECES;
  const rows = 2 * Math.ceil(Math.max(least / columns, Math.round(target_mm[1] / module[1]), 2) / 2);
  return { shape: hexagon ? 'hexagon' : 'rectangle', columns, rows, module_mm: module, joint_mm: joint };
}

/** A place on a grid of pieces: which piece, and where on it from its middle, mm. Reused, so that no texel allocates. */
export interface GridPlace {
  piece: number;
  u: number;
  v: number;
}

/** Finds the piece of a place (mm, anywhere) and writes it to `out`. */
export function placeOnGrid(grid: PieceGrid, s: number, t: number, out: GridPlace): void {
  const [ms, mt] = grid.module_mm;
  if (grid.shape === 'rectangle') {
    const i = Math.floor(s / ms);
    const j = Math.floor(t / mt);
    out.piece = wrap(j, grid.rows) * grid.columns + wrap(i, grid.columns);
    out.u = s - (i + 0.5) * ms;
    out.v = t - (j + 0.5) * mt;
    return;
  }
  // Middles of row j stand at t = j modules and s = half a module more in every second row; the nearest one wins.
  let best = Infinity;
  const low = Math.floor(t / mt);
  for (let j = low; j <= low + 1; j++) {
    const shift = j % 2 === 0 ? 0 : 0.5;
    const i = Math.round(s / ms - shift);
    const u = s - (i + shift) * ms;
    const v = t - j * mt;
    if (u * u + v * v >= best) continue;
    best = u * u + v * v;
    out.piece = wrap(j, grid.rows) * grid.columns + wrap(i, grid.columns);
    out.u = u;
    out.v = v;
  }
}

/** Distance of a place on a piece (mm from its middle) from the piece's edge, mm; below 0 on the joint. */
export function edgeOfPiece(grid: PieceGrid, u: number, v: number): number {
  const [ms, mt] = grid.module_mm;
  const half = grid.joint_mm / 2;
  if (grid.shape === 'rectangle') return Math.min(ms / 2 - Math.abs(u), mt / 2 - Math.abs(v)) - half;
  const slant = Math.abs(u) / 2 + Math.abs(v) * HEXAGON_ROW;
  return ms / 2 - Math.max(Math.abs(u), slant) - half;
}

const wrap = (i: number, n: number): number => ((i % n) + n) % n;
