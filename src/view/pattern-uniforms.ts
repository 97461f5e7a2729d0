import { type IUniform, Vector2 } from 'three';
import { TURNS } from '../engine/pattern/place';
import type { PatternTexture, PieceField } from '../engine/pattern/types';
import { MOST_SHIFTS } from '../kitchen/study/lay-pattern';

/** Rows whose offsets the shader knows before they begin again. */
const MOST_OFFSETS = 32;

/** As `shaders/pieces.glsl` counts them. */
export const PIECE_KINDS: { readonly [K in PieceField['kind']]: number } = { rows: 0, herringbone: 1, hexagon: 2 };

/** How a pattern lies on a surface, for the shader: `shaders/surface.vert` and `shaders/pieces.glsl`. */
export const patternUniforms = (): Record<string, IUniform> => ({
  patternPeriod: { value: new Vector2(1, 1) },
  patternTurn: { value: new Vector2(1, 0) },
  pieceShifts: { value: new Float32Array(2 * MOST_SHIFTS) },
  pieceModule: { value: new Vector2(1, 1) },
  pieceCount: { value: new Vector2(1, 1) },
  pieceSeed: { value: 0 },
  rowOffsets: { value: new Float32Array(MOST_OFFSETS) },
  rowCycle: { value: 1 },
});

/** Sets them for a pattern; `shifts` per piece number, `pieces` the surface's piece numbers in order. */
export function showPattern(
  uniforms: Record<string, IUniform>,
  pattern: PatternTexture,
  shifts: Float32Array | null,
  pieces: readonly number[],
): void {
  const vector = (name: string) => uniforms[name]!.value as Vector2;
  vector('patternPeriod').set(pattern.width_m, pattern.height_m);
  const [cosine, sine] = TURNS[pattern.turn_deg ?? 0];
  vector('patternTurn').set(cosine, sine);
  const shown = uniforms['pieceShifts']!.value as Float32Array;
  shown.fill(0);
  pieces.slice(0, MOST_SHIFTS).forEach((piece, i) => {
    shown[2 * i] = shifts?.[2 * piece] ?? 0;
    shown[2 * i + 1] = shifts?.[2 * piece + 1] ?? 0;
  });
  const field = pattern.pieces;
  if (!field) return;
  vector('pieceModule').set(...field.module_m);
  vector('pieceCount').set(field.columns, field.rows);
  uniforms['pieceSeed']!.value = field.seed;
  (uniforms['rowOffsets']!.value as Float32Array).set(field.offsets.slice(0, MOST_OFFSETS));
  uniforms['rowCycle']!.value = Math.min(MOST_OFFSETS, field.offsets.length);
}
