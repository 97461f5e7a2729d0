import type { Frame } from './frame';
import { veneerLeaves } from './grain';
import { fractalNoise } from './noise';
import { isBoards, type PieceGrid } from './pieces';
import { mapPieces, type PieceMap } from './tile';
import type { PatternSpec } from './types';
import { gainSigma, spreadOverPieces } from './variation';

/** Sheets at least this long drift in lightness by their full class, shorter ones by as much less, mm. */
const SHEET_DRIFT_PERIOD_MM = 2000;

/** Over what length a sheet's lightness drifts, along s and t, mm; along the grain of wood much farther than across. */
const SHEET_DRIFT_MM = [500, 500] as const;
const GRAIN_DRIFT_MM = [600, 60] as const;

/** Leaves of veneer come from one log: they differ by this part of their class. */
const LEAF_PART = 0.3;

/** Lightness from piece to piece by variation class; a continuous sheet drifts by as much over half a metre or so. */
export function varyLightness(
  gain: Float32Array,
  spec: PatternSpec,
  frame: Frame,
  map: PieceMap | null,
  distance: Float32Array | null,
): void {
  const { width, height } = frame;
  const sigma = gainSigma(spec.variation);
  const rows: PieceGrid | null =
    frame.pieces ?? (spec.pattern.kind === 'grain' && spec.pattern.figure !== 'ray-fleck' ? veneerLeaves(frame) : null);
  if (!rows) {
    const [along, across] = spec.pattern.kind === 'grain' ? GRAIN_DRIFT_MM : SHEET_DRIFT_MM;
    const cells = (length: number, drift: number): number => Math.max(2, length / drift);
    const [s, t] = [cells(frame.width_mm, along), cells(frame.height_mm, across)];
    const drift = fractalNoise(width, height, s, t, 3, spec.seed + 17);
    // On a small period broad drift would only show the repeat.
    const spread = sigma * Math.min(1, frame.width_mm / SHEET_DRIFT_PERIOD_MM);
    for (let i = 0; i < gain.length; i++) gain[i]! *= Math.max(0.3, 1 + spread * drift[i]!);
    return;
  }
  const leaves = frame.pieces === null ? LEAF_PART : 1;
  const z = spreadOverPieces(rows.columns * rows.rows, spec.seed ^ 0x7a1e);
  const pieces = map ?? mapPieces(frame, rows);
  const tiled = frame.pieces !== null && !isBoards(spec);
  for (let i = 0; i < gain.length; i++) {
    const tone = Math.max(0.3, 1 + leaves * sigma * z[pieces.piece[i]!]!);
    // A joint is not fired with its tile: it takes no part in the tile's tone.
    const cover = tiled ? pieces.cover[i]! : 1;
    // Glaze and body turn over the edge within a millimetre or two.
    const edge = tiled && distance ? 1 - 0.035 * Math.exp(-distance[i]! / 1.6) : 1;
    gain[i] = 1 - cover + cover * gain[i]! * tone * edge;
  }
}
