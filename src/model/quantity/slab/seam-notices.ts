import type { Problem } from '../../../engine/result';
import type { SlabPiece, SlabRules } from '../slab-types';
import { linesOn } from './line-up';
import { saidName, saidSize } from './piece-words';

/** Seams this near are at one place, mm. */
const NEAR_MM = 1;

/**
 * What the seams that were set do not keep: places better left alone that no other place could be found for, and lines of other pieces. One
 * notice for each piece and rule.
 */
export function seamNotices(
  pieces: readonly SlabPiece[],
  seams: readonly (readonly number[])[],
  { seam_clear_mm, noun = 'slab' }: Pick<SlabRules, 'seam_clear_mm' | 'noun'>,
): readonly Problem[] {
  return pieces.flatMap((piece, i): readonly Problem[] => {
    const own = seams[i]!;
    const name = saidName(piece);
    const notice = (code: string, text: string): Problem => ({
      code,
      text,
      remedy: `No better place was found with as few seams and ${noun}s: take a larger ${noun}, or ask the fabricator.`,
    });
    const isIn = (at: number, [from, to]: Span, by: number): boolean =>
      at > from - by + DUST_MM && at < to + by - DUST_MM;
    const isNear = (spans: readonly Span[], by: number): boolean =>
      spans.some((span) => own.some((at) => isIn(at, span, by)));
    const isBeside = piece.cutouts_mm.some((span) =>
      own.some((at) => isIn(at, span, seam_clear_mm) && !isIn(at, span, 0)),
    );
    const avoided = (what: 'dishwasher' | 'cooktop'): readonly Span[] =>
      (piece.avoid ?? []).filter((one) => one.what === what).map(({ span_mm }) => span_mm);
    const lines = piece.follows ? linesOn(piece, pieces.slice(0, i), seams) : [];
    const isOff = (at: number): boolean => lines.every((line) => Math.abs(line - at) > NEAR_MM);
    return [
      ...(isBeside
        ? [notice('seam-near-cutout', `A seam of ${name} is nearer than ${saidSize(seam_clear_mm)} to a cut-out.`)]
        : []),
      ...(isNear(avoided('dishwasher'), 0)
        ? [notice('seam-over-dishwasher', `A seam of ${name} lies over the dishwasher.`)]
        : []),
      ...(isNear(avoided('cooktop'), seam_clear_mm)
        ? [notice('seam-behind-cooktop', `A seam of ${name} lies behind the cooktop, or nearly so.`)]
        : []),
      ...(lines.length > 0 && own.some(isOff)
        ? [notice('seams-apart', `A seam of ${name} does not line up with one of the counter.`)]
        : []),
    ];
  });
}

type Span = readonly [from: number, to: number];

/** Dust of floating point, mm. */
const DUST_MM = 1e-4;
